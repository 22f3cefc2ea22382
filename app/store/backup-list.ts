import { existsSync, readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { BACKUP_CAUSES, type BackupCause, type DatedBackup } from './backup-rotation.ts';

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

/** What a backup's own name says of it; null for any other name. */
export function datedBackup(name: string): DatedBackup | null {
  const [, day, hour, minute, second, milli, cause] = NAME.exec(name) ?? [];
  if (!day || !BACKUP_CAUSES.includes(cause as BackupCause)) return null;
  return { name, takenAt: `${day}T${hour}:${minute}:${second}.${milli}Z`, cause: cause as BackupCause };
}
