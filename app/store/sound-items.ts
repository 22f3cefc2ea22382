import type Database from 'better-sqlite3';
import { fitInPieces } from './fit-parts.ts';
import type { Incoming } from './incoming.ts';
import { readIncomingAthletes, readIncomingBoats, readIncomingPaddles } from './read-incoming.ts';

/** A long fit is read in pieces of about so many bytes. */
const MOST_AT_ONCE = 4 * 1024 * 1024;

/** Everything in a sound store but its photographs, one record at a time: those that do not read are left out. */
export function* soundItems(db: Database.Database): Generator<Incoming> {
  for (const item of readIncomingAthletes(db)) yield { kind: 'athlete', item };
  for (const item of readIncomingBoats(db)) yield { kind: 'boat', item };
  for (const item of readIncomingPaddles(db)) yield { kind: 'paddle', item };
  for (const id of db.prepare<[], string>('SELECT id FROM fits ORDER BY created_at, id').pluck().all()) {
    yield* fitInPieces(db, id, MOST_AT_ONCE);
  }
}

/** How many records `soundItems` gives, about. */
export function incomingLength(db: Database.Database): number {
  const counts = ['athletes', 'boats', 'paddles', 'fits'].map((table) => `(SELECT count(*) FROM ${table})`);
  return (
    db
      .prepare<[], number>(`SELECT ${counts.join(' + ')}`)
      .pluck()
      .get() ?? 0
  );
}
