import type { SheetBlock } from '../../../core/setout/sheet-block.ts';
import type { Words } from '../../../core/text/words.ts';
import type { Block } from './flow.ts';
import { gridRows, listRows, tableRows } from './table-rows.ts';

/** Rows that stay under their heading: sentences, and rows of a table with its heads. */
const KEEP = { list: 2, grid: 3, table: 4 } as const;

/** A headed part of the sheet as rows that flow through columns. */
export function flowing(block: SheetBlock, words: Words): Block {
  const { heading } = block;
  const heads = block.kind === 'table' ? 1 : 0;
  const continued = words.say('paper.continued', { heading });
  return { heading, continued, heads, keep: KEEP[block.kind], rows: rowsOf(block) };
}

function rowsOf(block: SheetBlock): Block['rows'] {
  switch (block.kind) {
    case 'list':
      return (pdf, width) => listRows(pdf, width, block);
    case 'table':
      return (pdf, width) => tableRows(pdf, width, block);
    case 'grid':
      return (pdf, width) => [
        ...listRows(pdf, width, {
          sentences: block.sentence === null ? [] : [block.sentence],
          numbered: false,
          strong: false,
        }),
        ...gridRows(pdf, width, block),
      ];
  }
}
