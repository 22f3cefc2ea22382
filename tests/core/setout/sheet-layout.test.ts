import { describe, expect, it } from 'vitest';
import { PAPER_NAMES, PAPERS, pageOf } from '../../../core/setout/paper.ts';
import {
  firstSheet,
  SHEET_MARGIN_MM,
  sheetColumns,
  sheetRoom,
  TITLE_BLOCK_MM,
} from '../../../core/setout/sheet-layout.ts';
import { revisionText, type SheetStamp, stampDay, stampLine } from '../../../core/setout/sheet-stamp.ts';
import { titleCells } from '../../../core/setout/title-cells.ts';
import { inventedSetOut } from './invented-set-out.ts';

describe.each(PAPER_NAMES)('a sheet on %s', (paper) => {
  const { page, room, drawing, beside } = firstSheet(paper);

  it('lies, and keeps its room inside the frame and above the title block', () => {
    expect([page.width, page.height]).toEqual([PAPERS[paper].long, PAPERS[paper].short]);
    expect(room).toEqual(sheetRoom(pageOf(paper, { lying: true })));
    expect(room.left).toBeGreaterThan(SHEET_MARGIN_MM);
    expect(room.top + room.height).toBeLessThan(page.height - SHEET_MARGIN_MM - TITLE_BLOCK_MM);
    expect(room.left + room.width).toBeLessThan(page.width - SHEET_MARGIN_MM);
  });

  it('has a drawing and what stands beside it apart, both inside the room', () => {
    expect(drawing.left).toBe(room.left);
    if (paper !== 'A3') {
      expect(beside).toBeNull();
      expect(drawing).toEqual(room);
      return;
    }
    expect(beside!.left).toBeGreaterThan(drawing.left + drawing.width);
    expect(beside!.left + beside!.width).toBeCloseTo(room.left + room.width, 9);
  });

  it('has columns of equal width with white between them, across the whole room', () => {
    const columns = sheetColumns(room);
    columns.slice(1).forEach((column, k) => {
      expect(column.width).toBeCloseTo(columns[k]!.width, 9);
      expect(column.left - columns[k]!.left - columns[k]!.width).toBeCloseTo(8, 9);
    });
    const last = columns.at(-1)!;
    expect(last.left + last.width).toBeCloseTo(room.left + room.width, 9);
  });
});

describe('columns', () => {
  it('are as many as read easily: one in a narrow box, three on A3', () => {
    expect(sheetColumns({ left: 0, top: 0, width: 90, height: 100 })).toHaveLength(1);
    expect(sheetColumns(firstSheet('A4').room)).toHaveLength(2);
    expect(sheetColumns(firstSheet('A3').room)).toHaveLength(3);
  });
});

const stamp: SheetStamp = {
  fitName: 'Spring',
  boatName: 'Grey Heron',
  athleteName: 'Žofie Łuczak',
  revision: 7,
  revisionName: 'pad back',
  keptAt: '2026-05-04T23:59:00Z',
};

describe('what a sheet says of itself', () => {
  it('is who for, which boat, which revision, of which day in UTC', () => {
    expect(stampLine(stamp)).toBe('Žofie Łuczak · Grey Heron · revision 7, pad back · 2026-05-04');
    expect(stampDay(stamp)).toBe('2026-05-04');
    expect(revisionText({ ...stamp, revision: null, revisionName: '' })).toBe('draft');
    expect(stampLine({ ...stamp, boatName: '' })).toBe('Žofie Łuczak · revision 7, pad back · 2026-05-04');
  });

  it('stands in the title block with scale, units and paper', () => {
    const cells = titleCells(inventedSetOut(), { stamp, paper: 'A4', scale: '1:10', count: '1 of 3' });
    const words = cells.map(({ strong, more }) => `${strong}; ${more}`).join(' | ');
    expect(words).toContain('Žofie Łuczak; kneels on the left knee');
    expect(words).toContain('Grey Heron; Spring');
    expect(words).toContain('revision 7, pad back; kept 2026-05-04');
    expect(words).toContain('drawing 1:10 on A4; millimetres; print at 100\u{a0}%');
    expect(words).toContain('1 of 3');
  });

  it('names no scale where there is no drawing, and inches where they are used', () => {
    const inches = inventedSetOut({ options: { units: 'in' } });
    const cells = titleCells(inches, { stamp, paper: 'Letter', scale: null, count: '2 of 3' });
    expect(cells[3]).toMatchObject({ strong: 'tables, Letter', more: 'inches to 1/32; print at 100\u{a0}%' });
  });
});
