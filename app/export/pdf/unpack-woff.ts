import { inflateSync } from 'node:zlib';

const HEADER_BYTES = 44;
const ENTRY_BYTES = 20;
const SFNT_HEADER_BYTES = 12;
const SFNT_ENTRY_BYTES = 16;

/**
 * A font out of its web wrapping: the plain file that a WOFF 1.0 file packs table by table (W3C Recommendation, 13 December
 * 2012, sections 3 to 5). The PDF writer would unpack every table again for every document, in script.
 */
export function unpackWoff(packed: Buffer): Buffer {
  if (packed.toString('latin1', 0, 4) !== 'wOFF') throw new Error('this font is not a WOFF file');
  const count = packed.readUInt16BE(12);
  const font = Buffer.alloc(packed.readUInt32BE(16));
  packed.copy(font, 0, 4, 8);
  writeSearchHints(font, count);
  let at = SFNT_HEADER_BYTES + count * SFNT_ENTRY_BYTES;
  for (let i = 0; i < count; i++) {
    const entry = HEADER_BYTES + i * ENTRY_BYTES;
    const table = tableOf(packed, entry);
    const into = SFNT_HEADER_BYTES + i * SFNT_ENTRY_BYTES;
    packed.copy(font, into, entry, entry + 4);
    font.writeUInt32BE(packed.readUInt32BE(entry + 16), into + 4);
    font.writeUInt32BE(at, into + 8);
    font.writeUInt32BE(table.length, into + 12);
    table.copy(font, at);
    at += Math.ceil(table.length / 4) * 4;
  }
  return font;
}

/** One table's bytes; those that packing would not have shortened lie there as they are. */
function tableOf(packed: Buffer, entry: number): Buffer {
  const from = packed.readUInt32BE(entry + 4);
  const packedBytes = packed.readUInt32BE(entry + 8);
  const stored = packed.subarray(from, from + packedBytes);
  return packedBytes < packed.readUInt32BE(entry + 12) ? inflateSync(stored) : stored;
}

/** Count of tables and the three numbers that help to search them by halves. */
function writeSearchHints(font: Buffer, count: number): void {
  const halvings = Math.floor(Math.log2(count));
  const range = 2 ** halvings * SFNT_ENTRY_BYTES;
  font.writeUInt16BE(count, 4);
  font.writeUInt16BE(range, 6);
  font.writeUInt16BE(halvings, 8);
  font.writeUInt16BE(count * SFNT_ENTRY_BYTES - range, 10);
}
