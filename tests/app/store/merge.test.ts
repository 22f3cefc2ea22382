import { describe, expect, it } from 'vitest';
import { listConflicts } from '../../../app/store/conflicts.ts';
import { createFit, listFits, openFit, saveDraft } from '../../../app/store/fits.ts';
import { mergeIn } from '../../../app/store/merge.ts';
import { readIncoming } from '../../../app/store/read-incoming.ts';
import { listRevisions, openRevision, saveRevision } from '../../../app/store/revisions.ts';
import { athletes } from '../../../app/store/roster.ts';
import type { Store } from '../../../app/store/store.ts';
import { listTrials, saveTrial } from '../../../app/store/trials.ts';
import { trialSchema } from '../../../core/trial/observation.ts';
import { contentOf } from '../exchange.ts';
import { inventedAthlete, inventedFit } from '../invented.ts';
import { steppingClock, temporaryStore } from '../temporary.ts';

const page = { archived: false, search: '', limit: 200, offset: 0 };
const LATER = Date.UTC(2026, 5, 1);
const store = (from?: number) => temporaryStore(undefined, steppingClock(from));
const everythingOf = (from: Store) => readIncoming(from.db).items;

function savedFit(into: Store, padAftM = 0.1) {
  const { id } = createFit(into, inventedFit({ padAftM }));
  const revision = saveRevision(into, {
    fitId: id,
    fit: inventedFit({ padAftM }),
    name: `pad ${padAftM}`,
    reason: '',
  });
  if (typeof revision === 'string') throw new Error('not saved');
  return { id, revision };
}

describe('taking in another store', () => {
  it('makes an empty store its equal, and then finds nothing more to do', () => {
    const from = store();
    athletes.save(from, inventedAthlete());
    const { id } = savedFit(from);
    saveDraft(from, { id, fit: inventedFit({ padAftM: 0.2 }) });
    const into = store();
    mergeIn(into, everythingOf(from));
    expect(everythingOf(into)).toEqual(everythingOf(from));
    expect(openFit(into, id)).toEqual(openFit(from, id));
    const again = mergeIn(into, everythingOf(from));
    expect(again).toMatchObject({
      athletes: { added: 0, updated: 0, same: 1 },
      fits: { added: 0, updated: 0, same: 1 },
      revisions: { added: 0, same: 1 },
    });
  });

  it('keeps both values where two stores wrote without knowing of each other, the same one standing on both', () => {
    const id = crypto.randomUUID();
    const older = store();
    athletes.save(older, inventedAthlete('Older', { id }));
    const newer = store(LATER);
    athletes.save(newer, inventedAthlete('Newer', { id }));
    const [fromOlder, fromNewer] = [everythingOf(older), everythingOf(newer)];
    expect(mergeIn(newer, fromOlder).athletes.conflicts).toBeGreaterThan(0);
    expect(mergeIn(older, fromNewer).athletes.conflicts).toBeGreaterThan(0);
    expect(contentOf(older)).toEqual(contentOf(newer));
  });

  it('brings two lines of revisions of one fit together without losing or renaming any', () => {
    const here = store();
    const { id, revision } = savedFit(here);
    const there = store(LATER);
    mergeIn(there, everythingOf(here));
    saveRevision(here, { fitId: id, fit: inventedFit({ padAftM: 0.12 }), name: 'made here', reason: '' });
    saveRevision(there, { fitId: id, fit: inventedFit({ padAftM: 0.14 }), name: 'made there', reason: '' });
    mergeIn(here, everythingOf(there));
    const all = listRevisions(here, id);
    expect(all.map(({ number, name }) => [number, name])).toEqual([
      [3, 'made there'],
      [2, 'made here'],
      [1, revision.name],
    ]);
    expect(listConflicts(here)).toMatchObject([{ kind: 'fit', id, path: 'seats/0/kneePad/aftM' }]);
    expect(openRevision(here, all[0]!.id)).toMatchObject({ fit: { seats: [{ kneePad: { aftM: 0.14 } }] } });
  });

  it('makes no revision of a draft that comes in, and asks only for what both changed', () => {
    const here = store();
    const { id } = savedFit(here);
    const there = store(LATER);
    mergeIn(there, everythingOf(here));
    saveDraft(here, { id, fit: inventedFit({ padAftM: 0.21, name: 'Named here' }) });
    saveDraft(there, { id, fit: { ...inventedFit({ padAftM: 0.25 }), heelDeg: 2 } });
    const counts = mergeIn(here, everythingOf(there));
    expect(counts.fits).toMatchObject({ updated: 1, conflicts: 1 });
    expect(listRevisions(here, id)).toHaveLength(1);
    const opened = openFit(here, id);
    expect(opened).toMatchObject({ fit: { name: 'Named here', heelDeg: 2 } });
    const [conflict] = listConflicts(here);
    expect(conflict!.values.map(({ value }) => value).sort()).toEqual(['0.21', '0.25']);
    expect(mergeIn(here, everythingOf(there)).fits).toMatchObject({ conflicts: 0 });
    mergeIn(there, everythingOf(here));
    expect(openFit(there, id)).toMatchObject({ fit: (opened as { fit: object }).fit });
  });

  it('puts a sound revision in the place of one that no longer reads here', () => {
    const here = store();
    const { id, revision } = savedFit(here);
    const sound = everythingOf(here);
    here.db.exec('INSERT INTO erasing SELECT id FROM revisions');
    here.db.exec("UPDATE revisions SET fit = '{}'");
    here.db.exec('DELETE FROM erasing');
    expect(openFit(here, id)).toBe('damaged');
    mergeIn(here, sound);
    expect(openRevision(here, revision.id)).toMatchObject({ revision, fit: inventedFit() });
  });

  it('brings trials and what revisions answer along, keeps the newer of two, and then finds nothing more', () => {
    const here = store();
    const { id, revision } = savedFit(here);
    const trial = (notes: string) =>
      trialSchema.parse({ seat: 0, heldOn: '2026-03-04', observations: [], notes });
    const kept = saveTrial(here, { revisionId: revision.id, trial: trial('as felt') });
    if (typeof kept === 'string') throw new Error(kept);
    const observation = { kind: 'boat', sign: 'tippy', strength: 1 } as const;
    const answers = [{ trialId: kept.id, observation }];
    saveRevision(here, { fitId: id, fit: inventedFit(), name: 'lower', reason: '', answers });
    const there = store(LATER);
    expect(mergeIn(there, everythingOf(here)).trials).toMatchObject({ added: 1 });
    expect(everythingOf(there)).toEqual(everythingOf(here));
    expect(listRevisions(there, id)[0]!.answers).toEqual(answers);
    saveTrial(there, { id: kept.id, revisionId: revision.id, trial: trial('corrected later') });
    expect(mergeIn(there, everythingOf(here)).trials).toMatchObject({ keptNewer: 1 });
    expect(mergeIn(here, everythingOf(there)).trials).toMatchObject({ updated: 1 });
    expect(mergeIn(here, everythingOf(there)).trials).toMatchObject({ same: 1 });
    expect(listTrials(here, id)).toMatchObject([{ trial: { notes: 'corrected later' } }]);
  });

  it('takes back everything when one thing fails', () => {
    const from = store();
    savedFit(from);
    const into = store();
    function* broken() {
      yield* everythingOf(from);
      throw new Error('the source broke off');
    }
    expect(() => mergeIn(into, broken())).toThrow('broke off');
    expect(listFits(into, page)).toEqual([]);
  });
});
