import { SHEET_TYPE } from '../../../core/setout/sheet-inks.ts';
import type { SheetBox } from '../../../core/setout/sheet-layout.ts';
import { fittedText } from '../pdf/fitted-text.ts';
import { SHEET_INK } from '../pdf/sheet-inks.ts';
import type { SheetPdf } from '../pdf/sheet-pdf.ts';

/** A piece that is not broken: its height in a column of a width, and how it is drawn. */
export interface FlowRow {
  readonly height: number;
  draw(pdf: SheetPdf, at: { left: number; top: number; width: number }): void;
}

/** A headed run of rows that may go on in the next column. */
export interface Block {
  readonly heading: string;
  /** The heading where the rows go on in another column. */
  readonly continued: string;
  /** So many of the first rows are a table's heads; they are said again under the heading that goes on. */
  readonly heads: number;
  /** Under its heading at least so many rows stand in the same column. */
  readonly keep: number;
  rows(pdf: SheetPdf, width: number): readonly FlowRow[];
}

/** A column to fill: its page (0 first) and its box. */
export interface FlowColumn {
  readonly page: number;
  readonly box: SheetBox;
}

/** A row with its place. */
export interface PlacedRow {
  readonly page: number;
  readonly row: FlowRow;
  readonly left: number;
  readonly top: number;
  readonly width: number;
}

const HEADING_MM = 7.5;

/** How close blocks stand. */
export interface Spacing {
  /** White over a heading, millimetres. */
  readonly gapMm: number;
  /** Under a heading and a table's heads so many rows are enough; without it, as many as the block asks for. */
  readonly keep?: number;
  /** This block begins a page (0 first); without it, none must. */
  readonly pageBefore?: number;
}

/**
 * Flows blocks through columns, top to bottom; `columns` is asked for one after another and never ends. A row that is
 * taller than an empty column is set there all the same, so that nothing is ever lost.
 */
export function flow(
  pdf: SheetPdf,
  blocks: readonly Block[],
  { columns, gapMm, keep = Infinity, pageBefore }: Spacing & { columns: Iterator<FlowColumn> },
): PlacedRow[] {
  const placed: PlacedRow[] = [];
  let column = columns.next().value as FlowColumn;
  let top = column.box.top;
  const room = () => column.box.top + column.box.height - top;
  const empty = () => top === column.box.top;
  const advance = () => {
    column = columns.next().value as FlowColumn;
    top = column.box.top;
  };
  const put = (row: FlowRow) => {
    placed.push({ page: column.page, row, left: column.box.left, top, width: column.box.width });
    top += row.height;
  };
  for (const [number, block] of blocks.entries()) {
    const { page } = column;
    while (number === pageBefore && column.page === page) advance();
    if (!empty()) top += gapMm;
    const rows = block.rows(pdf, column.box.width);
    const first = rows
      .slice(0, Math.min(block.keep, block.heads + keep))
      .reduce((sum, row) => sum + row.height, HEADING_MM);
    if (room() < first && !empty()) advance();
    put(headingRow(block.heading));
    for (const [index, row] of rows.entries()) {
      const lone = index === rows.length - 2 ? rows[index + 1]!.height : 0;
      // The last two rows stay together: no row stands alone at the head of a column.
      if (room() < row.height + lone && !empty()) {
        advance();
        for (const again of [headingRow(block.continued), ...rows.slice(0, block.heads)]) put(again);
      }
      put(row);
    }
  }
  return placed;
}

function headingRow(heading: string): FlowRow {
  return {
    height: HEADING_MM,
    draw(pdf, { left, top, width }) {
      fittedText(pdf, heading, {
        at: [left, top + 4.6],
        width,
        size: SHEET_TYPE.heading,
        weight: 'strong',
        colour: SHEET_INK.ink,
        tag: 'H2',
      });
      pdf.path(
        [
          [left, top + 6.2],
          [left + width, top + 6.2],
        ],
        { stroke: SHEET_INK.ink, width: 0.3 },
      );
    },
  };
}
