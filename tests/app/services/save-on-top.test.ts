import { describe, expect, it } from 'vitest';
import { openConflicts } from '../../../app/services/conflicts.ts';
import { dispatch } from '../../../app/services/dispatch.ts';
import { createFit } from '../../../app/store/fits.ts';
import { listMeasurings } from '../../../app/store/measurings.ts';
import { saveRevision } from '../../../app/store/revisions.ts';
import { athletes, boats, paddles } from '../../../app/store/roster.ts';
import { listTrials, saveTrial } from '../../../app/store/trials.ts';
import { stockSchema } from '../../../core/document/stock-schema.ts';
import { trialSchema } from '../../../core/trial/observation.ts';
import { inventedAthlete, inventedBoat, inventedFit, inventedPaddle } from '../invented.ts';
import { openedProgram } from '../opened-program.ts';
import { temporaryFolder } from '../temporary.ts';

const { program } = openedProgram(temporaryFolder());
const { store } = program;

async function save(name: string, input: object): Promise<void> {
  const result = await dispatch(program, name, input);
  if (!result.ok) throw new Error(result.error.message);
}

/** What waits for a decision in a record; the value that stands, first. */
const toDecide = (record: string) =>
  openConflicts(program)
    .filter(({ id }) => id === record)
    .map(({ path, values }) => ({ path, values: values.map(({ value }) => value) }));

const tape = (valueM: number) => ({ valueM, sdM: 0.005 });

