import { existsSync, readdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';

/**
 * Where personal data lies beside the store itself, in one place: whatever keeps another copy is named here, so that erasing
 * reaches it.
 */

/** Folders that hold older copies of the store: database files, each with its log where it has one. */
const COPY_FOLDERS = ['backups', 'before-upgrade', 'set-aside'] as const;
/** A folder in which a backup is looked at before it is restored. */
const WORKPLACE = /^restoring-/;
/** A file that was being written, and what SQLite keeps beside it. */
const UNFINISHED_FILE = /\.part(-wal|-shm|-journal)?$/;

/** Every older copy of the store in a data folder. */
export function copiesOf(folder: string): string[] {
  return COPY_FOLDERS.flatMap((name) => filesIn(join(folder, name))).filter((path) => path.endsWith('.db'));
}

/**
 * Removes what work that was cut short has left behind: whole stores that were about to be restored, copies that were being
 * written. The store must be this process's own, so that nobody else is at such work.
 */
export function sweepLeftovers(folder: string): void {
  const places = [folder, ...COPY_FOLDERS.map((name) => join(folder, name))];
  for (const path of places.flatMap(filesIn)) {
    if (UNFINISHED_FILE.test(path)) rmSync(path, { force: true });
  }
  for (const name of existsSync(folder) ? readdirSync(folder) : []) {
    if (WORKPLACE.test(name)) rmSync(join(folder, name), { recursive: true, force: true });
  }
}

function filesIn(place: string): string[] {
  if (!existsSync(place)) return [];
  return readdirSync(place, { withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map(({ name }) => join(place, name));
}
