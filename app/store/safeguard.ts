import type Database from 'better-sqlite3';
import {
  type JournalEnd,
  openJournalEnd,
  putJournalAway,
  type ReadJournal,
  readJournal,
  writeJournal,
} from './journal-file.ts';
import { gapLine, journalLines } from './journal-lines.ts';
import { guardedTables, guardRows, keyValues, type RowChange, type RowValue, whereKey } from './row-guard.ts';
import { renewSums } from './row-sums.ts';
import { type SeenFiles, sameFiles, samePlaces, seenFiles } from './seen-files.ts';
import type { Safeguard, Store } from './store.ts';

/** A transaction that writes more than this is not written down row by row, bytes: a backup is taken after it instead. */
const LARGEST_TRANSACTION = 8 * 1024 * 1024;

/** Where a store stands: whose line it is, and the number of the row written last. */
export interface Position {
  readonly line: string;
  readonly n: number;
}

/** The position of an open database; null for one of a version without. */
export function positionOf(db: Database.Database): Position | null {
  try {
    return db.prepare<[], Position>('SELECT line, n FROM journal_position').get() ?? null;
  } catch {
    return null;
  }
}

/** Thrown where the file that was opened no longer lies in its place, or is no longer as this program left it. */
export class StoreReplaced extends Error {
  readonly code = 'STORE_REPLACED';
}

/**
 * Guards an open store: checksums for every row, and a journal of what was kept, in a file of its own that does not
 * depend on SQLite's log. `upgraded`: the tables have just changed, so both begin again.
 */
export function guardStore(store: Pick<Store, 'db' | 'folder' | 'file'>, upgraded: boolean): Safeguard {
  const { db, folder, file } = store;
  if (upgraded) db.transaction(() => renewSums(db))();
  const position = db.prepare<[], Position>('SELECT line, n FROM journal_position');
  let needsBackup = settleJournal(folder, position.get()!, upgraded);
  let end: JournalEnd | null = null;
  let pending: RowChange[] = [];
  let pendingBytes = 0;
  guardRows(db, (change) => {
    const { table, key } = change;
    for (const rows of watching) rows.set(`${table} ${key}`, { table, key });
    const last = pending.at(-1);
    if (last && last.n >= change.n) pending = pending.filter((one) => one.n < change.n);
    pendingBytes += sizeOf(change);
    pending.push(pendingBytes > LARGEST_TRANSACTION ? { ...change, row: null } : change);
  });
  let seen: SeenFiles | null = null;
  let lent = false;
  const watching = new Set<Map<string, { table: string; key: string }>>();

  function flush({ unjournalled = false } = {}): void {
    const at = position.get()!.n;
    const kept = pending.filter((change) => change.n <= at);
    const large = unjournalled || pendingBytes > LARGEST_TRANSACTION;
    if (kept.length > 0) {
      end ??= openJournalEnd(folder);
      end.add(large ? gapLine(at) : journalLines(kept));
      if (large) needsBackup = true;
    }
    pending = [];
    pendingBytes = 0;
  }
  return {
    flush,
    needsBackup: () => needsBackup,
    isLent: () => lent,
    watch() {
      const rows = new Map<string, { table: string; key: string }>();
      watching.add(rows);
      return { changed: () => [...rows.values()], end: () => void watching.delete(rows) };
    },
    look() {
      // The worker writes the file; whoever else might is found out when it gives the store back.
      if (lent) return;
      seen ??= seenFiles(file);
      if (!sameFiles(seen, seenFiles(file))) throw new StoreReplaced('the data file was replaced');
    },
    looked() {
      // A transaction that is still open may be taken back.
      if (db.inTransaction || lent) return;
      flush();
      const now = seenFiles(file);
      if (seen && !samePlaces(seen, now)) throw new StoreReplaced('the data file was replaced');
      seen = now;
    },
    rewrite(from, { backedUpAt, isNeeded = () => true } = {}) {
      end?.close();
      end = null;
      const read = soundJournal(folder);
      const now = position.get()!;
      const old = read?.line === now.line ? read : null;
      const least = Math.max(from, old?.from ?? now.n);
      const kept = (old?.changes ?? []).filter((change) => change.n > least);
      read?.close();
      writeJournal(folder, { line: now.line, from: least }, refreshed(db, kept, isNeeded));
      const settled = backedUpAt !== undefined && backedUpAt >= least;
      if (settled) needsBackup = false;
      return settled;
    },
    close() {
      end?.close();
      end = null;
    },
    lend() {
      flush();
      end?.close();
      end = null;
      lent = true;
    },
    takeBack(left) {
      lent = false;
      const now = seenFiles(file);
      if (seen && !samePlaces(seen, now)) throw new StoreReplaced('the data file was replaced');
      seen = now;
      needsBackup = left.needsBackup || (needsBackup && left.settled !== true);
    },
  };
}

function soundJournal(folder: string): ReadJournal | null {
  const journal = readJournal(folder);
  return journal === 'headless' ? null : journal;
}

/** Makes the journal in the folder one that goes with a store at this position; gives whether that needs a backup. */
function settleJournal(folder: string, { line, n }: Position, upgraded: boolean): boolean {
  const known = soundJournal(folder);
  try {
    if (!known || known.line !== line || upgraded || (known.changes.at(-1)?.n ?? known.from) < n) {
      // Nothing is known of how this state came about: a backup of it must become the ground to build on.
      if (known && known.line !== line) putJournalAway(folder);
      writeJournal(folder, { line, from: n }, []);
      return n > 0;
    }
    if (known.damagedLines > 0 || known.torn) writeJournal(folder, { line, from: known.from }, known.changes);
    return false;
  } finally {
    known?.close();
  }
}

/**
 * The same rows as they are now, each once, one at a time: what was kept in between is dropped, and of somebody who has been
 * erased nothing stays.
 */
function* refreshed(
  db: Database.Database,
  changes: readonly RowChange[],
  isNeeded: (removed: RowChange) => boolean,
): Generator<RowChange> {
  const tables = new Map(
    guardedTables(db).map((table) => {
      const row = db.prepare<RowValue[], Record<string, RowValue>>(
        `SELECT * FROM "${table.name}" WHERE ${whereKey(table)}`,
      );
      return [table.name, row];
    }),
  );
  const last = new Map(changes.map((change) => [`${change.table} ${change.key}`, change]));
  for (const { n, table, key } of [...last.values()].sort((a, b) => a.n - b.n)) {
    const found = tables.get(table);
    if (!found) continue;
    const change = { n, table, key, row: found.get(...keyValues(key)) ?? null };
    if (change.row !== null || isNeeded(change)) yield change;
  }
}

function sizeOf({ row }: RowChange): number {
  let size = 100;
  for (const value of Object.values(row ?? {})) {
    size += typeof value === 'string' || value instanceof Uint8Array ? value.length : 8;
  }
  return size;
}