describe('a record saved from a page that was opened before somebody else changed it', () => {
  it('has the changes of both, field by field', async () => {
    const { athlete: opened } = athletes.save(
      store,
      inventedAthlete('Ada', { tape: { footLength: tape(0.24), sittingHeight: tape(0.88) } }),
    );
    const id = opened.id!;
    const { sittingHeight } = opened.tape;
    athletes.save(store, {
      ...opened,
      massKg: 64,
      tape: { footLength: tape(0.25), sittingHeight: sittingHeight!, biacromialBreadth: tape(0.38) },
    });
    // The page knows nothing of it: it has another name, and no sitting height any more.
    const { sittingHeight: _, ...left } = opened.tape;
    await save('athletes.save', { athlete: { ...opened, name: 'Ada B.', tape: left }, opened });
    const { athlete } = athletes.get(store, id)!;
    expect(athlete).toMatchObject({ name: 'Ada B.', massKg: 64 });
    expect(athlete.tape).toEqual({ footLength: tape(0.25), biacromialBreadth: tape(0.38) });
  });

  it('has the page’s own value where both changed the same field, and the other waits for a decision', async () => {
    const { paddle: opened } = paddles.save(store, inventedPaddle());
    paddles.save(store, { ...opened, lengthM: 1.66, note: 'cut' });
    await save('paddles.save', { paddle: { ...opened, lengthM: 1.64 }, opened });
    const now = () => paddles.get(store, opened.id!)!.paddle;
    expect(now()).toMatchObject({ lengthM: 1.64, note: 'cut' });
    expect(toDecide(opened.id!)).toEqual([{ path: 'lengthM', values: ['1.64', '1.66'] }]);
    await save('conflicts.decide', { kind: 'paddle', id: opened.id!, path: 'lengthM', value: '1.66' });
    expect(now()).toMatchObject({ lengthM: 1.66, note: 'cut' });
    expect(toDecide(opened.id!)).toEqual([]);
  });

  it('asks once for a measure, and the decision is the day’s too', async () => {
    const { athlete: opened } = athletes.save(store, inventedAthlete('Bo', { massKg: 60 }));
    const id = opened.id!;
    athletes.save(store, { ...opened, massKg: 62 });
    await save('athletes.save', { athlete: { ...opened, massKg: 64 }, opened });
    expect(toDecide(id)).toEqual([{ path: 'massKg', values: ['64', '62'] }]);
    await save('conflicts.decide', { kind: 'athlete', id, path: 'massKg', value: '62' });
    expect(athletes.get(store, id)!.athlete.massKg).toBe(62);
    expect(listMeasurings(store, id)).toMatchObject([{ massKg: 62 }]);
  });

  it('asks nothing where both entered the same, or one left alone what the other changed', async () => {
    const { paddle: opened } = paddles.save(store, inventedPaddle());
    paddles.save(store, { ...opened, lengthM: 1.66, massKg: 0.7 });
    await save('paddles.save', { paddle: { ...opened, lengthM: 1.66, note: 'new' }, opened });
    expect(paddles.get(store, opened.id!)!.paddle).toMatchObject({ lengthM: 1.66, massKg: 0.7, note: 'new' });
    expect(toDecide(opened.id!)).toEqual([]);
  });

  it('asks for a field that one removed and the other changed', async () => {
    const { athlete: opened } = athletes.save(
      store,
      inventedAthlete('Cy', { tape: { footLength: tape(0.24), sittingHeight: tape(0.88) } }),
    );
    const { footLength: _, ...left } = opened.tape;
    athletes.save(store, { ...opened, tape: left });
    await save('athletes.save', {
      athlete: { ...opened, tape: { ...opened.tape, footLength: tape(0.25) } },
      opened,
    });
    expect(toDecide(opened.id!)).toEqual([
      { path: 'tape/footLength', values: [JSON.stringify(tape(0.25)), null] },
    ]);
    await save('conflicts.decide', {
      kind: 'athlete',
      id: opened.id!,
      path: 'tape/footLength',
      value: null,
    });
    expect(athletes.get(store, opened.id!)!.athlete.tape).toEqual(left);
  });

  it('keeps all that the other changed to decide, where both together make no sound document', async () => {
    const { boat: opened } = boats.save(store, inventedBoat('Full'));
    const pad = { heightM: 0.1, lengthM: 0.3, widthM: 0.2, recessDepthM: 0.01, foamGiveM: 0.005 };
    const pads = (whose: string) =>
      Array.from({ length: 13 }, (_, i) => ({ ...pad, name: `${whose} ${i + 10}` }));
    const stock = (whose: string) => stockSchema.parse({ pads: pads(whose) });
    boats.save(store, { ...opened, stock: stock('Theirs'), massKg: 14.5 });
    await save('boats.save', { boat: { ...opened, stock: stock('Mine') }, opened });
    const { boat: now } = boats.get(store, opened.id!)!;
    expect(now).toEqual({ ...opened, stock: stock('Mine') });
    const waiting = toDecide(opened.id!);
    expect(waiting).toHaveLength(14);
    expect(waiting).toContainEqual({ path: 'massKg', values: [String(opened.massKg), '14.5'] });
    await save('conflicts.decide', { kind: 'boat', id: opened.id!, path: 'massKg', value: '14.5' });
    expect(boats.get(store, opened.id!)!.boat.massKg).toBe(14.5);
  });

  it('is a sound boat, with the mass of one and the skin of the other', async () => {
    const { boat: opened } = boats.save(store, inventedBoat());
    boats.save(store, { ...opened, name: 'Heron', massKg: 16 });
    const before = boats.get(store, opened.id!)!.boat;
    await save('boats.save', { boat: { ...opened, skinM: 0.006 }, opened });
    expect(boats.get(store, opened.id!)!.boat).toEqual({ ...before, skinM: 0.006 });
  });

  it('is a trial with what both have seen, of the revision that one chose, and both notes to decide', async () => {
    const athlete = athletes.save(store, inventedAthlete('Dee')).athlete;
    const made = createFit(store, inventedFit({ athlete }));
    const kept = (name: string) => {
      const revision = saveRevision(store, { fitId: made.id, fit: made.fit, name, reason: '' });
      if (typeof revision === 'string') throw new Error(revision);
      return revision.id;
    };
    const [first, second] = [kept('first'), kept('second')];
    const sign = (name: 'tippy' | 'bowDigs') => ({ kind: 'boat', sign: name, strength: 2 });
    const trial = trialSchema.parse({ seat: 0, heldOn: '2026-03-04', observations: [], notes: 'calm' });
    const before = saveTrial(store, { revisionId: first, trial });
    if (typeof before === 'string') throw new Error(before);
    const { id } = before;
    const theirs = trialSchema.parse({ ...trial, observations: [sign('tippy')], notes: 'theirs' });
    saveTrial(store, { id, revisionId: second, trial: theirs });
    const mine = trialSchema.parse({ ...trial, observations: [sign('bowDigs')], notes: 'mine' });
    await save('trials.save', { id, revisionId: first, trial: mine, opened: { revisionId: first, trial } });
    const [now] = listTrials(store, made.id);
    expect(now).toMatchObject({ revisionId: second, trial: { notes: 'mine' } });
    expect(now!.trial.observations).toHaveLength(2);
    expect(toDecide(id)).toEqual([{ path: 'notes', values: ['"mine"', '"theirs"'] }]);
  });

  it('out of a table keeps what somebody else changed since the table was checked', async () => {
    const { athlete: opened } = athletes.save(store, inventedAthlete('Eli', { massKg: 60 }));
    athletes.save(store, { ...opened, statureM: 1.71 });
    await save('athletes.import', { athletes: [{ ...opened, massKg: 63 }], opened: [opened] });
    expect(athletes.get(store, opened.id!)!.athlete).toMatchObject({ statureM: 1.71, massKg: 63 });
    expect(toDecide(opened.id!)).toEqual([]);
  });

  it('is what the page has where nobody else changed anything', async () => {
    const { boat: opened } = boats.save(store, inventedBoat('Kept'));
    const made = { ...opened, massKg: 13.5, seats: [{ ...opened.seats[0]!, stationM: 0.1 }] };
    await save('boats.save', { boat: made, opened });
    expect(boats.get(store, opened.id!)!.boat).toEqual(made);
  });
});
