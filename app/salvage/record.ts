/** A value of a row as SQLite keeps it. */
export type PageValue = number | bigint | string | Uint8Array | null;

/** Thrown where bytes are not what the format says they must be. */
export class NotInFormat extends Error {}

/**
 * A whole number of one to nine bytes, and where the next byte is. Source: SQLite, "Database File Format", section 1.6, the
 * note on variable-length integers. Numbers here count bytes and types, so that what is beyond 2^53 is an error.
 */
export function readVarint(bytes: Buffer, at: number): { value: number; next: number } {
  let value = 0;
  for (let i = 0; i < 9; i++) {
    const byte = bytes[at + i];
    if (byte === undefined) throw new NotInFormat('a number is cut off');
    value = i === 8 ? value * 256 + byte : value * 128 + (byte & 0x7f);
    if (byte < 0x80 || i === 8) {
      if (!Number.isSafeInteger(value)) throw new NotInFormat('a number is too large');
      return { value, next: at + i + 1 };
    }
  }
  throw new NotInFormat('a number does not end');
}

/** The values of a record. Source: SQLite, "Database File Format", section 2.1, "Record Format". */
export function readRecord(payload: Buffer): PageValue[] {
  const header = readVarint(payload, 0);
  if (header.value > payload.length) throw new NotInFormat('a header is longer than its record');
  const types: number[] = [];
  for (let at = header.next; at < header.value; ) {
    const type = readVarint(payload, at);
    types.push(type.value);
    at = type.next;
  }
  let at = header.value;
  const values = types.map((type) => {
    const length = lengthOf(type);
    if (at + length > payload.length) throw new NotInFormat('a record is cut off');
    const bytes = payload.subarray(at, at + length);
    at += length;
    return readValue(type, bytes);
  });
  if (at !== payload.length) throw new NotInFormat('a record is longer than its values');
  return values;
}

/** Bytes of the serial types 0 to 9; types from 12 on are blobs and texts. */
const LENGTHS = [0, 1, 2, 3, 4, 6, 8, 8, 0, 0];
const FIRST_BLOB = 12;

function lengthOf(type: number): number {
  if (type >= FIRST_BLOB) return Math.floor((type - FIRST_BLOB) / 2);
  const length = LENGTHS[type];
  if (length === undefined) throw new NotInFormat('a type is reserved');
  return length;
}

function readValue(type: number, bytes: Buffer): PageValue {
  if (type === 0) return null;
  if (type === 7) return bytes.readDoubleBE(0);
  if (type === 6) return bytes.readBigInt64BE(0);
  if (type === 8 || type === 9) return type - 8;
  if (type < FIRST_BLOB) return bytes.readIntBE(0, bytes.length);
  return type % 2 === 0 ? Uint8Array.from(bytes) : textOf(bytes);
}

function textOf(bytes: Buffer): string {
  try {
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    throw new NotInFormat('a text is not UTF-8');
  }
}
