import { cpSync, existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it, vi } from 'vitest';
import { packedBytes } from '../../../app/bundle/packed.ts';
import { bundleItems } from '../../../app/bundle/read-bundle.ts';
import { dispatch } from '../../../app/services/dispatch.ts';
import { createFit, openFit, saveDraft } from '../../../app/store/fits.ts';
import { addPhoto } from '../../../app/store/photos.ts';
import { saveRevision } from '../../../app/store/revisions.ts';
import { athletes, boats } from '../../../app/store/roster.ts';
import { openStaged, stagedSteps, stageImport } from '../../../app/store/staged-import.ts';
import type { Store } from '../../../app/store/store.ts';
import { bundleOf, contentOf } from '../exchange.ts';
import { inventedAthlete, inventedBoat, inventedFit, inventedPicture } from '../invented.ts';
import { openedProgram } from '../opened-program.ts';
import { temporaryFolder, temporaryStore } from '../temporary.ts';

/** More than are taken in at once. */
const REVISIONS = 25;

function filled(): Store {
  const store = temporaryStore();
  const { athlete } = athletes.save(store, inventedAthlete('Wenna Oskarby'));
  const boat = boats.save(store, inventedBoat());
  addPhoto(store, { boatId: boat.id, caption: 'bow', bytes: inventedPicture() });
  for (let f = 0; f < 4; f++) {
    const { id } = createFit(store, inventedFit({ name: `Fit ${f}`, athlete }));
    for (let r = 0; r < (f === 1 ? REVISIONS : 1); r++)
      saveRevision(store, {
        fitId: id,
        fit: inventedFit({ athlete, padAftM: 0.1 + r / 100 }),
        name: `${r}`,
        reason: '',
      });
  }
  return store;
}

const stage = (folder: string, from: Store) => stageImport(folder, bundleItems(packedBytes(bundleOf(from))));

/** Takes in what is staged, up to so many steps; whether it came to its end. */
function take(store: Store, most: number): boolean {
  const staged = openStaged(store.folder)!;
  const steps = stagedSteps(store, staged);
  for (let i = 0; i < most; i++) {
    if (!steps.next().done) continue;
    staged.remove();
    return true;
  }
  staged.close();
  return false;
}

describe('an import that is made in short transactions', () => {
  it('brings the same as one at once, revisions with their numbers, and leaves no file', () => {
    const [from, into] = [filled(), temporaryStore()];
    stage(into.folder, from);
    expect(take(into, 1000)).toBe(true);
    expect(contentOf(into)).toEqual(contentOf(from));
    const numbers = (store: Store) =>
      store.db.prepare('SELECT fit_id, number, id FROM revisions ORDER BY 1, 2').all();
    expect(numbers(into)).toEqual(numbers(from));
    expect(readdirSync(into.folder).filter((name) => name.startsWith('import'))).toEqual([]);
  });

  it('takes in few revisions at a time, and prepares no statement for each: the program answers meanwhile', () => {
    const into = temporaryStore();
    stage(into.folder, filled());
    expect(take(into, 1000)).toBe(true);
    stage(into.folder, filled());
    const staged = openStaged(into.folder)!;
    const atOnce = [...staged.read()].map(({ item }) => ('revisions' in item ? item.revisions.length : 0));
    staged.close();
    expect(atOnce.reduce((sum, count) => sum + count)).toBe(REVISIONS + 3);
    expect(Math.max(...atOnce)).toBeLessThanOrEqual(5);
    const prepare = vi.spyOn(into.db, 'prepare');
    expect(take(into, 1000)).toBe(true);
    // Who was erased is asked before and after it.
    expect(prepare.mock.calls.length).toBeLessThan(6);
  });

  it('leaves nothing where a bundle turns out damaged near its end', () => {
    const [from, into] = [filled(), temporaryStore()];
    const damaged = Buffer.from(bundleOf(from));
    const last = damaged.lastIndexOf('fits/', damaged.indexOf('bundle.json') - 1);
    damaged[last + 200]! ^= 1;
    expect(() => stageImport(into.folder, bundleItems(packedBytes(damaged)))).toThrow(/damaged/i);
    expect(openStaged(into.folder)).toBe(null);
    expect(readdirSync(into.folder).filter((name) => name.startsWith('import'))).toEqual([]);
  });

  it('killed anywhere comes to its end at the next start, keeps what was edited between, and says so', async () => {
    const from = filled();
    for (const steps of [0, 1, 2, 3]) {
      const into = temporaryStore();
      const own = createFit(into, inventedFit({ name: 'Own' }));
      stage(into.folder, from);
      const ended = take(into, steps);
      saveDraft(into, { id: own.id, fit: inventedFit({ name: 'Own', padAftM: 0.27 }) });
      if (ended) break;
      const left = join(temporaryFolder(), 'data');
      cpSync(into.folder, left, { recursive: true });
      const opened = openedProgram(left);
      const { program } = opened;
      await program.turn.alone(async () => {});
      expect(contentOf(program.store)).toMatchObject({ fields: contentOf(from).fields });
      expect(openFit(program.store, own.id)).toMatchObject({ fit: { seats: [{ kneePad: { aftM: 0.27 } }] } });
      const state = await dispatch(program, 'program.state', {});
      expect(JSON.stringify(state)).toContain('Interrupted import finished');
      expect(existsSync(join(left, 'import-under-way.db'))).toBe(false);
      opened.close();
    }
  });

  it('goes when somebody is erased, for that person may be in it', async () => {
    const folder = temporaryFolder();
    const opened = openedProgram(folder);
    const { program } = opened;
    const { id } = athletes.save(program.store, inventedAthlete('Wenna Oskarby'));
    stage(folder, filled());
    const erased = await dispatch(program, 'athletes.erase', { id, name: 'Wenna Oskarby' });
    expect(erased.ok).toBe(true);
    expect(openStaged(folder)).toBe(null);
    opened.close();
  });
});
