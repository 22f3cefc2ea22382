import { chmodSync, closeSync, lstatSync, mkdirSync, openSync, readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';

/** Only the person whose data this is may look into a folder or read a file. */
const FOLDER_MODE = 0o700;
const FILE_MODE = 0o600;

/** Names of everything that this program puts into a data folder. */
const OWN_NAMES =
  /^(kneelwright\.db.*|kneelwright\.lock|backups|before-upgrade|set-aside|log|journal.*|manifest\.json.*|window\.json|display\.json.*|erasure-under-way\.json.*|import-under-way\.db.*|restoring-.*|library\.db.*|library-login.*)$/;

/** Makes a folder, with those above it, that nobody else may look into. One that is there stays as it is. */
export function makePrivateFolder(path: string): void {
  mkdirSync(path, { recursive: true, mode: FOLDER_MODE });
}

/** Makes an empty file that nobody else may read, for a library to fill that would make it readable to all. */
export function makePrivateFile(path: string): void {
  closeSync(openSync(path, 'a', FILE_MODE));
}

/**
 * Takes from everybody else the right to read what lies in a data folder. The folder itself is closed too, unless
 * other things lie in it: those are not this program's business. Windows keeps a user's folders apart by itself.
 */
export function keepPrivate(folder: string): void {
  if (process.platform === 'win32') return;
  const entries = readdirSync(folder);
  const own = entries.filter((name) => OWN_NAMES.test(name));
  if (own.length === entries.length) closeTo(folder, FOLDER_MODE);
  for (const name of own) closeTree(join(folder, name));
}

function closeTree(path: string): void {
  // A link leads out of the folder: what it points to is not touched.
  const found = lstatSync(path, { throwIfNoEntry: false });
  if (found?.isFile()) closeTo(path, FILE_MODE);
  if (!found?.isDirectory()) return;
  closeTo(path, FOLDER_MODE);
  for (const name of readdirSync(path)) closeTree(join(path, name));
}

/** Leaves the owner's own rights as they are: a file that was made read-only stays so. */
function closeTo(path: string, most: number): void {
  try {
    const mode = statSync(path).mode & 0o777;
    if ((mode & ~most) !== 0) chmodSync(path, mode & most);
  } catch {
    // Somebody else's file, or a file system without modes: nothing that could be done here.
  }
}
