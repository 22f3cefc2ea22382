import { copyFileSync, mkdtempSync, renameSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { copyAside, workAside } from './aside.ts';
import { backupFolder, listBackups } from './backups.ts';
import { addRowsOf, mergeSteps, otherTables } from './merge.ts';
import { closeStore, openStore, STORE_FILE } from './open-store.ts';

import { readLeaves } from './record-rows.ts';
import { incomingLength, soundItems } from './sound-items.ts';
import { atomically, type Store } from './store.ts';
import { countOnFrom, renewIdentity } from './store-identity.ts';
import { noteChange } from './track.ts';

/** `replace` makes the store what it was then; `bring-back` only adds what is missing now. */
export type RestoreHow = 'replace' | 'bring-back';
/** How a restoring tells how far it is; `goOn` throws if it is asked to stop, and then nothing has been changed. */
interface RestoreHooks {
  progress(done: number, of: number): void;
  goOn(): void;
}
export type Restored = 'restored' | 'no-such-backup' | 'unreadable';

/**
 * Restores a backup, in one transaction: a crash on the way leaves the store as it was. The backup itself is only
 * copied from; a backup of an older version is upgraded in that copy.
 */
export function restoreBackup(
  store: Store,
  { name, how }: { name: string; how: RestoreHow },
  hooks: RestoreHooks = { progress() {}, goOn() {} },
): Restored {
  if (!listBackups(store.folder).some((backup) => backup.name === name)) return 'no-such-backup';
  const workplace = mkdtempSync(join(store.folder, 'restoring-'));
  try {
    const copy = join(workplace, STORE_FILE);
    copyFileSync(join(backupFolder(store.folder), name), copy);
    const opening = openStore(workplace, store.clock);
    if (opening.kind === 'refused') return 'unreadable';
    closeStore(opening.store);
    hooks.goOn();
    withAttached(store, copy, () =>
      atomically(store, () =>
        how === 'replace' ? replaceEveryRow(store, hooks) : bringBack(store, copy, hooks),
      ),
    );
    return 'restored';
  } finally {
    rmSync(workplace, { recursive: true, force: true });
  }
}

/**
 * Prepares a file aside that holds what the store is to be after a restoring; the store itself, `file`, is only read. It then
 * takes the store's place (`takeAside`).
 */
export function prepareRestored(
  where: { folder: string; file: string; part: string; at: number; name: string; how: RestoreHow },
  hooks: RestoreHooks,
): Restored {
  const { folder, file, part, at, name, how } = where;
  if (!listBackups(folder).some((backup) => backup.name === name)) return 'no-such-backup';
  const workplace = mkdtempSync(join(folder, 'restoring-'));
  try {
    const copy = join(workplace, STORE_FILE);
    copyFileSync(join(backupFolder(folder), name), copy);
    const opening = openStore(workplace, () => at);
    if (opening.kind === 'refused') return 'unreadable';
    closeStore(opening.store);
    hooks.goOn();
    if (how === 'replace') renameSync(copy, part);
    else copyAside(file, part);
    workAside({ folder: workplace, part, clock: () => at }, (store) =>
      withAttached(store, how === 'replace' ? file : copy, () =>
        atomically(store, () => {
          if (how === 'bring-back') return bringBack(store, copy, hooks);
          renewIdentity(store);
          addRowsOf(store, 'erased_people', 'other');
        }),
      ),
    );
    return 'restored';
  } finally {
    rmSync(workplace, { recursive: true, force: true });
  }
}

/** Adds what is missing now, record by record. */
function bringBack(store: Store, copy: string, { progress, goOn }: RestoreHooks): void {
  const db = new Database(copy, { readonly: true });
  try {
    const of = incomingLength(db);
    let done = 0;
    for (const _ of mergeSteps(store, soundItems(db), 'bring-back')) {
      goOn();
      done += 1;
      progress(done, of);
    }
  } finally {
    db.close();
  }
  noteAddedPhotos(store, () => {
    for (const table of otherTables(store)) addRowsOf(store, table, 'other');
  });
}

/** Names another database file `other` for the time of `work`. */
export function withAttached<T>(store: Store, path: string, work: () => T): T {
  store.db.prepare('ATTACH ? AS other').run(path);
  try {
    return work();
  } finally {
    store.db.exec('DETACH other');
  }
}

/** Photographs that come back are written down as an edit: a removal that was noted earlier no longer holds. */
function noteAddedPhotos(store: Store, add: () => void): void {
  const ids = () => store.db.prepare<[], string>('SELECT id FROM boat_photos').pluck().all();
  const before = new Set(ids());
  add();
  for (const id of ids().filter((one) => !before.has(one))) {
    const ref = { kind: 'photo', id } as const;
    noteChange(store, ref, { before: null, after: readLeaves(store, ref, 'as-kept') });
  }
}

/**
 * Every table's rows give way to those of the other database, which has the same version. The store goes on under a new
 * name, since it may write again what it wrote before; people who were erased since then stay so.
 */
function replaceEveryRow(store: Store, { progress, goOn }: RestoreHooks): void {
  const { db } = store;
  const tables = db
    .prepare<[], string>(
      "SELECT name FROM main.sqlite_schema WHERE type = 'table' AND name NOT LIKE 'sqlite_%'",
    )
    .pluck()
    .all();
  db.pragma('defer_foreign_keys = ON');
  db.exec('INSERT INTO erasing (revision_id) SELECT id FROM revisions');
  const replaced = tables.filter((name) => !KEPT_TABLES.includes(name));
  for (const table of replaced) db.exec(`DELETE FROM main."${table}"`);
  // WHERE keeps SQLite from copying whole pages, a short cut that leaves deferred foreign keys uncounted.
  for (const [done, table] of replaced.entries()) {
    goOn();
    progress(done, replaced.length);
    db.exec(`INSERT INTO main."${table}" SELECT * FROM other."${table}" WHERE true`);
  }
  db.exec('DELETE FROM erasing');
  renewIdentity(store);
  const counters = 'SELECT coalesce(max(counter), 0) FROM other.this_store';
  countOnFrom(store, db.prepare<[], number>(counters).pluck().get()!);
  addRowsOf(store, 'erased_people', 'other');
}

const KEPT_TABLES = ['erasing', 'this_store', 'erased_people', 'row_sums', 'journal_position'];
