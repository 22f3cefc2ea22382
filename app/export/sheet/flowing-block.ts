import type { SheetBlock } from '../../../core/setout/sheet-block.ts';
import type { Words } from '../../../core/text/words.ts';
import type { Block } from './flow.ts';
import { gridRows, listRows, tableRows } from './table-rows.ts';

/** A headed part of the sheet as rows that flow through columns. */
export function flowing(block: SheetBlock, words: Words): Block {
  const { heading } = block;
  return { heading, continued: words.say('paper.continued', { heading }), rows: rowsOf(block) };
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
