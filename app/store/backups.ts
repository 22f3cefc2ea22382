import { renameSync, rmSync, statSync } from 'node:fs';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { makePrivateFile, makePrivateFolder } from '../shell/private-files.ts';
import { type Backup, backupFolder, datedBackup, listBackups } from './backup-list.ts';
import { type BackupCause, outdatedBackups } from './backup-rotation.ts';
import { damageOf } from './integrity.ts';
import { keepManifest, shortenJournal } from './keep-manifest.ts';
import { syncFile } from './migrate.ts';
import type { Store } from './store.ts';

export { type Backup, backupFolder, listBackups } from './backup-list.ts';

/** Thrown when a backup that was just written does not read: nothing has been put in its place. */
export class BackupDamaged extends Error {
  readonly code = 'SQLITE_CORRUPT';
}

/**
 * Copies the store with SQLite's online backup while the program goes on, checks the copy, and only then gives it its
 * name. Lets go of the backups that the rotation no longer keeps.
 */
export async function takeBackup(
  store: Store,
  cause: BackupCause,
  { copy, settle }: BackupWork = HERE,
): Promise<Backup> {
  const place = backupFolder(store.folder);
  makePrivateFolder(place);
  const stamp = new Date(store.clock()).toISOString().replace(/[:.]/g, '-');
  const name = `kneelwright-${stamp}-${cause}.db`;
  const beside = join(place, `${name}.part`);
  try {
    makePrivateFile(beside);
    const damage = await copy(store, beside);
    if (damage !== null) throw new BackupDamaged(damage);
    renameSync(beside, join(place, name));
  } finally {
    for (const ending of ['', '-wal', '-shm', '-journal']) rmSync(beside + ending, { force: true });
  }
  for (const old of outdatedBackups(listBackups(store.folder), store.clock())) {
    rmSync(join(place, old.name), { force: true });
  }
  await settle(store);
  return { ...datedBackup(name)!, bytes: statSync(join(place, name)).size };
}

/** The two long parts of a backup. */
export interface BackupWork {
  /** Copies the store into one file and checks that; gives what is wrong with the copy, or null. */
  copy(store: Store, to: string): Promise<string | null>;
  /** Shortens the journal to what the backups do not hold, and notes the backup in the manifest. */
  settle(store: Store): Promise<void>;
}

/** In this thread, for programs that nobody waits for. */
const HERE: BackupWork = {
  async copy({ db }, to) {
    await db.backup(to);
    return sealCopy(to);
  },
  async settle(store) {
    shortenJournal(store);
    keepManifest(store);
  },
};

/**
 * Makes a copy a single file that any SQLite reads without writing, checks it whole, and waits for the disk. Gives what is
 * wrong with it, or null.
 */
export function sealCopy(path: string): string | null {
  const copy = new Database(path);
  try {
    copy.pragma('journal_mode = DELETE');
    const damage = damageOf(copy, 'whole');
    if (damage !== null) return damage;
  } finally {
    copy.close();
  }
  syncFile(path);
  return null;
}

/** The newest backup that reads from end to end; null if there is none. */
export function newestGoodBackup(folder: string): Backup | null {
  return listBackups(folder).find(({ name }) => isGood(join(backupFolder(folder), name))) ?? null;
}

function isGood(path: string): boolean {
  let copy: Database.Database | null = null;
  try {
    copy = new Database(path, { readonly: true });
    return damageOf(copy, 'whole') === null;
  } catch {
    return false;
  } finally {
    copy?.close();
  }
}
