import { describe, expect, it } from 'vitest';
import { fontBytes, fontsOf } from '../../../../app/export/pdf/font-shelf.ts';
import { unpackWoff } from '../../../../app/export/pdf/unpack-woff.ts';

/** A table's checksum by the OpenType specification (chapter "Font File"): its 32-bit numbers added up, zeros to the fourth byte. */
function checksumOf(table: Buffer): number {
  const padded = Buffer.concat([table, Buffer.alloc((4 - (table.length % 4)) % 4)]);
  let sum = 0;
  for (let at = 0; at < padded.length; at += 4) sum = (sum + padded.readUInt32BE(at)) >>> 0;
  return sum;
}

function tablesOf(font: Buffer) {
  return Array.from({ length: font.readUInt16BE(4) }, (_, i) => {
    const at = 12 + 16 * i;
    const [tag, from] = [font.toString('latin1', at, at + 4), font.readUInt32BE(at + 8)];
    const table = Buffer.from(font.subarray(from, from + font.readUInt32BE(at + 12)));
    // The specification leaves the whole file's sum out of the head's own.
    if (tag === 'head') table.writeUInt32BE(0, 8);
    return { tag, said: font.readUInt32BE(at + 4), table, from };
  });
}

describe('fonts out of their wrapping', () => {
  it.each([...fontsOf('regular'), ...fontsOf('strong')])(
    '%s: every table has the checksum it says',
    (name) => {
      const tables = tablesOf(fontBytes(name));
      const tags = tables.map(({ tag }) => tag);
      for (const needed of ['cmap', 'glyf', 'head', 'hhea', 'hmtx', 'loca', 'maxp', 'name'])
        expect(tags).toContain(needed);
      expect(tags).toEqual(tags.toSorted());
      for (const { tag, said, table, from } of tables) {
        expect(checksumOf(table), tag).toBe(said);
        expect(from % 4, tag).toBe(0);
      }
    },
  );

  it('reads a font once', () => {
    expect(fontBytes('latin-regular')).toBe(fontBytes('latin-regular'));
  });

  it('refuses what is not one', () => {
    expect(() => unpackWoff(Buffer.from('a picture, or the plain font itself'))).toThrow('not a WOFF file');
  });
});
