import Papa from 'papaparse';
import type { CallOutput, ParsedInput } from '../contract/contract.ts';
import type { CallResult } from '../contract/result.ts';
import { fileName } from '../export/file-name.ts';
import { onOneLine } from '../shell/plain-text.ts';
import { done, type Program } from './program.ts';

/** Tells table programs that the text is UTF-8; without it they take accents apart. */
const BYTE_ORDER_MARK = '\u{feff}';

/** Hands a table to the person as a CSV file. A cell that a table program would take for a formula is guarded. */
export async function exportTable(
  { shell }: Program,
  { name, rows }: ParsedInput<'tables.export'>,
): Promise<CallResult<CallOutput<'tables.export'>>> {
  const text =
    BYTE_ORDER_MARK +
    Papa.unparse(
      rows.map((row) => row.map(onOneLine)),
      { escapeFormulae: true },
    );
  const file = {
    name: fileName([name], 'csv'),
    mime: 'text/csv; charset=utf-8',
    bytes: Buffer.from(text, 'utf8'),
  };
  return done(await shell.deliver(file));
}
