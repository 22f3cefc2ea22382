import { statSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { createFit } from '../../../app/store/fits.ts';
import { STORE_FILE } from '../../../app/store/open-store.ts';
import { saveRevision } from '../../../app/store/revisions.ts';
import { athletes } from '../../../app/store/roster.ts';
import { cases } from '../../cases.ts';
import { inventedAthlete, inventedFit } from '../invented.ts';
import { openedProgram } from '../opened-program.ts';
import { temporaryFolder } from '../temporary.ts';
import { saveInEveryWay, wrongsIn } from './saves.ts';
import { canMakeDisk, type FaultPoint, fileSizeLimit, prepare, saveUnder, smallDisk } from './sweep.ts';

/** Something was refused somewhere, something kept somewhere, and nothing is wrong anywhere. */
function expectSound(points: readonly FaultPoint[], code: string): void {
  for (const { at, wrongs, refusal } of points) {
    expect(wrongs, at).toEqual([]);
    if (refusal) expect(refusal, at).toMatch(/left unchanged|Nothing was changed/);
  }
  const outcomes = points.flatMap(({ saved }) => (saved ?? []).map(({ outcome }) => outcome));
  expect(new Set(outcomes)).toEqual(new Set(['kept', code]));
}

/** Drafts of the script that a revision takes the place of. */
const DRAFTS_GIVEN_WAY = 2;

describe('the look at what is left', () => {
  it('sees a save that is gone, one that was refused and is there, and one half kept', async () => {
    const opened = openedProgram(temporaryFolder());
    const { store } = opened.program;
    const { id: fitId } = createFit(store, inventedFit());
    const { id: athleteId } = athletes.save(store, inventedAthlete('Before'));
    const saved = await saveInEveryWay(opened.program, { fitId, athleteId });
    expect(wrongsIn(store, saved)).toEqual([]);
    expect(
      wrongsIn(
        store,
        saved.map((one) => ({ ...one, outcome: 'disk-full' })),
      ),
    ).toHaveLength(saved.length - DRAFTS_GIVEN_WAY);
    store.db.exec('DELETE FROM drafts');
    expect(wrongsIn(store, saved)).not.toEqual([]);
    opened.close();
  });
});

describe('a disk that fills up', () => {
  /** SQLite is given one page more each time (`max_page_count`): it runs full at every page that a save needs. */
  it('at each page of each save: what was kept stays, what was refused leaves no trace, and saving goes on after', async () => {
    const full: string[] = [];
    for (let extra = 0; extra < 24; extra += cases(4, 1)) {
      const opened = openedProgram(temporaryFolder());
      const { program } = opened;
      const { db } = program.store;
      const { id: fitId } = createFit(program.store, inventedFit());
      saveRevision(program.store, { fitId, fit: inventedFit(), name: 'before', reason: '' });
      const { id: athleteId } = athletes.save(program.store, inventedAthlete('Before'));
      const pages = db.pragma('page_count', { simple: true }) as number;
      db.pragma(`max_page_count = ${pages + extra}`);
      const saved = await saveInEveryWay(program, { fitId, athleteId });
      expect(wrongsIn(program.store, saved), `${extra} pages left`).toEqual([]);
      full.push(...saved.map(({ outcome }) => outcome));
      db.pragma('max_page_count = 100000');
      const again = await saveInEveryWay(program, { fitId, athleteId });
      expect(again.map(({ outcome }) => outcome)).toEqual(again.map(() => 'kept'));
      opened.close();
    }
    expect(new Set(full)).toEqual(new Set(['kept', 'disk-full']));
  });

  // Each place starts a process: the quick run takes every eighth of them.
  it.runIf(canMakeDisk())(
    'for real, at every size of it: a disk of its own that the system says is full',
    () => {
      const prepared = prepare(temporaryFolder());
      const points: FaultPoint[] = [];
      // From a disk that holds the store and nothing more to one with room for every save.
      const least = Math.ceil(statSync(join(prepared.root, 'prepared', STORE_FILE)).size / 8192) * 8;
      for (let kb = least; kb <= least + 200; kb += cases(64, 8)) {
        points.push(saveUnder(smallDisk(kb * 1024), `${kb} kB`, prepared));
      }
      expectSound(points, 'disk-full');
    },
  );
});

describe.runIf(process.platform !== 'win32')('a disk that errs', () => {
  it('at the places in every file that a save writes to: nothing kept is lost, nothing refused is left', () => {
    const prepared = prepare(temporaryFolder());
    const points: FaultPoint[] = [];
    // A frame of the log is 4120 bytes: a step of 4096 meets every one of them.
    for (let blocks = 0; blocks <= 320; blocks += cases(64, 8)) {
      points.push(saveUnder(fileSizeLimit(blocks), `${blocks} blocks`, prepared));
    }
    expectSound(points, 'damaged');
  });
});
