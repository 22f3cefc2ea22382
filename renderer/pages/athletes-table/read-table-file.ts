import Papa from 'papaparse';
import { sayUnchanged } from '../../language/messages.ts';

/** A larger file is not read, bytes. */
const MOST_BYTES = 4 * 1024 * 1024;

/** A CSV file as rows of text cells, the headings first, or why it cannot be read, in words. */
export type TableFile =
  | { readonly name: string; readonly cells: readonly (readonly string[])[] }
  | { readonly problem: string };

/** Reads a CSV file with commas, semicolons or tabs between its cells, in UTF-8 or UTF-16. */
export async function readTableFile(file: File): Promise<TableFile> {
  if (file.size > MOST_BYTES) return { problem: sayUnchanged('table.in.too-large', { file: file.name }) };
  const text = textOf(new Uint8Array(await file.arrayBuffer()));
  if (text === null) return { problem: sayUnchanged('table.in.not-text', { file: file.name }) };
  const { data } = Papa.parse<string[]>(text, { skipEmptyLines: false });
  if (data.slice(1).every((row) => row.every((cell) => cell.trim() === ''))) {
    return { problem: sayUnchanged('table.in.empty', { file: file.name }) };
  }
  return { name: file.name, cells: data };
}

/** Any text holds no NUL; bytes that are no UTF-8 are of an older table program, and guessing would spoil names. */
function textOf(bytes: Uint8Array): string | null {
  const encoding = bytes[0] === 0xff && bytes[1] === 0xfe ? 'utf-16le' : 'utf-8';
  try {
    const text = new TextDecoder(encoding, { fatal: true }).decode(bytes);
    return text.includes('\0') ? null : text;
  } catch {
    return null;
  }
}

/** The cells with one of them written again; a column that is not there yet is added at the end under `heading`. */
export function withCell(
  cells: readonly (readonly string[])[],
  at: { row: number; index: number | null; heading: string },
  text: string,
): string[][] {
  const width = Math.max(...cells.map((row) => row.length));
  const index = at.index ?? width;
  return cells.map((row, i) => {
    const isHeading = at.index === null && i === 0;
    if (!isHeading && i !== at.row - 1) return [...row];
    const padded = Array.from({ length: Math.max(row.length, index + 1) }, (_, k) => row[k] ?? '');
    padded[index] = isHeading ? at.heading : text;
    return padded;
  });
}
