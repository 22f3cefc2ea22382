import { readSync } from 'node:fs';

/** One line of a file. */
export interface FileLine {
  /** Where in the file it begins, bytes. */
  readonly at: number;
  /** Without its line break; good until the next line is asked for. */
  readonly bytes: Buffer;
  /** Whether a line break ends it: the last line may have none. */
  readonly isEnded: boolean;
}

/** How much is read at once, bytes. The memory grows to the longest line. */
const PIECE = 256 * 1024;
const LINE_BREAK = 0x0a;

/** The lines of an open file, from its beginning. Only the line in hand is in memory. */
export function* fileLines(handle: number): Generator<FileLine> {
  let buffer = Buffer.allocUnsafe(PIECE);
  let [from, to, looked, at] = [0, 0, 0, 0];
  for (;;) {
    const end = buffer.subarray(0, to).indexOf(LINE_BREAK, looked);
    if (end >= 0) {
      yield { at, bytes: buffer.subarray(from, end), isEnded: true };
      at += end + 1 - from;
      from = end + 1;
      looked = from;
      continue;
    }
    buffer.copyWithin(0, from, to);
    [from, to] = [0, to - from];
    looked = to;
    if (to === buffer.length) buffer = Buffer.concat([buffer, Buffer.allocUnsafe(buffer.length)]);
    const got = readSync(handle, buffer, to, buffer.length - to, at + to);
    if (got === 0) break;
    to += got;
  }
  if (to > 0) yield { at, bytes: buffer.subarray(0, to), isEnded: false };
}
