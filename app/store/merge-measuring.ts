import type { Incoming, IncomingMeasuring } from './incoming.ts';
import type { MergeCount } from './merge-counts.ts';
import { putBack } from './quarantine.ts';
import type { Store } from './store.ts';

/** Takes in what an athlete measured on one day; of two entries of one day the one kept later stays. */
export function mergeMeasuring(
  store: Store,
  athleteId: string,
  { measuring, savedAt }: IncomingMeasuring,
): boolean {
  const { takenOn } = measuring;
  const taken = store.db
    .prepare(
      `INSERT INTO measurings (athlete_id, taken_on, measuring, saved_at) VALUES (?, ?, ?, ?)
       ON CONFLICT (athlete_id, taken_on) DO UPDATE SET measuring = excluded.measuring, saved_at = excluded.saved_at
       WHERE excluded.saved_at > saved_at AND excluded.measuring <> measuring`,
    )
    .run(athleteId, takenOn, JSON.stringify(measuring), savedAt);
  if (taken.changes > 0) putBack(store, { table: 'measurings', rowId: `${athleteId} ${takenOn}` });
  return taken.changes > 0;
}

/** Adds a photograph that is not known by its identifier; its boat has come in before it. */
export function mergePhoto(
  store: Store,
  { id, boatId, caption, mime, addedAt, bytes }: Extract<Incoming, { kind: 'photo' }>['item'],
): keyof MergeCount {
  const added = store.db
    .prepare(
      `INSERT INTO boat_photos (id, boat_id, caption, mime, bytes, added_at) VALUES (?, ?, ?, ?, ?, ?)
       ON CONFLICT (id) DO NOTHING`,
    )
    .run(id, boatId, caption, mime, Buffer.from(bytes), addedAt);
  return added.changes > 0 ? 'added' : 'same';
}
