import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { takeBackup } from '../../../app/store/backups.ts';
import { eraseEverywhere, finishErasures, previewErasure } from '../../../app/store/erase-everywhere.ts';
import { createFit, listFits, openFit, saveDraft } from '../../../app/store/fits.ts';
import { saveMeasuring } from '../../../app/store/measurings.ts';
import { closeStore } from '../../../app/store/open-store.ts';
import { listRevisions, openRevision, saveRevision } from '../../../app/store/revisions.ts';
import { athletes } from '../../../app/store/roster.ts';
import type { Store } from '../../../app/store/store.ts';
import { listTrials, saveTrial } from '../../../app/store/trials.ts';
import { type Fit, fitSchema } from '../../../core/document/fit-schema.ts';
import { trialSchema } from '../../../core/trial/observation.ts';
import { inventedAthlete, inventedBoat, inventedFit } from '../invented.ts';
import { temporaryStore } from '../temporary.ts';
import { filesWith } from './marked-person.ts';

const page = { archived: false, search: '', limit: 200, offset: 0 };
const NAME = 'Ottilie Quarrenbeck';
/** A figure that stands nowhere else, so that finding it in a file finds the athlete's body. */
const STATURE = 1.613579;

function pairOf(name: string, crew: ReturnType<typeof inventedAthlete>[], more: Partial<Fit> = {}): Fit {
  const [seat] = inventedFit().seats;
  return fitSchema.parse({
    ...inventedFit({ name }),
    boat: inventedBoat('Pair', { seats: [{ stationM: 0.6 }, { stationM: -0.6 }] }),
    seats: crew.map((athlete) => ({
      ...seat,
      athlete,
      bands: [{ quantity: 'frontKnee', min: null, max: 2, reason: `${athlete.name} has a sore knee` }],
    })),
    ...more,
  });
}

/** What was felt by the athlete who is to be erased, in words that stand nowhere else. */
const FELT = 'Tingles like sherbet';

/** One trial each of both of a crew, the partner's with the other's name in it, and a revision that answers both. */
function keepTrials(store: Store, fitId: string, fit: Fit): void {
  const [tried] = listRevisions(store, fitId);
  const observation = { kind: 'body', place: 'rearToes', feeling: 'tingling', strength: 1 } as const;
  const trialIds = [FELT, `Better since ${NAME} moved`].map((notes, seat) => {
    const trial = trialSchema.parse({ seat, heldOn: '2026-03-04', observations: [observation], notes });
    const kept = saveTrial(store, { revisionId: tried!.id, trial });
    if (typeof kept === 'string') throw new Error(kept);
    return kept.id;
  });
  const answers = trialIds.map((trialId) => ({ trialId, observation }));
  saveRevision(store, { fitId, fit, name: 'Answers both', reason: '', answers });
}

/** A store in which the athlete is everywhere: the roster, a fit alone, a crew, revisions, a draft, words, trials, a backup. */
async function storeWith(): Promise<{ store: Store; person: { id: string; name: string }; crewId: string }> {
  const store = temporaryStore();
  const { id, athlete } = athletes.save(store, inventedAthlete(NAME, { statureM: STATURE }));
  const partner = athletes.save(store, inventedAthlete('Partner Stays')).athlete;
  const alone = createFit(store, inventedFit({ name: 'Alone', athlete }));
  saveRevision(store, {
    fitId: alone.id,
    fit: inventedFit({ name: 'Alone', athlete }),
    name: 'one',
    reason: '',
  });
  const pair = pairOf('Pair of two', [athlete, partner], {
    notes: `Ottilie is new. ${NAME} sits in the bow.`,
  });
  const crew = createFit(store, pair);
  saveRevision(store, { fitId: crew.id, fit: pair, name: `For ${NAME}`, reason: 'Quarrenbeck grew' });
  keepTrials(store, crew.id, pair);
  saveDraft(store, { id: crew.id, fit: { ...pair, heelDeg: 1 } });
  saveMeasuring(store, id, { takenOn: '2024-04-01', statureM: STATURE, massKg: null, tape: {} });
  await takeBackup(store, 'daily');
  return { store, person: { id, name: NAME }, crewId: crew.id };
}

