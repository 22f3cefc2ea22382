import {
  closeSync,
  existsSync,
  fstatSync,
  fsyncSync,
  ftruncateSync,
  openSync,
  readSync,
  renameSync,
  rmSync,
  writeSync,
} from 'node:fs';
import { join } from 'node:path';
import { atomicWritePieces } from '../shell/atomic-write.ts';
import { fileLines } from './file-lines.ts';
import { headLine, type JournalHead, journalLines, readHead, readLine, rowOfLine } from './journal-lines.ts';
import type { RowChange } from './row-guard.ts';

const FILE = 'journal';

/** A journal as read. Its rows stay in the file, and are read one by one when they are asked for, until it is closed. */
export interface ReadJournal extends JournalHead {
  /** Changes of whole transactions, in the order of their numbers. */
  readonly changes: readonly RowChange[];
  /** Lines that do not fit their own checksum. */
  readonly damagedLines: number;
  /** Whether it breaks off in the middle of a transaction, as a crash leaves it. */
  readonly torn: boolean;
  close(): void;
}

/** Where a data folder's journal lies. */
export function journalPath(folder: string): string {
  return join(folder, FILE);
}

/** Reads a data folder's journal. Null if there is none; a head that does not read makes it `headless`. */
export function readJournal(folder: string): ReadJournal | 'headless' | null {
  const path = journalPath(folder);
  if (!existsSync(path)) return null;
  const handle = openSync(path, 'r');
  const lines = fileLines(handle);
  const first = lines.next().value;
  const head = first?.isEnded ? readHead(first.bytes) : null;
  if (!head) {
    closeSync(handle);
    return 'headless';
  }
  const { from, ...read } = readChanges(handle, lines, head.from);
  return { line: head.line, from, ...read, close: () => closeSync(handle) };
}

function readChanges(
  handle: number,
  lines: ReturnType<typeof fileLines>,
  start: number,
): Omit<ReadJournal, 'line' | 'close'> {
  let from = start;
  let damagedLines = 0;
  let changes: RowChange[] = [];
  let open: RowChange[] = [];
  for (const { at, bytes, isEnded } of lines) {
    // What follows the last line break was being written when the program ended: nobody was told that it was kept.
    if (!isEnded) return { from, changes, damagedLines, torn: true };
    const line = readLine(bytes);
    if (line === null) damagedLines += 1;
    else if (line.kind === 'gap') from = Math.max(from, line.n);
    else {
      // A number that comes again: the transaction that had it before was not committed.
      changes = droppedFrom(changes, line.n);
      open = droppedFrom(open, line.n);
      open.push(changeInFile(line, { handle, at, length: bytes.length }));
      if (!line.isEnd) continue;
      for (const change of open) changes.push(change);
      open = [];
    }
  }
  return { from, changes, damagedLines, torn: open.length > 0 };
}

/** A change whose row is read from its line each time it is asked for. */
function changeInFile(
  { n, table, key, isRemoved }: { n: number; table: string; key: string; isRemoved: boolean },
  { handle, at, length }: { handle: number; at: number; length: number },
): RowChange {
  if (isRemoved) return { n, table, key, row: null };
  return {
    n,
    table,
    key,
    get row() {
      const line = Buffer.allocUnsafe(length);
      readSync(handle, line, 0, length, at);
      return rowOfLine(line);
    },
  };
}

function droppedFrom(changes: RowChange[], n: number): RowChange[] {
  const last = changes.at(-1);
  return last !== undefined && last.n >= n ? changes.filter((change) => change.n < n) : changes;
}

/** Writes a journal again, whole or not at all. Only one row is in memory at a time. */
export function writeJournal(folder: string, head: JournalHead, changes: Iterable<RowChange>): void {
  atomicWritePieces(journalPath(folder), pieces(head, changes));
}

function* pieces(head: JournalHead, changes: Iterable<RowChange>): Generator<Uint8Array> {
  yield Buffer.from(headLine(head));
  for (const change of changes) yield Buffer.from(journalLines([change]));
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

/** Puts a journal back that was put aside by a start that did not come to its end. */
export function bringPutAwayBack(folder: string): void {
  const away = journalPath(folder) + PUT_AWAY;
  if (existsSync(away)) renameSync(away, journalPath(folder));
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
