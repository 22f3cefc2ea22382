import { describe, expect, it } from 'vitest';
import { readTableFile, withCell } from '../../../../renderer/pages/athletes-table/read-table-file.ts';

const file = (content: string | Uint8Array<ArrayBuffer>, name = 'club.csv') => new File([content], name);
const cellsOf = async (content: string | Uint8Array<ArrayBuffer>) => {
  const read = await readTableFile(file(content));
  if ('problem' in read) throw new Error(read.problem);
  return read.cells;
};

describe('a CSV file', () => {
  it.each([
    ['commas', 'Name,Mass\nAnna,60'],
    ['semicolons', 'Name;Mass\nAnna;60'],
    ['tabs', 'Name\tMass\nAnna\t60'],
    ['a byte order mark', '\u{feff}Name,Mass\r\nAnna,60'],
  ])('with %s is read as rows of cells', async (_, text) => {
    const cells = await cellsOf(text);
    expect(cells.slice(0, 2)).toEqual([
      ['Name', 'Mass'],
      ['Anna', '60'],
    ]);
  });

  it('keeps semicolon and decimal comma, quotes and line breaks apart', async () => {
    expect(await cellsOf('Name;Mass\n"Anna; the ""tall""\none";60,5')).toEqual([
      ['Name', 'Mass'],
      ['Anna; the "tall"\none', '60,5'],
    ]);
  });

  it('in UTF-16, as table programs write Unicode text, is read too', async () => {
    const bytes = new Uint8Array([...Buffer.from('\u{feff}Name\tMass\nŻofia\t60', 'utf16le')]);
    expect(await cellsOf(bytes)).toEqual([
      ['Name', 'Mass'],
      ['Żofia', '60'],
    ]);
  });

  it.each([
    ['no text', new Uint8Array([0x50, 0x4b, 3, 4, 0, 0xff, 0xfe, 0])],
    ['an old encoding', new Uint8Array([0x4e, 0x61, 0x6d, 0x65, 0x0a, 0xe9, 0x74])],
    ['no row', 'Name,Mass\n\n ,\n'],
    ['nothing', ''],
  ])('with %s is refused in words that name it', async (_, content) => {
    const read = await readTableFile(file(content));
    expect('problem' in read && read.problem).toMatch(/club\.csv.*Nothing was changed\./);
  });

  it('that is too large is refused before it is read', async () => {
    const read = await readTableFile(file('x'.repeat(4 * 1024 * 1024 + 1)));
    expect('problem' in read && read.problem).toContain('larger than 4 MB');
  });
});

describe('a cell put right', () => {
  const cells = [['Name', 'Mass'], ['Anna', '600'], ['Boris']];

  it('changes nothing else', () => {
    const changed = withCell(cells, { row: 2, index: 1, heading: '' }, '60');
    expect(changed).toEqual([['Name', 'Mass'], ['Anna', '60'], ['Boris']]);
    expect(cells[1]).toEqual(['Anna', '600']);
  });

  it('may lie beyond the end of its row', () => {
    expect(withCell(cells, { row: 3, index: 1, heading: '' }, '70')[2]).toEqual(['Boris', '70']);
  });

  it('of a column that is missing adds the column', () => {
    expect(withCell(cells, { row: 3, index: null, heading: 'Side' }, 'left')).toEqual([
      ['Name', 'Mass', 'Side'],
      ['Anna', '600'],
      ['Boris', '', 'left'],
    ]);
  });
});
