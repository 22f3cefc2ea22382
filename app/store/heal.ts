import Database from 'better-sqlite3';
import { goodCopies } from './good-copies.ts';
import type { ReadJournal } from './journal-file.ts';
import { replay } from './replay.ts';
import { guardedTables, keyValues, type RowChange, type RowValue, whereKey } from './row-guard.ts';
import { listOddRows, type OddRow } from './row-sums.ts';
import { positionOf } from './safeguard.ts';
import type { Store } from './store.ts';
import { renewIdentity } from './store-identity.ts';

/** What was put right in a store that opened. */
export interface Healing {
  /** Changes that had been kept and were not in the file: the end of its log was lost, or the file is an older one. */
  readonly broughtBack: number;
  /** Rows that something else had changed or removed, and that are again as they were written. */
  readonly restoredRows: number;
  /** Rows of that kind that no journal and no backup holds. */
  readonly lostRows: readonly OddRow[];
}

/** Brings back from the journal and the backups what is missing in an open store, or not as it was written. */
export function heal(
  store: Store,
  { journal, check }: { journal: ReadJournal | null; check: boolean },
): Healing {
  const { db, folder } = store;
  const { n } = positionOf(db)!;
  const missing = (journal?.changes ?? []).filter((change) => change.n > n);
  if (missing.length > 0) {
    replay(db, missing);
    // The counter may have gone back with the file: no two writes may have one number.
    renewIdentity(store);
  }
  const odd = check ? listOddRows(db) : [];
  if (odd.length === 0) return { broughtBack: missing.length, restoredRows: 0, lostRows: [] };
  const found = rowsFor(odd, journal?.changes ?? [], folder);
  replay(db, found);
  const lostRows = odd.filter(
    ({ table, key }) => !found.some((row) => row.table === table && row.key === key),
  );
  // What stands in the store counts from now on: the row is told of once, not at every start.
  replay(
    db,
    lostRows.map((row) => ({ n: 0, ...row, row: presentRow(db, row) })),
  );
  return { broughtBack: missing.length, restoredRows: found.length, lostRows };
}

/** Each row as it was written last: out of the journal, else out of the backup that had come furthest. */
function rowsFor(odd: readonly OddRow[], changes: readonly RowChange[], folder: string): RowChange[] {
  const inJournal = new Map(changes.map((change) => [`${change.table} ${change.key}`, change]));
  const found = odd.flatMap(({ table, key }) => inJournal.get(`${table} ${key}`) ?? []);
  const rest = odd.filter(({ table, key }) => !inJournal.has(`${table} ${key}`));
  const copies = rest.length > 0 ? goodCopies(folder) : [];
  for (const { path } of copies) {
    const copy = new Database(path, { readonly: true });
    for (const place of rest) {
      if (found.some(({ table, key }) => table === place.table && key === place.key)) continue;
      const row = presentRow(copy, place);
      if (row) found.push({ n: 0, ...place, row });
    }
    copy.close();
  }
  return found;
}

function presentRow(
  db: Database.Database,
  { table, key }: { table: string; key: string },
): Record<string, RowValue> | null {
  const guarded = guardedTables(db).find(({ name }) => name === table);
  if (!guarded) return null;
  const row = db
    .prepare<RowValue[], Record<string, RowValue>>(`SELECT * FROM "${table}" WHERE ${whereKey(guarded)}`)
    .get(...keyValues(key));
  return row ?? null;
}