describe('erasing an athlete', () => {
  it('leaves no byte of name, identifier or body in any file of the data folder', async () => {
    const { store, person } = await storeWith();
    const traces = [NAME, 'Quarrenbeck', 'quarrenbeck', person.id, String(STATURE), FELT];
    for (const trace of traces) expect(filesWith(store.folder, trace), trace).not.toEqual([]);
    const erased = eraseEverywhere(store, person);
    expect(erased).toMatchObject({
      fits: ['Alone'],
      crewFits: ['Pair of two'],
      revisions: 3,
      drafts: 1,
      trials: 1,
    });
    expect(erased).toMatchObject({ copiesRewritten: 1, copiesLeft: [] });
    closeStore(store);
    for (const trace of traces) expect(filesWith(store.folder, trace), trace).toEqual([]);
  });

  it('leaves the crew its fit, revisions and partner, with the seat empty and its words without the name', async () => {
    const { store, person, crewId } = await storeWith();
    eraseEverywhere(store, person);
    const opened = openFit(store, crewId);
    expect(opened).toMatchObject({
      fit: {
        notes: '(erased) is new. (erased) sits in the bow.',
        seats: [{ athlete: null, bands: [] }, { athlete: { name: 'Partner Stays' } }],
      },
    });
    const [answering, revision] = listRevisions(store, crewId);
    expect(revision).toMatchObject({ name: 'For (erased)', reason: '(erased) grew' });
    expect(answering!.answers).toHaveLength(1);
    expect(listTrials(store, crewId)).toMatchObject([
      { id: answering!.answers[0]!.trialId, trial: { seat: 1, notes: 'Better since (erased) moved' } },
    ]);
    expect(openRevision(store, revision!.id)).toMatchObject({ fit: { seats: [{ athlete: null }, {}] } });
    expect(listFits(store, page)).toMatchObject([{ athleteNames: ['Partner Stays'] }]);
    expect(() => store.db.exec('DELETE FROM revisions')).toThrow('never deleted');
  });

  it('takes with it a trial of the crew that does not read, and what was answered to it', async () => {
    const { store, person, crewId } = await storeWith();
    const partners = "athlete_id IS NOT (SELECT id FROM athletes WHERE name = 'Ottilie Quarrenbeck')";
    store.db.exec(
      `UPDATE trials SET trial = '{"notes": "by Ottilie, of a later program"}' WHERE ${partners}`,
    );
    expect(listTrials(store, crewId)).toHaveLength(1);
    expect(eraseEverywhere(store, person).trials).toBe(2);
    expect(listRevisions(store, crewId)[0]!.answers).toEqual([]);
    expect(store.db.prepare("SELECT 1 FROM field_versions WHERE kind = 'trial'").all()).toEqual([]);
    expect(store.db.prepare('SELECT 1 FROM quarantine').all()).toEqual([]);
  });

  it('says first what it would take, and changes nothing by saying it', async () => {
    const { store, person } = await storeWith();
    const before = store.db.serialize();
    expect(previewErasure(store, person)).toMatchObject({ fits: ['Alone'], crewFits: ['Pair of two'] });
    expect(store.db.serialize().equals(before)).toBe(true);
  });

  it('lists a copy that it cannot rewrite, and leaves that file as it is', async () => {
    const { store, person } = await storeWith();
    const torn = join(store.folder, 'backups', 'kneelwright-2026-01-01T00-00-00-000Z-daily.db');
    writeFileSync(torn, `SQLite format 3\0 and then ${NAME} in rubble`);
    expect(eraseEverywhere(store, person).copiesLeft).toEqual([torn]);
    expect(readFileSync(torn, 'utf8')).toContain(NAME);
  });

  it('that was cut short is finished at the next start', async () => {
    const { store, person } = await storeWith();
    writeFileSync(join(store.folder, 'erasure-under-way.json'), JSON.stringify(person));
    expect(finishErasures(store)).toEqual([]);
    expect(existsSync(join(store.folder, 'erasure-under-way.json'))).toBe(false);
    expect(athletes.get(store, person.id)).toBe(null);
    expect(filesWith(join(store.folder, 'backups'), NAME)).toEqual([]);
  });
});
