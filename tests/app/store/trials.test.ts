import { describe, expect, it } from 'vitest';
import { createFit } from '../../../app/store/fits.ts';
import { listQuarantine } from '../../../app/store/quarantine.ts';
import { openRevision, saveRevision } from '../../../app/store/revisions.ts';
import { athletes } from '../../../app/store/roster.ts';
import type { Store } from '../../../app/store/store.ts';
import { fitsOfAthlete, timelineOf } from '../../../app/store/timeline.ts';
import { listTrials, saveTrial, setTrialArchived } from '../../../app/store/trials.ts';
import { type Trial, trialSchema } from '../../../core/trial/observation.ts';
import { inventedAthlete, inventedFit } from '../invented.ts';
import { temporaryStore } from '../temporary.ts';

const NUMB = { kind: 'body', place: 'rearToes', feeling: 'numb', strength: 2 } as const;
const DIGS = { kind: 'boat', sign: 'bowDigs', strength: 3 } as const;

function trialOn(heldOn: string, more: Partial<Trial> = {}): Trial {
  return trialSchema.parse({ seat: 0, heldOn, observations: [NUMB, DIGS], ...more });
}

function tried(store: Store, name = 'Žofie Łęcka') {
  const { athlete } = athletes.save(store, inventedAthlete(name));
  const fit = inventedFit({ athlete, name: `Fit of ${name}` });
  const { id: fitId } = createFit(store, fit);
  const revision = saveRevision(store, { fitId, fit, name: 'First', reason: '' });
  if (typeof revision === 'string') throw new Error(revision);
  return { fitId, fit, revision, athleteId: athlete.id! };
}

function kept(store: Store, revisionId: string, trial: Trial) {
  const record = saveTrial(store, { revisionId, trial });
  if (typeof record === 'string') throw new Error(record);
  return record;
}

describe('a trial', () => {
  it('is kept with the revision that was tried and the athlete who tried it, the latest day first', () => {
    const store = temporaryStore();
    const { fitId, revision, athleteId } = tried(store);
    const second = kept(store, revision.id, trialOn('2026-05-09'));
    const first = kept(store, revision.id, trialOn('2026-05-02', { notes: 'cold' }));
    expect(listTrials(store, fitId)).toEqual([second, first]);
    expect(first).toMatchObject({ fitId, revisionId: revision.id, athleteId, archived: false });
    expect(first.trial).toEqual(trialOn('2026-05-02', { notes: 'cold' }));
  });

  it('is corrected in place, within its own fit only', () => {
    const store = temporaryStore();
    const { fitId, revision } = tried(store);
    const { id } = kept(store, revision.id, trialOn('2026-05-02'));
    const corrected = trialOn('2026-05-03', { observations: [DIGS], notes: 'only the bow' });
    expect(saveTrial(store, { id, revisionId: revision.id, trial: corrected })).toMatchObject({
      id,
      trial: corrected,
    });
    expect(listTrials(store, fitId)).toHaveLength(1);
    const other = tried(store, 'Somebody Else');
    expect(saveTrial(store, { id, revisionId: other.revision.id, trial: corrected })).toBe('none');
    expect(listTrials(store, other.fitId)).toEqual([]);
  });

  it('is refused where nobody knelt, or of a revision that is not there', () => {
    const store = temporaryStore();
    const { revision } = tried(store);
    expect(saveTrial(store, { revisionId: revision.id, trial: trialOn('2026-05-02', { seat: 1 }) })).toBe(
      'nobody',
    );
    expect(saveTrial(store, { revisionId: crypto.randomUUID(), trial: trialOn('2026-05-02') })).toBe('none');
  });

  it('is set aside and brought back, never deleted', () => {
    const store = temporaryStore();
    const { fitId, revision } = tried(store);
    const { id } = kept(store, revision.id, trialOn('2026-05-02'));
    expect(setTrialArchived(store, id, true)).toMatchObject({ archived: true });
    expect(listTrials(store, fitId)).toMatchObject([{ id, archived: true }]);
    expect(setTrialArchived(store, id, false)).toMatchObject({ archived: false });
    expect(setTrialArchived(store, crypto.randomUUID(), true)).toBe('none');
  });

  it('that no longer reads is set aside and leaves the others', () => {
    const store = temporaryStore();
    const { fitId, revision } = tried(store);
    const bad = kept(store, revision.id, trialOn('2026-05-02'));
    const good = kept(store, revision.id, trialOn('2026-05-03'));
    store.db.prepare("UPDATE trials SET trial = '{}' WHERE id = ?").run(bad.id);
    expect(listTrials(store, fitId).map(({ id }) => id)).toEqual([good.id]);
    expect(listQuarantine(store)).toMatchObject([{ table: 'trials', rowId: bad.id }]);
  });
});

