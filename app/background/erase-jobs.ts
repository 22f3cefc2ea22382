import { rmSync } from 'node:fs';
import Database from 'better-sqlite3';
import { makePrivateFile } from '../shell/private-files.ts';
import { eraseFromCopies, eraseFromStore, previewErasure } from '../store/erase-everywhere.ts';
import { openBeside } from '../store/open-beside.ts';
import type { JobHooks, Jobs } from './job.ts';

/** Erases from a copy that goes at the end: nothing of the store is held, and nothing can be left in it. */
export function erasePreview(
  { file, copy, entries }: Jobs['erase-preview']['input'],
  hooks: JobHooks,
): Jobs['erase-preview']['output'] {
  try {
    copyOf(file, copy);
    hooks.goOn();
    const db = new Database(copy);
    try {
      db.pragma('synchronous = OFF');
      return entries.map((entry, i) => {
        hooks.goOn();
        hooks.progress(i, entries.length);
        return previewErasure({ db }, entry);
      });
    } finally {
      db.close();
    }
  } finally {
    for (const ending of ['', '-wal', '-shm', '-journal']) rmSync(copy + ending, { force: true });
  }
}

function copyOf(file: string, copy: string): void {
  makePrivateFile(copy);
  const db = new Database(file, { readonly: true });
  try {
    db.prepare('VACUUM INTO ?').run(copy);
  } finally {
    db.close();
  }
}

/** Erases one entry from the store. */
export function eraseStore({
  folder,
  at,
  entry,
  clear,
}: Jobs['erase-store']['input']): Jobs['erase-store']['output'] {
  const store = openBeside(folder, () => at);
  try {
    const erasure = eraseFromStore(store, entry, clear);
    return { erasure, needsBackup: store.safeguard.needsBackup() };
  } finally {
    store.safeguard.close();
    store.db.close();
  }
}

/** Erases from the copies whoever the note of the erasure under way names. */
export function eraseCopies({ folder }: Jobs['erase-copies']['input']): Jobs['erase-copies']['output'] {
  return eraseFromCopies(folder);
}
