import { describe, expect, it } from 'vitest';
import type { SheetBlock } from '../../../core/setout/sheet-block.ts';
import { sheetBlocks } from '../../../core/setout/sheet-blocks.ts';
import { notEmpty } from '../../not-empty.ts';
import { inventedSetOut, ON_A_WEDGE, ROWS_OF_HOLES } from './invented-set-out.ts';

const out = inventedSetOut({ hardware: ROWS_OF_HOLES, seat: { frontFoot: ON_A_WEDGE } });
const blocks = sheetBlocks(out);
const block = (heading: string, all: readonly SheetBlock[] = blocks) => {
  const found = all.find((each) => each.heading.startsWith(heading));
  if (!found) throw new Error(`no block ${heading}`);
  return found;
};
const cellsOf = (each: SheetBlock) => (each.kind === 'table' ? each.cells : []);

describe('the blocks of a sheet', () => {
  it('come in the order they are worked through: what to heed before cutting first, cautions last', () => {
    expect(blocks.map(({ heading }) => heading.split(/[:,]/)[0])).toEqual([
      'Before cutting',
      'Marks',
      'Check dimensions',
      'Heights over floorboard',
      'Angles',
      'Finished sizes',
      'Knee and recess at K',
      'Recess',
      'Holes',
      'Holes',
      'Fixings',
      'Cut list',
      'Order of work',
      'Fixing and strap',
      'Cautions',
    ]);
  });

  it('stand out where they must be read before cutting, and are numbered where order matters', () => {
    expect(block('Before cutting')).toMatchObject({ kind: 'list', strong: true, numbered: false });
    expect(block('Order of work')).toMatchObject({ kind: 'list', numbered: true, strong: false });
  });

  it('tell every mark with its tolerance, the datum without one', () => {
    const cells = cellsOf(block('Marks'));
    expect(cells).toHaveLength(out.marks.length);
    expect(cells[0]).toEqual(['M', 'Centre mark on centreline', 'on the mark', 'on the line', '']);
    expect(cells[1]).toEqual(['K', 'recess bottom, under the knee', '175 aft', '35 left', '2']);
  });

  it('fill every column of every row', () => {
    for (const each of notEmpty(blocks)) {
      if (each.kind !== 'table') continue;
      for (const row of each.cells) expect(row).toHaveLength(each.columns.length);
    }
  });

  it('give every check dimension once, with one tolerance for all', () => {
    const checks = block('Check dimensions');
    expect(checks.heading).toBe('Check dimensions, ±\u{a0}3\u{202f}mm');
    if (checks.kind !== 'grid') throw new Error('it is no grid');
    expect(checks.entries.map(({ label }) => label)).toEqual(
      out.checks.map(({ from, to }) => `${from} – ${to}`),
    );
    expect(checks.entries.map(({ value }) => Number(value))).toEqual(
      out.checks.map(({ lengthMm }) => lengthMm),
    );
  });

  it('write inches throughout where inches are asked for', () => {
    const inches = sheetBlocks(inventedSetOut({ hardware: ROWS_OF_HOLES, options: { units: 'in' } }));
    expect(block('Marks', inches).heading).toContain(', in from');
    expect(cellsOf(block('Marks', inches))[1]).toContain('6 7/8 aft');
    expect(block('Check', inches).heading).toContain('±\u{a0}1/8\u{202f}in');
  });

  it('never print that anything is safe', () => {
    expect(JSON.stringify(blocks)).not.toMatch(/\bsafe/i);
  });
});
