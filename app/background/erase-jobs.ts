import Database from 'better-sqlite3';
import { copyAside, workAside } from '../store/aside.ts';
import {
  beginErasure,
  endErasure,
  eraseFromCopies,
  eraseFromStore,
  eraseNoted,
  previewErasure,
} from '../store/erase-everywhere.ts';
import { openBeside } from '../store/open-beside.ts';
import { inCopy } from './copy-of-store.ts';
import type { JobHooks, Jobs } from './job.ts';

/** Says what erasing would take away, by doing it in a copy. */
export function erasePreview(
  { entries, ...where }: Jobs['erase-preview']['input'],
  hooks: JobHooks,
): Jobs['erase-preview']['output'] {
  return inCopy({ ...where, at: 0 }, hooks, (store) =>
    entries.map((entry, i) => {
      hooks.goOn();
      hooks.progress(i, entries.length);
      return previewErasure(store, entry);
    }),
  );
}

/** Erases one entry from the copies of the store, and from a copy aside. Edits go on meanwhile. */
export function eraseAside({
  folder,
  file,
  part,
  at,
  entry,
  clear,
}: Jobs['erase-aside']['input']): Jobs['erase-aside']['output'] {
  const db = new Database(file, { readonly: true });
  try {
    beginErasure({ db, folder }, entry, clear);
  } finally {
    db.close();
  }
  const copies = eraseFromCopies(folder);
  copyAside(file, part);
  const erasure = workAside({ folder, part, clock: () => at }, eraseNoted);
  return { ...erasure, ...copies };
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

/** Erases the person whom the note of the present erasure names from the copies. */
export function eraseCopies({ folder }: Jobs['erase-copies']['input']): Jobs['erase-copies']['output'] {
  return eraseFromCopies(folder);
}

/** Erases from the journal, and ends the erasure. The main thread writes nothing meanwhile. */
export function eraseJournal({
  folder,
  at,
}: Jobs['erase-journal']['input']): Jobs['erase-journal']['output'] {
  const store = openBeside(folder, () => at);
  try {
    endErasure(store);
    return { needsBackup: store.safeguard.needsBackup() };
  } finally {
    store.safeguard.close();
    store.db.close();
  }
}
