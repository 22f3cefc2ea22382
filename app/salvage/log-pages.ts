import { closeSync, existsSync, fstatSync, openSync, readSync } from 'node:fs';

/** Pages that a write-ahead log holds in their newest committed state: where each begins in the log's file. */
export interface LogPages {
  /** Bytes. */
  readonly pageSize: number;
  readonly places: ReadonlyMap<number, number>;
}

const HEADER = 32;
const FRAME_HEADER = 24;
/** Begins a log; its last bit says in which order the checksum reads its words. */
const MAGIC = 0x377f0682;

/**
 * Reads a write-ahead log as far as its frames fit their checksums and a commit follows; null if there is none. Source:
 * SQLite, "Database File Format", section 4, "The Write-Ahead Log".
 */
export function readLog(path: string): LogPages | null {
  if (!existsSync(path)) return null;
  const handle = openSync(path, 'r');
  try {
    return pagesIn(handle, fstatSync(handle).size);
  } finally {
    closeSync(handle);
  }
}

function pagesIn(handle: number, size: number): LogPages | null {
  const header = bytesAt(handle, 0, HEADER);
  if (!header || (header.readUInt32BE(0) & ~1) >>> 0 !== MAGIC) return null;
  const sum = checksum((header.readUInt32BE(0) & 1) === 1);
  const pageSize = header.readUInt32BE(8);
  let state = sum(header.subarray(0, 24), [0, 0]);
  if (!matches(state, header, 24) || pageSize < 512 || pageSize > 65_536) return null;
  const salts = header.subarray(16, 24);
  const places = new Map<number, number>();
  let pending: [page: number, place: number][] = [];
  for (let at = HEADER; at + FRAME_HEADER + pageSize <= size; at += FRAME_HEADER + pageSize) {
    const frame = bytesAt(handle, at, FRAME_HEADER + pageSize);
    if (!frame?.subarray(8, 16).equals(salts)) break;
    state = sum(frame.subarray(FRAME_HEADER), sum(frame.subarray(0, 8), state));
    if (!matches(state, frame, 16)) break;
    pending.push([frame.readUInt32BE(0), at + FRAME_HEADER]);
    // The size of the database after a commit; 0 in every other frame.
    if (frame.readUInt32BE(4) === 0) continue;
    for (const [page, place] of pending) places.set(page, place);
    pending = [];
  }
  return { pageSize, places };
}

type Sums = readonly [number, number];

function checksum(bigEndian: boolean): (bytes: Buffer, from: Sums) => Sums {
  return (bytes, [from0, from1]) => {
    let [s0, s1] = [from0, from1];
    for (let at = 0; at < bytes.length; at += 8) {
      const x = bigEndian ? bytes.readUInt32BE(at) : bytes.readUInt32LE(at);
      const y = bigEndian ? bytes.readUInt32BE(at + 4) : bytes.readUInt32LE(at + 4);
      s0 = (s0 + x + s1) >>> 0;
      s1 = (s1 + y + s0) >>> 0;
    }
    return [s0, s1];
  };
}

function matches([s0, s1]: Sums, bytes: Buffer, at: number): boolean {
  return bytes.readUInt32BE(at) === s0 && bytes.readUInt32BE(at + 4) === s1;
}

/** So many bytes of a file; null where it ends before. */
export function bytesAt(handle: number, at: number, length: number): Buffer | null {
  const bytes = Buffer.alloc(length);
  return readSync(handle, bytes, 0, length, at) === length ? bytes : null;
}
