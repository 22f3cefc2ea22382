import type { GridEntry, SheetColumn } from '../../../core/setout/sheet-block.ts';
import { SHEET_TYPE } from '../../../core/setout/sheet-inks.ts';
import { LINE_MM, SHEET_INK } from '../pdf/sheet-inks.ts';
import type { SheetPdf } from '../pdf/sheet-pdf.ts';
import type { FlowRow } from './flow.ts';

const PAD_MM = 1.1;
const GUTTER_MM = 2;
/** White between an entry of a grid and the next. */
const GRID_GAP_MM = 6;

/** Rows of a table with its column titles first; words too long for their column are broken. */
export function tableRows(
  pdf: SheetPdf,
  width: number,
  { columns, cells }: { columns: readonly SheetColumn[]; cells: readonly (readonly string[])[] },
): FlowRow[] {
  const total = columns.reduce((sum, { share }) => sum + share, 0);
  const widths = columns.map(({ share }) => (width * share) / total);
  const lefts = widths.map((_, index) => widths.slice(0, index).reduce((sum, wide) => sum + wide, 0));
  const table = { tag: 'Table', key: cells } as const;
  const row = (texts: readonly string[], { title }: { title: boolean }): FlowRow => {
    const size = title ? SHEET_TYPE.small : SHEET_TYPE.body;
    const lines = texts.map((text, index) =>
      pdf.lines(text, widths[index]! - GUTTER_MM, { size, weight: weightOf(columns[index]!, title) }),
    );
    const height = Math.max(1, ...lines.map(({ length }) => length)) * LINE_MM + PAD_MM;
    return {
      height,
      draw(_, { left, top }) {
        const drawCell = (cell: readonly string[], index: number) => {
          const column = columns[index]!;
          const end = column.anchor === 'end';
          const x = left + lefts[index]! + (end ? widths[index]! - GUTTER_MM : 0);
          cell.forEach((text, line) => {
            pdf.text(text, [x, top + LINE_MM * (line + 1) - 0.6], {
              size,
              weight: weightOf(column, title),
              colour: title ? SHEET_INK.soft : SHEET_INK.ink,
              anchor: end ? 'end' : 'start',
              tag: 'Span',
            });
          });
        };
        const drawCells = () =>
          lines.forEach((cell, index) => {
            pdf.group(title ? 'TH' : 'TD', () => drawCell(cell, index));
          });
        pdf.group('TR', drawCells, table);
        rule(pdf, { left, width, y: top + height });
      },
    };
  };
  return [
    row(
      columns.map(({ title }) => title),
      { title: true },
    ),
    ...cells.map((texts) => row(texts, { title: false })),
  ];
}

function weightOf({ strong }: SheetColumn, title: boolean): 'regular' | 'strong' {
  return strong && !title ? 'strong' : 'regular';
}

function rule(pdf: SheetPdf, { left, width, y }: { left: number; width: number; y: number }): void {
  pdf.path(
    [
      [left, y],
      [left + width, y],
    ],
    { stroke: SHEET_INK.rule, width: 0.12 },
  );
}

/** Sentences one under the other, numbered or with a dash. */
export function listRows(
  pdf: SheetPdf,
  width: number,
  { sentences, numbered, strong }: { sentences: readonly string[]; numbered: boolean; strong: boolean },
): FlowRow[] {
  const indent = numbered ? 6 : 4;
  const weight = strong ? 'strong' : 'regular';
  const size = SHEET_TYPE.body;
  const list = { tag: 'L', key: sentences } as const;
  return sentences.map((sentence, index): FlowRow => {
    const lines = pdf.lines(sentence, width - indent, { size, weight });
    return {
      height: lines.length * LINE_MM + 0.9,
      draw(_, { left, top }) {
        const first = top + LINE_MM - 0.6;
        const drawItem = () => {
          const markWeight = numbered ? 'strong' : weight;
          const mark = { size, weight: markWeight, colour: SHEET_INK.soft, tag: 'Lbl' } as const;
          pdf.text(numbered ? `${index + 1}` : '–', [left, first], mark);
          pdf.group('LBody', () => {
            for (const [at, line] of lines.entries())
              pdf.text(line, [left + indent, first + at * LINE_MM], { size, weight, tag: 'Span' });
          });
        };
        pdf.group('LI', drawItem, list);
      },
    };
  });
}

/** Short entries in a grid, `perRow` to a row; an entry that stands out is inked in the mark's colour. */
export function gridRows(
  pdf: SheetPdf,
  width: number,
  { entries, perRow }: { entries: readonly GridEntry[]; perRow: number },
): FlowRow[] {
  const cell = width / perRow;
  const rows: FlowRow[] = [];
  for (let from = 0; from < entries.length; from += perRow) {
    const part = entries.slice(from, from + perRow);
    rows.push({
      height: LINE_MM + PAD_MM,
      draw(_, { left, top, width: wide }) {
        part.forEach(({ label, value, now }, index) => {
          const x = left + index * cell;
          const y = top + LINE_MM - 0.6;
          const weight = now ? 'strong' : 'regular';
          const colour = now ? SHEET_INK.mark : SHEET_INK.ink;
          pdf.text(label, [x, y], {
            size: SHEET_TYPE.body,
            weight,
            colour: now ? SHEET_INK.mark : SHEET_INK.soft,
          });
          pdf.text(value, [x + cell - GRID_GAP_MM, y], {
            size: SHEET_TYPE.body,
            weight,
            colour,
            anchor: 'end',
          });
        });
        rule(pdf, { left, width: wide, y: top + LINE_MM + PAD_MM });
      },
    });
  }
  return rows;
}
