import { describe, expect, it } from 'vitest';
import { createSheetPdf } from '../../../app/export/pdf/sheet-pdf.ts';
import { fewestSheets, sheetsOf } from '../../../app/export/sheet/fewest-sheets.ts';
import {
  type Block,
  type FlowColumn,
  type FlowRow,
  flow,
  type PlacedRow,
  type Spacing,
} from '../../../app/export/sheet/flow.ts';
import { notEmpty } from '../../not-empty.ts';

const pdf = createSheetPdf({
  title: '',
  subject: '',
  keptAt: '2026-05-04T10:00:00.000Z',
  lang: 'en',
});

function* columns(height: number): Generator<FlowColumn, never> {
  for (let page = 0; ; page++) yield { page, box: { left: 0, top: 0, width: 100, height } };
}

const block = (rows: number): Block => ({
  heading: 'A table',
  continued: 'A table, continued',
  heads: 0,
  keep: 4,
  rows: () => Array.from({ length: rows }, (): FlowRow => ({ height: 5, draw() {} })),
});

describe('rows flowing through columns', () => {
  it('never leave the last row of a table alone at the head of a column', () => {
    for (let rows = 2; rows < 40; rows++) {
      for (const height of [40, 52, 63]) {
        const placed = flow(pdf, [block(rows)], { columns: columns(height), gapMm: 3 });
        const last = Math.max(...placed.map(({ page }) => page));
        // The heading, said again, and at least two rows.
        if (last > 0) expect(placed.filter(({ page }) => page === last).length).toBeGreaterThanOrEqual(3);
      }
    }
  });

  it('keep a heading with its first rows', () => {
    for (let before = 1; before < 30; before++) {
      const placed = flow(pdf, [block(before), block(6)], { columns: columns(60), gapMm: 3 });
      const headings = placed.filter(({ row }) => row.height !== 5);
      for (const heading of notEmpty(headings)) {
        const under = placed.filter(({ page, top }) => page === heading.page && top > heading.top);
        expect(under.length).toBeGreaterThan(1);
      }
    }
  });

  it('say a table’s heads again where it goes on', () => {
    const [head, ...others] = Array.from({ length: 12 }, (): FlowRow => ({ height: 5, draw() {} }));
    const table: Block = { ...block(0), heads: 1, rows: () => [head!, ...others] };
    const placed = flow(pdf, [table], { columns: columns(40), gapMm: 3 });
    const pages = new Set(placed.map(({ page }) => page));
    expect(pages.size).toBeGreaterThan(1);
    expect(placed.filter(({ row }) => row === head).map(({ page }) => page)).toEqual([...pages]);
    for (const row of others) expect(placed.filter((other) => other.row === row)).toHaveLength(1);
  });
});

describe('sheets', () => {
  const flowed = (blocks: readonly Block[]) => (spacing: Spacing) =>
    flow(pdf, blocks, { columns: columns(100), ...spacing });
  const lastMm = (placed: readonly PlacedRow[]) =>
    placed.filter(({ page }) => page === sheetsOf(placed) - 1).reduce((sum, { row }) => sum + row.height, 0);

  it('are as few as closer blocks give, and as usual where that saves none', () => {
    const close = flowed([block(7), block(8)]);
    expect(sheetsOf(close({ gapMm: 12 }))).toBe(2);
    expect(sheetsOf(fewestSheets(close, { blocks: 2, leastMm: 50 }))).toBe(1);
    const loose = flowed([block(3), block(3)]);
    const tops = (placed: readonly PlacedRow[]) => placed.map(({ top }) => top);
    expect(tops(fewestSheets(loose, { blocks: 2, leastMm: 50 }))).toEqual(tops(loose({ gapMm: 3.5 })));
  });

  it('do not end with one that is nearly blank, lose nothing and keep the order', () => {
    for (let rows = 4; rows < 40; rows++) {
      const blocks = [block(rows), block(9), block(6), block(5)];
      const placed = fewestSheets(flowed(blocks), { blocks: 4, leastMm: 50 });
      const fewest = sheetsOf(flowed(blocks)({ gapMm: 1, keep: 2 }));
      expect(sheetsOf(placed)).toBe(fewest);
      if (fewest > 1) expect(lastMm(placed)).toBeGreaterThanOrEqual(50);
      expect(placed.filter(({ row }) => row.height === 5)).toHaveLength(rows + 20);
      const at = placed.map(({ page, top }) => 1000 * page + top);
      expect(at).toEqual([...at].sort((a, b) => a - b));
    }
  });
});