describe('a revision that answers a trial', () => {
  it('says so for ever, whatever becomes of the trial', () => {
    const store = temporaryStore();
    const { fitId, fit, revision } = tried(store);
    const { id } = kept(store, revision.id, trialOn('2026-05-02'));
    const answers = [{ trialId: id, observation: NUMB }];
    const second = saveRevision(store, { fitId, fit, name: 'Rest lower', reason: '', answers });
    if (typeof second === 'string') throw new Error(second);
    expect(second.answers).toEqual(answers);
    saveTrial(store, {
      id,
      revisionId: revision.id,
      trial: trialOn('2026-05-02', { observations: [DIGS] }),
    });
    setTrialArchived(store, id, true);
    expect(openRevision(store, second.id)).toMatchObject({ revision: { answers } });
    for (const sql of ["UPDATE revision_words SET answers = '[]'", 'DELETE FROM revision_words']) {
      expect(() => store.db.exec(sql)).toThrow('never');
    }
  });

  it('of which the answers no longer read is still a revision', () => {
    const store = temporaryStore();
    const { revision } = tried(store);
    store.db.exec('INSERT INTO erasing SELECT id FROM revisions');
    store.db.exec("UPDATE revision_words SET answers = '[7]'");
    store.db.exec('DELETE FROM erasing');
    expect(openRevision(store, revision.id)).toMatchObject({ revision: { name: 'First', answers: [] } });
    expect(listQuarantine(store)).toMatchObject([{ table: 'revision_words' }]);
  });
});

describe('an athlete’s timeline', () => {
  it('holds revisions and trials of every fit the athlete knelt in, newest first, and nobody else’s', () => {
    const store = temporaryStore();
    const mine = tried(store);
    const other = tried(store, 'Somebody Else');
    kept(store, other.revision.id, trialOn('2026-05-02'));
    const trial = kept(store, mine.revision.id, trialOn('2026-05-02'));
    const aside = kept(store, mine.revision.id, trialOn('2026-05-04'));
    setTrialArchived(store, aside.id, true);
    const entries = timelineOf(store, mine.athleteId);
    expect(entries.map(({ kind }) => kind)).toEqual(['trial', 'revision']);
    expect(entries[0]).toMatchObject({ fitId: mine.fitId, revisionNumber: 1, record: { id: trial.id } });
    expect(entries[1]).toMatchObject({ seat: 0, revision: { id: mine.revision.id } });
  });

  it('tells what was kept in one instant in its turn: a revision, its trial, the next revision', () => {
    const still = temporaryStore(undefined, () => Date.UTC(2026, 4, 2));
    const { fitId, fit, revision, athleteId } = tried(still);
    kept(still, revision.id, trialOn('2026-05-02'));
    saveRevision(still, { fitId, fit, name: 'Second', reason: '' });
    expect(timelineOf(still, athleteId).map(({ kind }) => kind)).toEqual(['revision', 'trial', 'revision']);
  });

  it('keeps a revision in which the athlete knelt though somebody else kneels there now', () => {
    const store = temporaryStore();
    const mine = tried(store);
    const { athlete } = athletes.save(store, inventedAthlete('Somebody Else'));
    saveRevision(store, {
      fitId: mine.fitId,
      fit: { ...inventedFit({ athlete }) },
      name: 'Handed on',
      reason: '',
    });
    expect(timelineOf(store, mine.athleteId)).toHaveLength(1);
    expect(timelineOf(store, athlete.id!)).toHaveLength(1);
    expect(fitsOfAthlete(store, mine.athleteId)).toEqual([]);
    expect(fitsOfAthlete(store, athlete.id!)).toMatchObject([{ id: mine.fitId, seat: 0, archived: false }]);
  });
});
