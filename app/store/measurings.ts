import type { Athlete } from '../../core/document/athlete-schema.ts';
import { type Measuring, measuringOf, measuringSchema } from '../../core/document/measuring-schema.ts';
import { entryIdsOf } from './join-people.ts';
import { putBack, type RowAddress, readStored } from './quarantine.ts';
import { now, type Store } from './store.ts';
import { tracked } from './track.ts';

interface Row {
  readonly takenOn: string;
  readonly text: string;
}

function placeOf(athleteId: string, takenOn: string): RowAddress {
  return { table: 'measurings', rowId: `${athleteId} ${takenOn}` };
}

/**
 * Everything that an athlete ever measured, oldest first; one entry a day. Where another entry of the same person is joined,
 * its days are among them; of one day measured in both, this entry's counts.
 */
export function listMeasurings(store: Store, athleteId: string): Measuring[] {
  const days = new Map<string, Measuring>();
  for (const measuring of entryIdsOf(store, athleteId).flatMap((id) => measuringsOf(store, id))) {
    if (!days.has(measuring.takenOn)) days.set(measuring.takenOn, measuring);
  }
  return [...days.values()].sort((a, b) => (a.takenOn < b.takenOn ? -1 : 1));
}

/** What is kept of one day under this entry; null where nothing is, or it cannot be read. */
export function measuringOn(store: Store, athleteId: string, takenOn: string): Measuring | null {
  return measuringsOf(store, athleteId).find((one) => one.takenOn === takenOn) ?? null;
}

function measuringsOf(store: Store, athleteId: string): Measuring[] {
  return store.db
    .prepare<[string], Row>(
      'SELECT taken_on AS takenOn, measuring AS text FROM measurings WHERE athlete_id = ? ORDER BY taken_on',
    )
    .all(athleteId)
    .map(({ takenOn, text }) =>
      readStored(store, placeOf(athleteId, takenOn), { text, schema: measuringSchema }),
    )
    .filter((measuring) => measuring !== null);
}

/** Keeps what was measured on one day; what was kept of the same day before gives way. */
export function saveMeasuring(store: Store, athleteId: string, measuring: Measuring): void {
  tracked(store, { kind: 'athlete', id: athleteId }, () => writeMeasuring(store, athleteId, measuring));
}

/** Writes one day's row; part of a larger edit that is noted as a whole. */
export function writeMeasuring(store: Store, athleteId: string, measuring: Measuring): void {
  const text = JSON.stringify(measuring);
  store.db
    .prepare(
      `INSERT INTO measurings (athlete_id, taken_on, measuring, saved_at) VALUES (?, ?, ?, ?)
       ON CONFLICT (athlete_id, taken_on) DO UPDATE SET measuring = excluded.measuring, saved_at = excluded.saved_at
       WHERE measuring <> excluded.measuring`,
    )
    .run(athleteId, measuring.takenOn, text, now(store));
  putBack(store, placeOf(athleteId, measuring.takenOn));
}

/** Keeps the body that an athlete's document describes among the measurings. */
export function recordBody(store: Store, athleteId: string, athlete: Athlete): void {
  writeMeasuring(store, athleteId, measuringOf(athlete, now(store).slice(0, 10)));
}

/** Takes one day's entry off the measurings; false if there is none. */
export function removeMeasuring(store: Store, athleteId: string, takenOn: string): boolean {
  return tracked(store, { kind: 'athlete', id: athleteId }, () => {
    const gone = store.db
      .prepare('DELETE FROM measurings WHERE athlete_id = ? AND taken_on = ?')
      .run(athleteId, takenOn);
    putBack(store, placeOf(athleteId, takenOn));
    return gone.changes > 0;
  });
}
