import { copyFileSync, existsSync, renameSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { makePrivateFolder } from '../shell/private-files.ts';
import { addRowsOf, mergeIn, otherTables } from './merge.ts';
import { bothCounts, emptyCounts, type MergeCounts } from './merge-counts.ts';
import { openStore, STORE_FILE, type StoreOpening } from './open-store.ts';
import { readIncoming } from './read-incoming.ts';
import { withAttached } from './restore.ts';
import { type PageSalvage, salvagePages } from './salvage-pages.ts';
import { atomically, type Store } from './store.ts';

const FOLDER = 'set-aside';
/** A database is these three files; quarantined apart, the log's last edits would be lost. */
const FILES = ['', '-wal', '-shm'];

/** What was done about a damaged store. */
export interface Recovery {
  /** Where the damaged file now lies, unchanged. */
  readonly quarantinedAt: string;
  readonly salvaged: MergeCounts;
  /** Rows that were found but do not read. */
  readonly unreadable: number;
  /** Tables that break off in the middle, so that more may be missing than can be counted. */
  readonly brokenTables: readonly string[];
  /** What was found page by page; null where SQLite read everything, or nothing was found. */
  readonly pages: PageSalvage | null;
}

export type Recovered =
  | { readonly kind: 'recovered'; readonly store: Store; readonly recovery: Recovery }
  | Extract<StoreOpening, { kind: 'refused' }>;

/** Sets a damaged store aside, starts a new one, and brings in what can still be read of the old. */
export function recoverStore(folder: string, clock: () => number = Date.now): Recovered {
  const quarantinedAt = quarantineStore(folder, clock);
  const opening = openStore(folder, clock);
  if (opening.kind === 'refused') return opening;
  const { store } = opening;
  return { kind: 'recovered', store, recovery: { quarantinedAt, ...salvage(store, quarantinedAt) } };
}

/** Renames, never copies: the damaged file stays as it was found, byte for byte, until someone looks at it. */
export function quarantineStore(folder: string, clock: () => number): string {
  const place = join(folder, FOLDER);
  makePrivateFolder(place);
  const stamp = new Date(clock()).toISOString().replace(/[:.]/g, '-');
  const target = join(place, `kneelwright-damaged-${stamp}.db`);
  for (const ending of FILES) {
    const from = join(folder, STORE_FILE + ending);
    if (existsSync(from)) renameSync(from, target + ending);
  }
  return target;
}

/**
 * Brings in what can still be read of a damaged file: through SQLite, and where that breaks off or cannot begin, page by page.
 * Reads from a copy: opening a database writes its log back, and the quarantined file must stay as it is.
 */
export function salvage(store: Store, path: string): Omit<Recovery, 'quarantinedAt'> {
  const read = throughSqlite(store, path);
  if (read.brokenTables.length === 0) return { ...read, pages: null };
  const found = salvagePages(path, store.clock, (file, pages) => ({ ...readInto(store, file), pages }));
  if (!found) return { ...read, pages: null };
  return { ...read, salvaged: bothCounts(read.salvaged, found.salvaged), pages: found.pages };
}

type Read = Pick<Recovery, 'salvaged' | 'unreadable' | 'brokenTables'>;

function throughSqlite(store: Store, path: string): Read {
  const copy = `${path}.part`;
  try {
    for (const ending of FILES) if (existsSync(path + ending)) copyFileSync(path + ending, copy + ending);
    return readInto(store, copy);
  } catch {
    return { salvaged: emptyCounts(), unreadable: 0, brokenTables: ['all'] };
  } finally {
    for (const ending of FILES) rmSync(copy + ending, { force: true });
  }
}

/** Merges all that SQLite reads of a file. */
function readInto(store: Store, file: string): Read {
  const damaged = new Database(file);
  try {
    const { items, unreadable, brokenTables } = readIncoming(damaged);
    damaged.close();
    const salvaged = mergeIn(store, items);
    const brokenToo = salvageOtherTables(store, file);
    return { salvaged, unreadable, brokenTables: [...brokenTables, ...brokenToo] };
  } finally {
    damaged.close();
  }
}

/** Each on its own: one that breaks off, or is of an older version, does not keep the others from being saved. */
function salvageOtherTables(store: Store, copy: string): string[] {
  return withAttached(store, copy, () =>
    [...otherTables(store), 'field_versions'].filter((table) => {
      try {
        atomically(store, () => addRowsOf(store, table, 'other'));
        return false;
      } catch {
        return true;
      }
    }),
  );
}
