import { closeSync, fsyncSync, openSync, renameSync, rmSync, writeSync } from 'node:fs';

/**
 * Writes a file whole or not at all: beside its place first, through to the disk, then into it. A failure on the way
 * leaves what was there before. `private` files are for nobody else on this computer to read.
 */
export function atomicWrite(path: string, bytes: Uint8Array, reach: 'private' | 'shared' = 'private'): void {
  const beside = `${path}.part`;
  try {
    const handle = openSync(beside, 'w', reach === 'private' ? 0o600 : 0o666);
    try {
      for (let at = 0; at < bytes.length; ) at += writeSync(handle, bytes, at);
      fsyncSync(handle);
    } finally {
      closeSync(handle);
    }
    renameSync(beside, path);
  } catch (error) {
    rmSync(beside, { force: true });
    throw error;
  }
}
