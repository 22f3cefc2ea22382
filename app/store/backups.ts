import { existsSync, readdirSync, renameSync, rmSync, statSync } from 'node:fs';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { makePrivateFile, makePrivateFolder } from '../shell/private-files.ts';
import { BACKUP_CAUSES, type BackupCause, type DatedBackup, outdatedBackups } from './backup-rotation.ts';
import { damageOf } from './integrity.ts';
import { syncFile } from './migrate.ts';
import type { Store } from './store.ts';

/** A backup as listed. */
export interface Backup extends DatedBackup {
  readonly bytes: number;
}

const FOLDER = 'backups';
const NAME = /^kneelwright-(\d{4}-\d{2}-\d{2})T(\d{2})-(\d{2})-(\d{2})-(\d{3})Z-([a-z-]+)\.db$/;

/** Where a store's backups lie. */
export function backupFolder(folder: string): string {
  return join(folder, FOLDER);
}

/** Every backup in a data folder, newest first. Files that were not made here are left out. */
export function listBackups(folder: string): Backup[] {
  const place = backupFolder(folder);
  if (!existsSync(place)) return [];
  return readdirSync(place)
    .flatMap((name) => {
      const dated = datedBackup(name);
      return dated ? [{ ...dated, bytes: statSync(join(place, name)).size }] : [];
    })
    .sort((a, b) => b.takenAt.localeCompare(a.takenAt));
}

function datedBackup(name: string): DatedBackup | null {
  const [, day, hour, minute, second, milli, cause] = NAME.exec(name) ?? [];
  if (!day || !BACKUP_CAUSES.includes(cause as BackupCause)) return null;
  return { name, takenAt: `${day}T${hour}:${minute}:${second}.${milli}Z`, cause: cause as BackupCause };
}

/** Thrown when a backup that was just written does not read: nothing has been put in its place. */
export class BackupDamaged extends Error {
  readonly code = 'SQLITE_CORRUPT';
}

/**
 * Copies the store with SQLite's online backup while the program goes on, checks the copy, and only then gives it its
 * name. Lets go of the backups that the rotation no longer keeps.
 */
export async function takeBackup(store: Store, cause: BackupCause): Promise<Backup> {
  const place = backupFolder(store.folder);
  makePrivateFolder(place);
  const stamp = new Date(store.clock()).toISOString().replace(/[:.]/g, '-');
  const name = `kneelwright-${stamp}-${cause}.db`;
  const beside = join(place, `${name}.part`);
  try {
    makePrivateFile(beside);
    await store.db.backup(beside);
    sealCopy(beside);
    renameSync(beside, join(place, name));
  } finally {
    for (const ending of ['', '-wal', '-shm', '-journal']) rmSync(beside + ending, { force: true });
  }
  for (const old of outdatedBackups(listBackups(store.folder), store.clock())) {
    rmSync(join(place, old.name), { force: true });
  }
  return { ...datedBackup(name)!, bytes: statSync(join(place, name)).size };
}

/** Makes a copy a single file that any SQLite reads without writing, checks it whole, and waits for the disk. */
function sealCopy(path: string): void {
  const copy = new Database(path);
  try {
    copy.pragma('journal_mode = DELETE');
    const damage = damageOf(copy, 'whole');
    if (damage !== null) throw new BackupDamaged(damage);
  } finally {
    copy.close();
  }
  syncFile(path);
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
