import { closeSync, fsyncSync, openSync, renameSync, rmSync, writeSync } from 'node:fs';

/** Who may read a file: its owner only, or other users of this computer too. */
type Reach = 'private' | 'shared';

/**
 * Writes a file whole or not at all: beside its place first, through to the disk, then into it. A failure on the way
 * leaves what was there before. `private` files are for nobody else on this computer to read.
 */
export function atomicWrite(path: string, bytes: Uint8Array, reach: Reach = 'private'): void {
  atomicWritePieces(path, [bytes], reach);
}

/** The same in pieces, of which only one is in memory at a time. */
export function atomicWritePieces(
  path: string,
  pieces: Iterable<Uint8Array>,
  reach: Reach = 'private',
): void {
  const beside = `${path}.part`;
  try {
    const handle = openSync(beside, 'w', reach === 'private' ? 0o600 : 0o666);
    try {
      for (const bytes of pieces) for (let at = 0; at < bytes.length; ) at += writeSync(handle, bytes, at);
      fsyncSync(handle);
    } finally {
      closeSync(handle);
    }
    replace(path, beside);
  } catch (error) {
    rmSync(beside, { force: true });
    throw error;
  }
}

/** Windows may refuse to put a file into the place of one that somebody is reading: then that one is moved out of the way. */
function replace(path: string, beside: string): void {
  try {
    renameSync(beside, path);
  } catch (error) {
    if (process.platform !== 'win32') throw error;
    const old = `${path}.old.part`;
    renameSync(path, old);
    renameSync(beside, path);
    rmSync(old, { force: true });
  }
}
