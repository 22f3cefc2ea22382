import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { createFit, saveDraft } from '../../../app/store/fits.ts';
import { saveMeasuring } from '../../../app/store/measurings.ts';
import { addPhoto } from '../../../app/store/photos.ts';
import { listRevisions, saveRevision } from '../../../app/store/revisions.ts';
import { athletes, boats, paddles } from '../../../app/store/roster.ts';
import type { Store } from '../../../app/store/store.ts';
import { saveTrial } from '../../../app/store/trials.ts';
import { type Fit, fitSchema } from '../../../core/document/fit-schema.ts';
import { trialSchema } from '../../../core/trial/observation.ts';
import { inventedAthlete, inventedBoat, inventedFit, inventedPaddle, inventedPicture } from '../invented.ts';

export const NAME = 'Ottilie Quarrenbeck';
export const FORMER = 'Ottilie Vessenmark';
export const GUARDIAN = 'Leocadia Brimmelstow';
export const BORN = '2011-07-23';
/** A figure that stands nowhere else, so that finding it in a file finds the athlete's body. */
export const STATURE = 1.613579;

/** Everything that must not stand in any file once the person is erased: names in every case, dates, figures. */
export function marksOf(id: string): string[] {
  const names = [NAME, FORMER, GUARDIAN];
  const parts = ['Quarrenbeck', 'Vessenmark', 'Brimmelstow'];
  return [
    ...names,
    ...names.map((name) => name.toLowerCase()),
    ...parts,
    ...parts.map((part) => part.toLowerCase()),
    ...parts.map((part) => part.toUpperCase()),
    BORN,
    String(STATURE),
    id,
    'Tingles like sherbet',
    'sherbet knee',
  ];
}

/** Every file of a data folder in which a text stands, as UTF-8. */
export function filesWith(folder: string, text: string): string[] {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((name) => {
    const path = join(folder, name);
    return statSync(path).isFile() && readFileSync(path).includes(text);
  });
}

/** Fills a store with somebody who stands in every kind of row and free text, before and after a change of name. */
export function fillWithPerson(store: Store): { id: string; otherFit: string; otherAthlete: string } {
  const consent = { bodyData: { by: GUARDIAN, on: '2026-01-01' } };
  const limits = [{ joint: 'trunkForward', maxDeg: 20, reason: 'sherbet knee' } as const];
  const made = athletes.save(
    store,
    inventedAthlete(FORMER, { statureM: STATURE, bornOn: BORN, consent, limits }),
  );
  const former = made.athlete;
  const { consent: _, ...inFit } = former;
  const alone = createFit(store, inventedFit({ name: 'Alone', athlete: inFit }));
  saveRevision(store, { fitId: alone.id, fit: inventedFit({ athlete: inFit }), name: 'one', reason: '' });
  const { athlete } = athletes.save(store, { ...former, id: made.id, name: NAME });
  crewWith(store, athlete);
  saveMeasuring(store, made.id, { takenOn: '2024-04-01', statureM: STATURE, massKg: null, tape: {} });
  return { id: made.id, ...mentioned(store) };
}

function crewWith(store: Store, { consent: _, ...athlete }: ReturnType<typeof inventedAthlete>): void {
  const partner = athletes.save(store, inventedAthlete('Partner Stays')).athlete;
  const [seat] = inventedFit().seats;
  const pair: Fit = fitSchema.parse({
    ...inventedFit({ name: `Pair of ${NAME}` }),
    boat: inventedBoat('Pair', { seats: [{ stationM: 0.6 }, { stationM: -0.6 }] }),
    seats: [athlete, partner].map((one) => ({ ...seat, athlete: one })),
    notes: `Ottilie is new. ${NAME} sits in the bow.`,
  });
  const { id } = createFit(store, pair);
  saveRevision(store, { fitId: id, fit: pair, name: `For ${NAME}`, reason: 'Quarrenbeck grew' });
  const [tried] = listRevisions(store, id);
  for (const [seatIndex, notes] of ['Tingles like sherbet', `Better since ${NAME} moved`].entries()) {
    const trial = trialSchema.parse({ seat: seatIndex, heldOn: '2026-03-04', observations: [], notes });
    saveTrial(store, { revisionId: tried!.id, trial });
  }
  saveDraft(store, { id, fit: { ...pair, heelDeg: 1 } });
}

/** Free text of others in which the person is named: it stays, without the name. */
function mentioned(store: Store): { otherFit: string; otherAthlete: string } {
  const reason = `as for ${NAME}`;
  const other = athletes.save(
    store,
    inventedAthlete('Other Person', { limits: [{ joint: 'trunkSideways', maxDeg: 10, reason }] }),
  );
  const boat = boats.save(store, inventedBoat(`Boat of ${FORMER}`));
  addPhoto(store, {
    boatId: boat.id,
    caption: `${NAME} in it, her mother ${GUARDIAN}`,
    bytes: inventedPicture(),
  });
  paddles.save(store, inventedPaddle(`${NAME}'s`, { note: `bought by ${GUARDIAN.toUpperCase()}` }));
  const fit = createFit(store, inventedFit({ name: `like ${NAME.toUpperCase()}`, athlete: other.athlete }));
  saveRevision(store, {
    fitId: fit.id,
    fit: inventedFit({ name: `like ${FORMER}`, athlete: other.athlete }),
    name: `as ${FORMER}`,
    reason: `${NAME} liked it`,
  });
  return { otherFit: fit.id, otherAthlete: other.id };
}
