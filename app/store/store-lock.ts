import { join } from 'node:path';
import Database from 'better-sqlite3';
import { makePrivateFile } from '../shell/private-files.ts';

/** Lies beside the store, empty: whoever has it locked is the one program that works on the folder. */
const LOCK_FILE = 'kneelwright.lock';

/** Holds a data folder for this process. A crash frees it. */
export interface StoreLock {
  release(): void;
}

/**
 * Takes the data folder for this process. Node has no file locks of its own; an open transaction of SQLite holds one on
 * every system. The store itself stays free for other connections of this process: a worker reads what was kept while
 * edits go on. Throws `SQLITE_BUSY` if another program has the folder after `waitMs`. The file stays when it is
 * released: removing it would let two programs hold two files of one name.
 */
export function takeStoreLock(folder: string, waitMs: number): StoreLock {
  const file = join(folder, LOCK_FILE);
  makePrivateFile(file);
  const lock = new Database(file, { timeout: waitMs });
  try {
    lock.exec('BEGIN EXCLUSIVE');
  } catch (error) {
    lock.close();
    throw error;
  }
  return { release: () => lock.close() };
}
