import type { SheetBlock } from '../../../core/setout/sheet-block.ts';
import type { Block } from './flow.ts';
import { gridRows, listRows, tableRows } from './table-rows.ts';

/** A headed part of the sheet as rows that flow through columns. */
export function flowing(block: SheetBlock): Block {
  const { heading } = block;
  switch (block.kind) {
    case 'list':
      return { heading, rows: (pdf, width) => listRows(pdf, width, block) };
    case 'table':
      return { heading, rows: (pdf, width) => tableRows(pdf, width, block) };
    case 'grid':
      return {
        heading,
        rows: (pdf, width) => [
          ...listRows(pdf, width, {
            sentences: block.sentence === null ? [] : [block.sentence],
            numbered: false,
            strong: false,
          }),
          ...gridRows(pdf, width, block),
        ],
      };
  }
}
