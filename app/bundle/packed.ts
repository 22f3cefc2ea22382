import { closeSync, fstatSync, openSync, readSync } from 'node:fs';

/** How much is read at once, bytes: bounds how far a bomb can swell before it is seen. */
const SLICE = 64 * 1024;

/** A packed bundle, to be read from its start as often as needed, slice by slice. */
export interface Packed {
  /** Bytes. */
  readonly size: number;
  slices(): Iterable<Uint8Array>;
}

/** A bundle in memory. */
export function packedBytes(bytes: Uint8Array): Packed {
  return {
    size: bytes.length,
    *slices() {
      for (let at = 0; at < bytes.length; at += SLICE) yield bytes.subarray(at, at + SLICE);
    },
  };
}

/** A bundle in a file, which is never in memory as a whole. `read` is told how many bytes have been read. */
export function packedFile(path: string, read: (bytes: number) => void = () => {}): Packed {
  const handle = openSync(path, 'r');
  const { size } = fstatSync(handle);
  closeSync(handle);
  return { size, slices: () => slicesOfFile(path, read) };
}

/** A file's bytes in order, each slice in memory of its own. */
export function* slicesOfFile(path: string, read: (bytes: number) => void = () => {}): Generator<Uint8Array> {
  const handle = openSync(path, 'r');
  try {
    for (let at = 0; ; ) {
      const slice = new Uint8Array(SLICE);
      const length = readSync(handle, slice, 0, SLICE, at);
      if (length === 0) return;
      at += length;
      read(at);
      yield slice.subarray(0, length);
    }
  } finally {
    closeSync(handle);
  }
}
