import { join } from 'node:path';
import Database from 'better-sqlite3';
import { type Backup, backupFolder, listBackups } from './backup-list.ts';
import { type Manifest, readManifest, writeManifest } from './manifest.ts';
import { guardedTables, keyValues, whereKey } from './row-guard.ts';
import { positionOf } from './safeguard.ts';
import type { Store } from './store.ts';

const COUNTED = ['athletes', 'boats', 'paddles', 'fits', 'revisions', 'trials', 'boat_photos'];

/** Writes down what belongs to the store now. Not worth a refusal if it cannot be written: the next start says so. */
export function keepManifest(store: Store): void {
  try {
    const position = positionOf(store.db);
    if (!position) return;
    const counts = Object.fromEntries(
      COUNTED.map((table) => [
        table,
        store.db.prepare<[], number>(`SELECT count(*) FROM ${table}`).pluck().get()!,
      ]),
    );
    writeManifest(store.folder, { ...position, counts, backups: backupsIn(store.folder) });
  } catch {
    // A disk that takes no manifest takes no edit either, and that is told at the edit.
  }
}

/** How far the store had come at each backup; read off the file once, then off the manifest. */
function backupsIn(folder: string): Manifest['backups'] {
  const before = readManifest(folder);
  const known = before === null || before === 'damaged' ? [] : before.backups;
  return listBackups(folder).map((backup) => {
    const one = known.find(({ name, bytes }) => name === backup.name && bytes === backup.bytes);
    return one ?? { name: backup.name, bytes: backup.bytes, n: reachOf(folder, backup) };
  });
}

function reachOf(folder: string, { name }: Backup): number {
  try {
    const copy = new Database(join(backupFolder(folder), name), { readonly: true });
    const n = positionOf(copy)?.n ?? 0;
    copy.close();
    return n;
  } catch {
    return 0;
  }
}

/**
 * After a backup: the journal need only reach back to the backup before it, in case this one is damaged. Gives whether the
 * journal is whole with that.
 */
export function shortenJournal(store: Store): boolean {
  const reached = backupsIn(store.folder)
    .map(({ n }) => n)
    .sort((a, b) => b - a);
  return store.safeguard.rewrite(reached[1] ?? 0, { backedUpAt: reached[0] ?? 0 });
}

/**
 * After an erasure: the journal holds rows as they are now, and names a removed row only where a backup still has it,
 * so that nothing stays of whom neither the store nor a backup knows any more.
 */
export function forgetErased(store: Store): void {
  const copies = listBackups(store.folder).flatMap(({ name }) => {
    try {
      return [new Database(join(backupFolder(store.folder), name), { readonly: true })];
    } catch {
      return [];
    }
  });
  const tables = new Map(guardedTables(store.db).map((table) => [table.name, table]));
  const holds = (copy: Database.Database, table: string, key: string) => {
    try {
      const where = whereKey(tables.get(table)!);
      return copy.prepare(`SELECT 1 FROM "${table}" WHERE ${where}`).get(...keyValues(key)) !== undefined;
    } catch {
      // An older version without that table.
      return false;
    }
  };
  store.safeguard.rewrite(0, {
    isNeeded: ({ table, key }) => copies.some((copy) => holds(copy, table, key)),
  });
  for (const copy of copies) copy.close();
}
