import { join } from 'node:path';
import Database from 'better-sqlite3';
import { type Backup, backupFolder, listBackups } from './backup-list.ts';
import { damageOf } from './integrity.ts';
import { hasSums, listOddRows } from './row-sums.ts';
import { type Position, positionOf } from './safeguard.ts';

/** A backup that reads from end to end, and where the store stood when it was taken (null: a version without). */
export interface GoodCopy {
  readonly backup: Backup;
  readonly path: string;
  readonly position: Position | null;
}

/** Every backup of a data folder that is as it was written, the one that had come furthest first. */
export function goodCopies(folder: string): GoodCopy[] {
  return listBackups(folder)
    .flatMap((backup) => {
      const path = join(backupFolder(folder), backup.name);
      const position = goodPosition(path);
      return position === 'damaged' ? [] : [{ backup, path, position }];
    })
    .sort((a, b) => (b.position?.n ?? -1) - (a.position?.n ?? -1));
}

function goodPosition(path: string): Position | null | 'damaged' {
  let copy: Database.Database | null = null;
  try {
    copy = new Database(path, { readonly: true });
    if (damageOf(copy, 'whole') !== null) return 'damaged';
    if (hasSums(copy) && listOddRows(copy).length > 0) return 'damaged';
    return positionOf(copy);
  } catch {
    return 'damaged';
  } finally {
    copy?.close();
  }
}
