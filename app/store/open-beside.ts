import { join } from 'node:path';
import Database from 'better-sqlite3';
import { STORE_FILE } from './open-store.ts';
import { guardStore } from './safeguard.ts';
import type { Store } from './store.ts';

/** How long to wait for a reader of the same program, milliseconds. */
const WAIT_MS = 30_000;

/**
 * Opens the store a second time to write it, in another thread of the process that has it. The first connection has
 * lent it (`Safeguard.lend`) and writes nothing until it takes it back.
 */
export function openBeside(folder: string, clock: () => number): Store {
  const file = join(folder, STORE_FILE);
  const db = new Database(file, { timeout: WAIT_MS, fileMustExist: true });
  db.pragma('synchronous = FULL');
  db.pragma('foreign_keys = ON');
  db.pragma('trusted_schema = OFF');
  db.pragma('secure_delete = ON');
  const safeguard = guardStore({ db, folder, file }, false);
  // The lock is the first connection's, and stays with it.
  return { db, folder, file, clock, safeguard, lock: { release() {} } };
}
