import { closeSync, fsyncSync, openSync, writeSync } from 'node:fs';

/** Writes pieces into a file that nobody else may read, and waits for the disk; gives its size, bytes. */
export async function writePrivateFile(
  path: string,
  pieces: Iterable<Uint8Array> | AsyncIterable<Uint8Array>,
): Promise<number> {
  const out = openSync(path, 'w', 0o600);
  let bytes = 0;
  try {
    for await (const piece of pieces) {
      for (let done = 0; done < piece.length; ) done += writeSync(out, piece, done);
      bytes += piece.length;
    }
    fsyncSync(out);
  } finally {
    closeSync(out);
  }
  return bytes;
}
