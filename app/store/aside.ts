import { closeSync, fsyncSync, openSync, renameSync, rmSync } from 'node:fs';
import Database from 'better-sqlite3';
import { makePrivateFile } from '../shell/private-files.ts';
import { writeJournal } from './journal-file.ts';
import { syncFile } from './migrate.ts';
import { settlePragmas } from './open-store.ts';
import {
  type GuardedTable,
  guardedTables,
  guardRows,
  keyValues,
  type RowValue,
  whereKey,
} from './row-guard.ts';
import { guardStore, positionOf } from './safeguard.ts';
import { NOT_GUARDED, type Safeguard, type Store } from './store.ts';
import { counterOf, countOnFrom, settlePlace } from './store-identity.ts';

/**
 * A store that is prepared aside: a copy in which a worker does what takes long, while edits go on in the store itself. At the end
 * it takes the store's place in a moment, with the rows that were written meanwhile.
 */

/** Writes made aside count from at least this far above the store's own counter, so that no two writes share a number. */
const COUNT_APART = 100_000;

/** One row, by its table and key. */
export interface RowKey {
  readonly table: string;
  readonly key: string;
}

/** Copies the store as it is at this moment into a private file. */
export function copyAside(file: string, to: string): void {
  makePrivateFile(to);
  const db = new Database(file, { readonly: true });
  try {
    db.prepare('VACUUM INTO ?').run(to);
  } finally {
    db.close();
  }
}

/** Works in a store aside, with checksums; nothing is waited for on the disk until its end. */
export function workAside<T>(
  { folder, part, clock }: { folder: string; part: string; clock: () => number },
  work: (store: Store) => T,
): T {
  const db = new Database(part, { fileMustExist: true });
  try {
    db.pragma('journal_mode = DELETE');
    db.pragma('synchronous = OFF');
    db.pragma('foreign_keys = ON');
    db.pragma('secure_delete = ON');
    guardRows(db, () => {});
    const store: Store = { db, folder, file: part, clock, safeguard: NOT_GUARDED, lock: { release() {} } };
    countOnFrom(store, counterOf(store) + COUNT_APART);
    const done = work(store);
    db.exec('VACUUM');
    return done;
  } finally {
    db.close();
    syncFile(part);
  }
}

/** Writes rows into the store aside as they are in the store itself. Throws where something they belong to is not there. */
export function carryOver({ db }: Store, part: string, changed: readonly RowKey[]): void {
  const aside = new Database(part, { fileMustExist: true });
  try {
    aside.pragma('synchronous = OFF');
    aside.pragma('foreign_keys = ON');
    aside.pragma('secure_delete = ON');
    guardRows(aside, () => {});
    const tables = new Map(guardedTables(db).map((table) => [table.name, table]));
    aside.transaction(() => {
      aside.pragma('defer_foreign_keys = ON');
      const unlock = aside.prepare('INSERT OR IGNORE INTO erasing (revision_id) VALUES (?)');
      for (const { table, key } of changed)
        if (table.startsWith('revision')) unlock.run(String(keyValues(key)[0]));
      for (const { table, key } of changed) copyRow(db, aside, tables.get(table)!, key);
      aside.exec('DELETE FROM erasing');
    })();
  } finally {
    aside.close();
  }
}

function copyRow(from: Database.Database, to: Database.Database, table: GuardedTable, key: string): void {
  const row = from
    .prepare<RowValue[], RowValue[]>(`SELECT * FROM "${table.name}" WHERE ${whereKey(table)}`)
    .raw()
    .get(...keyValues(key));
  to.prepare(`DELETE FROM "${table.name}" WHERE ${whereKey(table)}`).run(...keyValues(key));
  if (row) to.prepare(`INSERT INTO "${table.name}" VALUES (${row.map(() => '?').join(', ')})`).run(...row);
}

/**
 * Puts the file aside into the place of the store, which is open on it when this returns. The store's own file goes, or to
 * `oldTo`. The journal begins again: a backup is needed. A crash on the way leaves one of both whole.
 */
export function takeAside(store: Store, part: string, oldTo: string | null = null): void {
  const { file, folder } = store;
  store.safeguard.look();
  const { line, n } = prepareToTake(store, part);
  store.safeguard.close();
  store.db.pragma('wal_checkpoint(TRUNCATE)');
  if (oldTo) store.db.pragma('journal_mode = DELETE');
  store.db.close();
  for (const ending of ['-wal', '-shm']) rmSync(file + ending, { force: true });
  if (oldTo) renameSync(file, oldTo);
  renameSync(part, file);
  syncFolder(folder);
  writeJournal(folder, { line, from: n }, []);
  const db = new Database(file, { fileMustExist: true });
  settlePragmas(db);
  const safeguard = guardStore({ db, folder, file }, false);
  safeguard.takeBack({ needsBackup: true });
  Object.assign(store as { db: Database.Database; safeguard: Safeguard }, { db, safeguard });
}

/** Gives the file aside the store's place, and counts on from both. */
function prepareToTake(store: Store, part: string): { line: string; n: number } {
  const here = positionOf(store.db)!;
  const aside = new Database(part, { fileMustExist: true });
  try {
    const n = Math.max(here.n, positionOf(aside)!.n) + 1;
    aside.transaction(() => {
      aside.prepare('UPDATE journal_position SET line = ?, n = ?').run(here.line, n);
      countOnFrom({ db: aside }, counterOf(store));
      settlePlace({ db: aside, file: part, at: store.file });
    })();
    return { line: here.line, n };
  } finally {
    aside.close();
    syncFile(part);
  }
}

function syncFolder(folder: string): void {
  try {
    const handle = openSync(folder, 'r');
    fsyncSync(handle);
    closeSync(handle);
  } catch {
    // Some systems open no folder: there the file system sees to it.
  }
}
