import { describe, expect, it } from 'vitest';
import { findThings } from '../../../app/store/find-things.ts';
import { createFit, saveDraft, setFitArchived } from '../../../app/store/fits.ts';
import { saveRevision } from '../../../app/store/revisions.ts';
import { athletes, boats, paddles } from '../../../app/store/roster.ts';
import type { Store } from '../../../app/store/store.ts';
import { saveTrial } from '../../../app/store/trials.ts';
import { trialSchema } from '../../../core/trial/observation.ts';
import { inventedAthlete, inventedBoat, inventedFit, inventedPaddle } from '../invented.ts';
import { temporaryStore } from '../temporary.ts';

const kinds = (store: Store, text: string) => findThings(store, { text, limit: 30 }).map(({ kind }) => kind);
const titles = (store: Store, text: string) =>
  findThings(store, { text, limit: 30 }).map(({ title }) => title);

function club() {
  const store = temporaryStore();
  const { athlete } = athletes.save(store, inventedAthlete('Žofie Łęcka'));
  boats.save(store, inventedBoat('Grey Heron'));
  const fit = inventedFit({ athlete, name: 'Spring setting' });
  const { id: fitId } = createFit(store, fit);
  const revision = saveRevision(store, {
    fitId,
    fit,
    name: 'Lower pad',
    reason: 'Ångström said the bow dug',
  });
  if (typeof revision === 'string') throw new Error(revision);
  const trial = trialSchema.parse({
    seat: 0,
    heldOn: '2026-05-02',
    observations: [{ kind: 'body', place: 'rearToes', feeling: 'numb', strength: 2 }],
    notes: 'Après dix minutes',
  });
  saveTrial(store, { revisionId: revision.id, trial });
  return { store, fitId, fit, revisionId: revision.id };
}

describe('finding things', () => {
  it('finds athletes, boats, fits, revisions and trials by any word, accents and case aside', () => {
    const { store } = club();
    expect(kinds(store, 'LECKA').sort()).toEqual(['athlete', 'fit']);
    expect(kinds(store, 'heron').sort()).toEqual(['boat', 'fit']);
    expect(kinds(store, 'lower PAD')).toEqual(['revision']);
    expect(kinds(store, 'angstrom')).toEqual(['revision']);
    expect(kinds(store, 'apres')).toEqual(['trial']);
    expect(kinds(store, 'spring setting')).toContain('fit');
  });

  it('finds an athlete by why a joint is limited, and never by a guardian', () => {
    const { store } = club();
    const consent = { bodyData: { by: 'Grandmother Oddný', on: '2026-01-02' } };
    const limits = [{ joint: 'trunkForward' as const, maxDeg: 20, reason: 'Spondylolýsis' }];
    athletes.save(store, inventedAthlete('Somebody Else', { limits, consent }));
    expect(titles(store, 'spondylolysis')).toEqual(['Somebody Else']);
    expect(kinds(store, 'oddny')).toEqual([]);
  });

  it('finds the club’s paddles', () => {
    const { store } = club();
    paddles.save(store, inventedPaddle('Señor Reed'));
    expect(kinds(store, 'senor')).toEqual(['paddle']);
  });

  it('finds a trial by what was observed', () => {
    const { store } = club();
    expect(kinds(store, 'rear toes numb')).toEqual(['trial']);
  });

  it('wants every word, in any order and wherever it stands', () => {
    const { store } = club();
    expect(kinds(store, 'heron zofie')).toEqual(['fit']);
    expect(kinds(store, 'heron nobody')).toEqual([]);
  });

  it('finds a trial or a revision by a word of its own and others of its fit, not by its fit alone', () => {
    const { store } = club();
    expect(kinds(store, 'zofie numb')).toEqual(['trial']);
    expect(kinds(store, 'heron lower')).toEqual(['revision']);
    expect(kinds(store, 'zofie heron')).toEqual(['fit']);
  });

  it('finds a fit by its notes as they stand now', () => {
    const { store, fitId, fit } = club();
    expect(kinds(store, 'physio')).toEqual([]);
    saveDraft(store, { id: fitId, fit: { ...fit, notes: 'Seen by the Physio' } });
    expect(kinds(store, 'physio')).toEqual(['fit']);
    saveDraft(store, { id: fitId, fit });
    expect(kinds(store, 'physio')).toEqual([]);
  });

  it('takes signs of a pattern for themselves', () => {
    const { store } = club();
    for (const text of ['%', '_', '100%', '\\', "'; DROP TABLE fits; --"])
      expect(kinds(store, text)).toEqual([]);
  });

  it('puts what begins with the words first, and what was set aside last', () => {
    const { store, fitId } = club();
    createFit(store, inventedFit({ athlete: null, name: 'Later, no spring' }));
    createFit(store, inventedFit({ athlete: null, name: 'Springtime' }));
    expect(titles(store, 'spring')).toEqual(['Springtime', 'Spring setting', 'Later, no spring']);
    setFitArchived(store, fitId, true);
    expect(titles(store, 'spring').at(-1)).toBe('Spring setting');
  });

  it('with no words gives what was worked on last, nothing that was set aside', () => {
    const { store, fitId } = club();
    expect(kinds(store, '  ')).toEqual(['trial', 'fit', 'boat', 'athlete']);
    setFitArchived(store, fitId, true);
    expect(kinds(store, '')).not.toContain('fit');
  });

  it('says of each thing what the page needs to lead there', () => {
    const { store, fitId, revisionId } = club();
    expect(findThings(store, { text: 'lower pad', limit: 5 })).toMatchObject([
      { id: revisionId, fitId, number: 1, title: 'Lower pad', of: 'Spring setting', archived: false },
    ]);
    expect(findThings(store, { text: 'minutes', limit: 5 })).toMatchObject([
      { fitId, heldOn: '2026-05-02', of: 'Spring setting', words: 'Après dix minutes' },
    ]);
  });

  it('gives no more than it is asked for', () => {
    const store = temporaryStore();
    for (let i = 0; i < 12; i++) athletes.save(store, inventedAthlete(`Athlete ${i}`));
    expect(findThings(store, { text: 'athlete', limit: 5 })).toHaveLength(5);
  });
});
