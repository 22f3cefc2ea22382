import { describe, expect, it } from 'vitest';
import { holeBlock } from '../../../core/setout/hole-block.ts';
import { recessBlock } from '../../../core/setout/recess-block.ts';
import { column, listBlock, type SheetBlock } from '../../../core/setout/sheet-block.ts';
import { sheetBlocks } from '../../../core/setout/sheet-blocks.ts';
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
      'Marks on the floorboard',
      'Check dimensions',
      'Heights over the floorboard',
      'Angles',
      'Knee and recess at K',
      'Holes',
      'Holes',
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
    expect(cells[0]).toEqual(['M', 'centre mark on the centreline', 'on the mark', 'on the line', '']);
    expect(cells[1]).toEqual(['K', 'bottom of the recess, where the knee bears', '175 aft', '35 left', '2']);
  });

  it('fill every column of every row', () => {
    for (const each of blocks) {
      if (each.kind !== 'table') continue;
      for (const row of each.cells) expect(row).toHaveLength(each.columns.length);
    }
  });

  it('give every check dimension once, with one tolerance for all', () => {
    const checks = block('Check dimensions');
    expect(checks.heading).toBe('Check dimensions, mark to mark, ± 3 mm');
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
    expect(block('Check', inches).heading).toContain('± 1/8 in');
  });

  it('never print that anything is safe', () => {
    expect(JSON.stringify(blocks)).not.toMatch(/\bsafe/i);
  });
});

describe('the block of knee and recess', () => {
  it('prints the estimate with how sure it is, and what to do', () => {
    expect(cellsOf(recessBlock(out))[0]).toEqual([
      'Knee, across its knuckles',
      '111',
      '14',
      'estimate; measure the knee before carving',
    ]);
  });

  it('says measured when somebody has', () => {
    const measured = recessBlock(inventedSetOut({ options: { kneeBreadthM: 0.104 } }));
    expect(cellsOf(measured)[0]).toEqual(['Knee, across its knuckles', '104', '3', 'measured']);
  });

  it('gives recess and cut at the block’s top, the cut wider by the foam, and no cut without foam', () => {
    const [, recess, cut] = cellsOf(recessBlock(out)).map(([, size]) => Number(size));
    expect(cut! - recess!).toBeGreaterThan(20);
    expect(cellsOf(recessBlock(inventedSetOut({ options: { foamM: 0 } })))).toHaveLength(2);
  });
});

describe('the block of holes', () => {
  it('lists every hole of a row by its number, the one in use marked', () => {
    const holes = holeBlock(out.holes[0]!, out);
    if (holes.kind !== 'grid') throw new Error('it is no grid');
    expect(holes.heading).toBe('Holes: knee pad, 6.5 mm, every 25 mm');
    expect(holes.entries.filter(({ now }) => now)).toEqual([{ label: '7', value: '175 aft', now: true }]);
    expect(holes.sentence).toContain('Two rows, 80 left and 10 right of the centreline.');
    expect(holes.sentence).toContain(
      'Hole n sets the knee n × 25 mm aft. This setting uses hole 7 of each row.',
    );
  });

  it('says that a setting stands between two holes', () => {
    const { seat } = out.work;
    const between = inventedSetOut({
      hardware: ROWS_OF_HOLES,
      seat: { kneePad: { ...seat.kneePad, aftM: 0.185 } },
    });
    expect(holeBlock(between.holes[0]!, between)).toMatchObject({
      sentence: expect.stringContaining('stands between two holes'),
    });
  });

  it('lists screws by their places where there is no pitch', () => {
    const screwed = inventedSetOut({ hardware: { padHolePitchM: null } });
    const holes = holeBlock(screwed.holes[0]!, screwed);
    if (holes.kind !== 'grid') throw new Error('it is no grid');
    expect(holes.entries).toHaveLength(4);
    for (const { label, value } of holes.entries) {
      expect(label).toBe('screw');
      expect(value).toMatch(/^\d+ aft, \d+ (left|right)$/);
    }
  });

  it('keeps the hardware’s own pitch in millimetres where inches are asked for', () => {
    const inches = inventedSetOut({ hardware: ROWS_OF_HOLES, options: { units: 'in' } });
    expect(holeBlock(inches.holes[0]!, inches).heading).toContain('every 25 mm');
  });
});

describe('parts of blocks', () => {
  it('are plain unless said otherwise', () => {
    expect(column('what', 3)).toEqual({ title: 'what', share: 3, anchor: 'start', strong: false });
    expect(listBlock('Notes', ['One.'])).toEqual({
      kind: 'list',
      heading: 'Notes',
      sentences: ['One.'],
      numbered: false,
      strong: false,
    });
  });
});
