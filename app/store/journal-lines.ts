import { crc32 } from 'node:zlib';
import { z } from 'zod';
import type { RowChange, RowValue } from './row-guard.ts';

/** A journal's first line: the store it belongs to, and that it holds every change after number `from`. */
export interface JournalHead {
  readonly line: string;
  readonly from: number;
}

/** What a line of a journal says, but for the values of its row. */
export type JournalLine =
  | {
      readonly kind: 'change';
      readonly n: number;
      readonly table: string;
      readonly key: string;
      readonly isRemoved: boolean;
      /** The last change of a transaction. */
      readonly isEnd: boolean;
    }
  /** Stands for a transaction too large to be written down row by row. */
  | { readonly kind: 'gap'; readonly n: number };

const headSchema = z.strictObject({ journal: z.literal(1), line: z.string(), from: z.int().min(0) });
const value = z.union([z.string(), z.number(), z.null(), z.strictObject({ bytes: z.string() })]);
const changeSchema = z.strictObject({ n: z.int().min(0), table: z.string(), key: z.string() });
const gapSchema = z.strictObject({ n: z.int().min(0), gap: z.literal(true) });
const rowSchema = z.object({ row: z.record(z.string(), value).nullable() });

/** In a line's text this stands before the row only: inside a string the quotes would be escaped. */
const ROW = Buffer.from(',"row":');
const REMOVED = Buffer.from('null');
const END = Buffer.from(',"end":true}');
/** The checksum in hexadecimal digits, and a space. */
const BEFORE_TEXT = 9;

/** The first line of a journal. */
export function headLine(head: JournalHead): string {
  return sealed({ journal: 1, ...head });
}

/** One transaction's changes as the lines that are added for it. */
export function journalLines(changes: readonly RowChange[]): string {
  return changes
    .map(({ n, table, key, row }, i) => {
      const plain = row && Object.fromEntries(Object.entries(row).map(([k, v]) => [k, plainValue(v)]));
      const end = i === changes.length - 1 ? { end: true } : {};
      return sealed({ n, table, key, row: plain, ...end });
    })
    .join('');
}

/** The line that stands for a transaction whose changes are not written down. */
export function gapLine(n: number): string {
  return sealed({ n, gap: true });
}

/** Reads a journal's first line; null if it does not fit its checksum. */
export function readHead(line: Buffer): JournalHead | null {
  const { data } = headSchema.safeParse(json(textOf(line)));
  return data ? { line: data.line, from: data.from } : null;
}

/** Reads any other line; null if it does not fit its checksum. The row's values are left alone. */
export function readLine(line: Buffer): JournalLine | null {
  const text = textOf(line);
  const rowAt = text?.indexOf(ROW) ?? -1;
  if (!text || rowAt < 0) {
    const { data } = gapSchema.safeParse(json(text));
    return data ? { kind: 'gap', n: data.n } : null;
  }
  const { data } = changeSchema.safeParse(json(Buffer.concat([text.subarray(0, rowAt), Buffer.from('}')])));
  if (!data) return null;
  const { n, table, key } = data;
  const rowFrom = rowAt + ROW.length;
  const isRemoved = text.subarray(rowFrom, rowFrom + REMOVED.length).equals(REMOVED);
  return { kind: 'change', n, table, key, isRemoved, isEnd: text.subarray(-END.length).equals(END) };
}

/** The row in a line that has been read before. */
export function rowOfLine(line: Buffer): Record<string, RowValue> | null {
  const { row } = rowSchema.parse(json(textOf(line)));
  return row && Object.fromEntries(Object.entries(row).map(([k, v]) => [k, fullValue(v)]));
}

function plainValue(v: RowValue): unknown {
  if (v instanceof Uint8Array)
    return { bytes: Buffer.from(v.buffer, v.byteOffset, v.length).toString('base64') };
  return typeof v === 'bigint' ? Number(v) : v;
}

function fullValue(v: z.infer<typeof value>): RowValue {
  return v && typeof v === 'object' ? Buffer.from(v.bytes, 'base64') : v;
}

function sealed(content: object): string {
  const text = JSON.stringify(content);
  return `${crc32(text).toString(16).padStart(8, '0')} ${text}\n`;
}

/** The text of a line; null if it does not fit its checksum. */
function textOf(line: Buffer): Buffer | null {
  const text = line.subarray(BEFORE_TEXT);
  const sum = Number.parseInt(line.toString('latin1', 0, BEFORE_TEXT - 1), 16);
  return line[BEFORE_TEXT - 1] === 0x20 && sum === crc32(text) ? text : null;
}

function json(text: Buffer | null): unknown {
  try {
    return text === null ? null : JSON.parse(text.toString('utf8'));
  } catch {
    return null;
  }
}
