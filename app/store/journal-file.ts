import {
  closeSync,
  existsSync,
  fstatSync,
  fsyncSync,
  ftruncateSync,
  openSync,
  readFileSync,
  renameSync,
  rmSync,
  writeSync,
} from 'node:fs';
import { join } from 'node:path';
import { crc32 } from 'node:zlib';
import { z } from 'zod';
import { atomicWrite } from '../shell/atomic-write.ts';
import type { RowChange, RowValue } from './row-guard.ts';

const FILE = 'journal';

/** What a journal says of itself: whose it is, and that it holds every change after number `from`. */
export interface JournalHead {
  readonly line: string;
  readonly from: number;
}

/** A journal as read. */
export interface ReadJournal extends JournalHead {
  /** Changes of whole transactions, in the order of their numbers. */
  readonly changes: readonly RowChange[];
  /** Lines that do not fit their own checksum. */
  readonly damagedLines: number;
  /** Whether it breaks off in the middle of a transaction, as a crash leaves it. */
  readonly torn: boolean;
}

const headSchema = z.strictObject({ journal: z.literal(1), line: z.string(), from: z.int().min(0) });
const value = z.union([z.string(), z.number(), z.null(), z.strictObject({ bytes: z.base64() })]);
const changeSchema = z.strictObject({
  n: z.int().min(0),
  table: z.string(),
  key: z.string(),
  row: z.record(z.string(), value).nullable(),
  /** The last change of a transaction. */
  end: z.literal(true).optional(),
});
/** Stands for a transaction too large to be written down row by row. */
const gapSchema = z.strictObject({ n: z.int().min(0), gap: z.literal(true) });

/** Where a data folder's journal lies. */
export function journalPath(folder: string): string {
  return join(folder, FILE);
}

/** One transaction's changes as the lines that are added for it. */
export function journalLines(changes: readonly RowChange[]): string {
  return changes
    .map(({ row, ...change }, i) => {
      const plain = row && Object.fromEntries(Object.entries(row).map(([k, v]) => [k, plainValue(v)]));
      const end = i === changes.length - 1 ? { end: true } : {};
      return sealed({ ...change, row: plain, ...end });
    })
    .join('');
}

/** The line that stands for a transaction whose changes are not written down. */
export function gapLine(n: number): string {
  return sealed({ n, gap: true });
}

function plainValue(v: RowValue): unknown {
  if (v instanceof Uint8Array) return { bytes: Buffer.from(v).toString('base64') };
  return typeof v === 'bigint' ? Number(v) : v;
}

function sealed(content: object): string {
  const text = JSON.stringify(content);
  return `${crc32(text).toString(16).padStart(8, '0')} ${text}\n`;
}

/** Reads a data folder's journal. Null if there is none; a head that does not read makes it `headless`. */
export function readJournal(folder: string): ReadJournal | 'headless' | null {
  const path = journalPath(folder);
  if (!existsSync(path)) return null;
  const lines = readFileSync(path, 'utf8').split('\n');
  const head = headSchema.safeParse(opened(lines.shift() ?? ''));
  if (!head.success) return 'headless';
  // What follows the last line break was being written when the program ended: nobody was told that it was kept.
  const rest = lines.pop() ?? '';
  const read = readLines(lines, head.data.from);
  return { line: head.data.line, ...read, torn: rest !== '' || read.torn };
}

function readLines(lines: readonly string[], start: number): Omit<ReadJournal, 'line'> {
  let from = start;
  let damagedLines = 0;
  let changes: RowChange[] = [];
  let open: RowChange[] = [];
  for (const line of lines) {
    const content = opened(line);
    const change = changeSchema.safeParse(content);
    const gap = gapSchema.safeParse(content);
    if (gap.success) from = Math.max(from, gap.data.n);
    else if (!change.success) damagedLines += 1;
    else {
      const { n, table, key, row, end } = change.data;
      // A number that comes again: the transaction that had it before was not committed.
      changes = droppedFrom(changes, n);
      open = droppedFrom(open, n);
      open.push({ n, table, key, row: row && fullRow(row) });
      if (!end) continue;
      changes.push(...open);
      open = [];
    }
  }
  return { from, changes, damagedLines, torn: open.length > 0 };
}

function droppedFrom(changes: RowChange[], n: number): RowChange[] {
  const last = changes.at(-1);
  return last !== undefined && last.n >= n ? changes.filter((change) => change.n < n) : changes;
}

function fullRow(row: Record<string, z.infer<typeof value>>): Record<string, RowValue> {
  return Object.fromEntries(
    Object.entries(row).map(([k, v]) => [k, v && typeof v === 'object' ? Buffer.from(v.bytes, 'base64') : v]),
  );
}

/** The content of a line; undefined if it does not fit its checksum. */
function opened(line: string): unknown {
  const text = line.slice(9);
  if (line[8] !== ' ' || Number.parseInt(line.slice(0, 8), 16) !== crc32(text)) return undefined;
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

/** Writes a journal anew, whole or not at all. */
export function writeJournal(folder: string, head: JournalHead, changes: readonly RowChange[]): void {
  const text = sealed({ journal: 1, ...head }) + changes.map((change) => journalLines([change])).join('');
  atomicWrite(journalPath(folder), Buffer.from(text));
}

/** Where the journal of another store is kept that lay here, until it is decided what becomes of it. */
const PUT_AWAY = '.other';

/** Puts the journal aside, so that another can be begun. */
export function putJournalAway(folder: string): void {
  renameSync(journalPath(folder), journalPath(folder) + PUT_AWAY);
}

/** Removes a journal that was put aside. */
export function dropPutAway(folder: string): void {
  rmSync(journalPath(folder) + PUT_AWAY, { force: true });
}

/** The end of a journal file, open for more lines. */
export interface JournalEnd {
  /** Adds lines; they are on the disk when this returns. Throws what the disk says if they are not. */
  add(lines: string): void;
  close(): void;
}

/** Opens a data folder's journal at its end. */
export function openJournalEnd(folder: string): JournalEnd {
  const handle = openSync(journalPath(folder), 'a', 0o600);
  return {
    add(lines) {
      const bytes = Buffer.from(lines);
      const { size } = fstatSync(handle);
      try {
        for (let at = 0; at < bytes.length; ) at += writeSync(handle, bytes, at);
        fsyncSync(handle);
      } catch (error) {
        // Half a line would spoil the next one.
        ftruncateSync(handle, size);
        throw error;
      }
    },
    close: () => closeSync(handle),
  };
}
