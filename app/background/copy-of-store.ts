import { rmSync } from 'node:fs';
import Database from 'better-sqlite3';
import { copyAside } from '../store/aside.ts';
import { NOT_GUARDED, type Store } from '../store/store.ts';
import type { JobHooks } from './job.ts';

/**
 * Tries something out in a copy of the store that goes at the end: nothing of the store is held meanwhile, and nothing can
 * be left in it. What is written there is not waited for on the disk.
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
