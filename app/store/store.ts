import type Database from 'better-sqlite3';
import type { StoreLock } from './store-lock.ts';

/** An open store: the database, where it lies, and the clock it stamps rows with. */
export interface Store {
  readonly db: Database.Database;
  readonly folder: string;
  readonly file: string;
  /** Milliseconds since 1970, UTC. */
  readonly clock: () => number;
  readonly safeguard: Safeguard;
  /** Keeps every other program out of the folder. */
  readonly lock: StoreLock;
}

/** What is written beside the store so that damage to it shows, and can be undone. */
export interface Safeguard {
  /**
   * Writes down the rows that have been written; on the disk when this returns. Throws if they cannot be. `unjournalled`: only
   * that there were some, and a backup is needed.
   */
  flush(how?: { unjournalled?: boolean }): void;
  /** Throws `StoreReplaced` if somebody else has put another file in the store's place since `looked`. */
  look(): void;
  /** Writes down what is left to write down, and remembers how the files look now. */
  looked(): void;
  /** Whether only a fresh backup makes the journal whole again: a write was too large for it. */
  needsBackup(): boolean;
  /**
   * Writes the journal again: changes up to number `from` go, each row stands once, as it is now. `backedUpAt`: a backup
   * holds everything up to that number; gives whether that makes the journal whole. `isNeeded` tells whether the removal of a row must still be known.
   */
  rewrite(
    from: number,
    more?: { backedUpAt?: number; isNeeded?: (removed: { table: string; key: string }) => boolean },
  ): boolean;
  close(): void;
  /** Notes from now on which rows are written, until it ends. */
  watch(): { changed(): readonly { table: string; key: string }[]; end(): void };
  /** Writes down what is left and lets go of the journal, so that a worker can write the store meanwhile. */
  lend(): void;
  /** Whether a worker has the store: it may be read here, not written. */
  isLent(): boolean;
  /**
   * Takes the store as the worker has left it. `needsBackup`: a write there was too large for the journal. `settled`: the
   * worker has made the journal whole.
   */
  takeBack(left: { needsBackup: boolean; settled?: boolean }): void;
}

/** The instant now, as the store writes it: ISO 8601 in UTC. */
export function now(store: Pick<Store, 'clock'>): string {
  return new Date(store.clock()).toISOString();
}

/**
 * Runs `work` as one transaction, written through to the disk before it returns; undone whole if it throws. What it
 * wrote is in the journal before the store itself says that it is kept.
 */
export function atomically<T>(store: Store, work: () => T, how: { unjournalled?: boolean } = {}): T {
  if (store.db.inTransaction) return store.db.transaction(work).immediate();
  return store.db
    .transaction(() => {
      const result = work();
      store.safeguard.flush(how);
      return result;
    })
    .immediate();
}

/** For a copy in which something is tried out or prepared. */
export const NOT_GUARDED: Safeguard = {
  flush() {},
  look() {},
  looked() {},
  needsBackup: () => false,
  rewrite: () => false,
  close() {},
  lend() {},
  isLent: () => false,
  watch: () => ({ changed: () => [], end() {} }),
  takeBack() {},
};
