import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { dispatch } from '../../../app/services/dispatch.ts';
import type { Athlete } from '../../../core/document/athlete-schema.ts';
import type { Fit } from '../../../core/document/fit-schema.ts';
import { fill } from '../../bench/filled-store.ts';
import { cases } from '../../cases.ts';
import { inventedAthlete, inventedFit } from '../invented.ts';
import { openedProgram } from '../opened-program.ts';
import { temporaryFolder } from '../temporary.ts';

const REVISIONS = cases(400, 10_000);
const NAME = 'Wenna Oskarby';
const folder = temporaryFolder();

let opened: ReturnType<typeof openedProgram>;
let fitId: string;
let athleteId: string;

async function call(name: string, input: object) {
  const result = await dispatch(opened.program, name, input);
  if (!result.ok) throw new Error(`${name} ${result.error.code}: ${result.error.message}`);
  return result.value as never as { id: string; href: string; athlete: Athlete; fit: object };
}

const draft = (padAftM: number) => call('drafts.save', { id: fitId, fit: inventedFit({ padAftM }) });
const unfinished = () => readdirSync(folder).filter((name) => name.endsWith('.part'));

beforeAll(async () => {
  opened = openedProgram(folder);
  fill(opened.program.store, { from: 0, to: REVISIONS });
  fitId = (await call('fits.create', { fit: inventedFit() })).id;
  const saved = await call('athletes.save', { athlete: inventedAthlete(NAME) });
  athleteId = saved.id;
  await call('fits.create', { fit: inventedFit({ athlete: saved.athlete, name: 'Hers alone' }) });
});
afterAll(() => opened.close());

describe('long work in a thread of its own', () => {
  it.each([
    ['backups.take', () => ({})],
    ['bundle.export', () => ({})],
    ['athletes.previewErase', () => ({ id: athleteId })],
  ] as const)('lets edits through while %s is under way', async (name, input) => {
    const order: string[] = [];
    const before = unfinished().length;
    const long = call(name, input()).then(() => order.push('long'));
    await draft(0.11);
    order.push('first draft');
    await draft(0.12);
    order.push('second draft');
    await long;
    expect(order).toEqual(['first draft', 'second draft', 'long']);
    // An export waits for its tab to fetch it; nothing else is left.
    expect(unfinished().length).toBe(before + (name === 'bundle.export' ? 1 : 0));
  });

  it('looks without changing anything, stops when asked and leaves no copy behind', async () => {
    const before = unfinished();
    const preview = dispatch(opened.program, 'athletes.previewErase', { id: athleteId });
    while (opened.program.work.progress()?.what !== 'erase-preview')
      await new Promise((resolve) => setImmediate(resolve));
    expect(await call('work.cancel', {})).toEqual({ asked: true });
    expect(await preview).toMatchObject({ ok: false, error: { code: 'cancelled' } });
    expect(unfinished()).toEqual(before);
    expect(await call('athletes.previewErase', { id: athleteId })).toMatchObject({ fits: ['Hers alone'] });
    expect((await call('athletes.open', { id: athleteId })).athlete).toMatchObject({ name: NAME });
  });

  it.each(['bring-back', 'replace'] as const)(
    'lets edits through while a backup is restored (%s); what is added stays, what is replaced is in the backup of the present',
    async (how) => {
      const { name } = (await call('backups.take', {})) as never as { name: string };
      const order: string[] = [];
      const restoring = call('backups.restore', { name, how }).then((done) => {
        order.push('restored');
        return done as never as { presentKeptAs: { name: string } };
      });
      while (opened.program.work.progress()?.what !== 'restore')
        await new Promise((resolve) => setImmediate(resolve));
      await draft(0.31);
      order.push('edit');
      const { presentKeptAs } = await restoring;
      expect(order).toEqual(['edit', 'restored']);
      const aftM = async () => ((await call('fits.open', { id: fitId })).fit as Fit).seats[0]!.kneePad.aftM;
      expect((await aftM()) === 0.31).toBe(how === 'bring-back');
      await call('backups.restore', { name: presentKeptAs.name, how: 'replace' });
      // What was written while everything was replaced is in the backup of the present.
      expect((await aftM()) === 0.31).toBe(how === 'replace');
      expect((await startedAgain()).findings).toEqual([]);
    },
  );

  it('erases beside edits that are kept; one that names the person makes it begin anew', async () => {
    const { id } = await call('athletes.save', { athlete: inventedAthlete('Goes Soonest') });
    const order: string[] = [];
    const erasing = call('athletes.erase', { id, name: 'Goes Soonest' }).then(() => order.push('erased'));
    while (opened.program.work.progress()?.what !== 'erase')
      await new Promise((resolve) => setImmediate(resolve));
    await call('drafts.save', {
      id: fitId,
      fit: { ...inventedFit({ padAftM: 0.41 }), notes: 'asked Goes Soonest' },
    });
    order.push('edit');
    await erasing;
    expect(order).toEqual(['edit', 'erased']);
    const { fit } = (await call('fits.open', { id: fitId })) as never as { fit: Fit };
    expect(fit).toMatchObject({ notes: 'asked (erased)', seats: [{ kneePad: { aftM: 0.41 } }] });
    for (const entry of readdirSync(folder, { withFileTypes: true }))
      if (entry.isFile())
        expect(readFileSync(join(folder, entry.name)).includes('Goes Soonest'), entry.name).toBe(false);
  });

  it('erases from store, copies and journal; what is saved during and after it is kept over a new start', async () => {
    await call('backups.take', {});
    const erasing = call('athletes.erase', { id: athleteId, name: NAME });
    await draft(0.21);
    expect(await erasing).toMatchObject({ fits: ['Hers alone'], copiesLeft: [] });
    await draft(0.22);
    for (const place of [folder, join(folder, 'backups')])
      for (const entry of readdirSync(place, { withFileTypes: true }))
        if (entry.isFile())
          expect(readFileSync(join(place, entry.name)).includes(NAME), entry.name).toBe(false);
    // Journal, manifest and store agree: the next start finds nothing to put right.
    const { findings } = await startedAgain();
    expect(findings).toEqual([]);
    expect((await call('fits.open', { id: fitId })).fit).toMatchObject({
      seats: [{ kneePad: { aftM: 0.22 } }],
    });
  });
});

async function startedAgain() {
  opened.close();
  opened = openedProgram(folder);
  return { findings: [...opened.program.notices.values()] };
}
