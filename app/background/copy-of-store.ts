import { rmSync } from 'node:fs';
import Database from 'better-sqlite3';
import { copyAside } from '../store/aside.ts';
import { NOT_GUARDED, type Store } from '../store/store.ts';
import type { JobHooks } from './job.ts';

/**
 * Tries something in a copy of the store, which is removed at the end. The store itself is neither locked nor changed. Writes
 * to the copy are not flushed to the disk.
 */
export function inCopy<T>(
  { file, copy, at }: { file: string; copy: string; at: number },
  hooks: JobHooks,
  work: (store: Store) => T,
): T {
  try {
    copyAside(file, copy);
    hooks.goOn();
    const db = new Database(copy);
    try {
      db.pragma('synchronous = OFF');
      db.pragma('journal_mode = DELETE');
      return work({
        db,
        folder: '',
        file: copy,
        clock: () => at,
        safeguard: NOT_GUARDED,
        lock: { release() {} },
      });
    } finally {
      db.close();
    }
  } finally {
    for (const ending of ['', '-wal', '-shm', '-journal']) rmSync(copy + ending, { force: true });
  }
}
