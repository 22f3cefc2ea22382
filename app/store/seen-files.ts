import { statSync } from 'node:fs';

/** The state of a store's file and its log when this program last used them. */
export interface SeenFiles {
  readonly file: string;
  readonly log: string;
  /** The file's size and the time it was last written. */
  readonly written: string;
}

/**
 * Looks at the store's file and its log without opening them: a second opening and closing in this process would drop
 * the operating system's locks on them.
 */
export function seenFiles(file: string): SeenFiles {
  const found = statSync(file, { bigint: true, throwIfNoEntry: false });
  return {
    file: placeOf(file),
    log: placeOf(`${file}-wal`),
    written: found ? `${found.size} ${found.mtimeNs}` : 'none',
  };
}

function placeOf(path: string): string {
  const found = statSync(path, { bigint: true, throwIfNoEntry: false });
  return found ? `${found.dev} ${found.ino}` : 'none';
}

/** Whether these are the same files on the disk, whatever has been written into them. */
export function samePlaces(before: SeenFiles, after: SeenFiles): boolean {
  return before.file === after.file && before.log === after.log;
}

/** Whether these are the same files and nobody has written into the store's own. */
export function sameFiles(before: SeenFiles, after: SeenFiles): boolean {
  return samePlaces(before, after) && before.written === after.written;
}
