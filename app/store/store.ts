import type Database from 'better-sqlite3';

/** An open store: the database, where it lies, and the clock it stamps rows with. */
export interface Store {
  readonly db: Database.Database;
  readonly folder: string;
  readonly file: string;
  /** Milliseconds since 1970, UTC. */
  readonly clock: () => number;
}

/** The instant now, as the store writes it: ISO 8601 in UTC. */
export function now(store: Store): string {
  return new Date(store.clock()).toISOString();
}

/** Runs `work` as one transaction, written through to the disk before it returns; undone whole if it throws. */
export function atomically<T>(store: Store, work: () => T): T {
  return store.db.transaction(work).immediate();
}
