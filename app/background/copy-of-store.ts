import { rmSync } from 'node:fs';
import Database from 'better-sqlite3';
import { makePrivateFile } from '../shell/private-files.ts';
import type { Store } from '../store/store.ts';
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
    makeCopy(file, copy);
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
        safeguard: NOTHING,
        lock: { release() {} },
      });
    } finally {
      db.close();
    }
  } finally {
    for (const ending of ['', '-wal', '-shm', '-journal']) rmSync(copy + ending, { force: true });
  }
}

function makeCopy(file: string, copy: string): void {
  makePrivateFile(copy);
  const db = new Database(file, { readonly: true });
  try {
    db.prepare('VACUUM INTO ?').run(copy);
  } finally {
    db.close();
  }
}

/** What is tried out is not to be guarded. */
const NOTHING: Store['safeguard'] = {
  flush() {},
  look() {},
  looked() {},
  needsBackup: () => false,
  rewrite: () => false,
  close() {},
  lend() {},
  isLent: () => false,
  takeBack() {},
};
