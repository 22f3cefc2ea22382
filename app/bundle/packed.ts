import { closeSync, fstatSync, openSync, readSync } from 'node:fs';

/** How much of a file is read at once, bytes. */
const SLICE = 64 * 1024;

/** A packed bundle: any part of it can be read, as often as needed. */
export interface Packed {
  /** Bytes. */
  readonly size: number;
  /** The bytes from `at` on; fewer than `length` where it ends before. */
  read(at: number, length: number): Uint8Array;
  close(): void;
}

/** A bundle in memory. */
export function packedBytes(bytes: Uint8Array): Packed {
  return {
    size: bytes.length,
    read: (at, length) => bytes.subarray(at, at + length),
    close() {},
  };
}

/** A bundle in a file, which is never in memory as a whole. `told` is called with the number of bytes read so far. */
export function packedFile(path: string, told: (bytes: number) => void = () => {}): Packed {
  const handle = openSync(path, 'r');
  return {
    size: fstatSync(handle).size,
    read(at, length) {
      const bytes = new Uint8Array(length);
      let done = 0;
      for (let got = -1; got !== 0 && done < length; done += got)
        got = readSync(handle, bytes, done, length - done, at + done);
      told(at + done);
      return bytes.subarray(0, done);
    },
    close: () => closeSync(handle),
  };
}

/** A file's bytes in order, each slice in memory of its own. */
export function* slicesOfFile(path: string, told: (bytes: number) => void = () => {}): Generator<Uint8Array> {
  const packed = packedFile(path, told);
  try {
    for (let at = 0; at < packed.size; at += SLICE) yield packed.read(at, SLICE);
  } finally {
    packed.close();
  }
}
