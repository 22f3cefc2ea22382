import { describe, expect, it } from 'vitest';
import { PAPER_NAMES, PAPERS, pageOf } from '../../../core/setout/paper.ts';
import {
  firstSheet,
  SHEET_MARGIN_MM,
  sheetColumns,
  sheetRoom,
  TITLE_BLOCK_MM,
} from '../../../core/setout/sheet-layout.ts';

describe.each(PAPER_NAMES)('a sheet on %s', (paper) => {
  const { page, room, drawing, beside } = firstSheet(paper);

  it('lies, and keeps its room inside the frame and above the title block', () => {
    expect([page.width, page.height]).toEqual([PAPERS[paper].long, PAPERS[paper].short]);
    expect(room).toEqual(sheetRoom(pageOf(paper, { landscape: true })));
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
