import type Database from 'better-sqlite3';
import { type GuardedTable, guardedTables, keySql, type RowValue, rowSum } from './row-guard.ts';

/** A row that is not as it was written: changed by something else than this program, or gone. */
export interface OddRow {
  readonly table: string;
  readonly key: string;
  readonly kind: 'changed' | 'gone';
}

/**
 * Every row that does not fit its checksum, a step for each row. Rows without a checksum pass: they were written before
 * there were any.
 */
export function* oddRows(db: Database.Database): Generator<OddRow | null> {
  for (const table of guardedTables(db)) {
    const sums = new Map(
      db
        .prepare<[string], { key: string; sum: number }>(
          'SELECT row_key AS key, sum FROM row_sums WHERE table_name = ?',
        )
        .all(table.name)
        .map(({ key, sum }) => [key, sum]),
    );
    for (const [key, ...values] of rowsOf(db, table)) {
      const known = sums.get(key);
      sums.delete(key);
      yield known === undefined || known === rowSum(values)
        ? null
        : { table: table.name, key, kind: 'changed' };
    }
    for (const key of sums.keys()) yield { table: table.name, key, kind: 'gone' };
  }
}

/** All odd rows at once. */
export function listOddRows(db: Database.Database): OddRow[] {
  const odd: OddRow[] = [];
  for (const row of oddRows(db)) if (row) odd.push(row);
  return odd;
}

/** Writes every row's checksum again: after the tables themselves have changed, or rows were changed without the guard. */
export function renewSums(db: Database.Database): void {
  db.exec('DELETE FROM row_sums');
  const add = db.prepare('INSERT INTO row_sums (table_name, row_key, sum) VALUES (?, ?, ?)');
  for (const table of guardedTables(db)) {
    // Nothing is written while rows are read; only the sums are in memory together.
    const sums = new Map<string, number>();
    for (const [key, ...values] of rowsOf(db, table)) sums.set(key, rowSum(values));
    for (const [key, sum] of sums) add.run(table.name, key, sum);
  }
}

/** Whether an open file has checksums at all: one of an older version has none. */
export function hasSums(db: Database.Database): boolean {
  return db.prepare("SELECT 1 FROM sqlite_schema WHERE name = 'row_sums'").get() !== undefined;
}

/** Key and values of every row; in the order of the table's columns, as the checksum wants them. */
function rowsOf(db: Database.Database, table: GuardedTable): IterableIterator<[string, ...RowValue[]]> {
  const columns = table.columns.map((column) => `"${column}"`).join(', ');
  const rows = db.prepare<[], [string, ...RowValue[]]>(
    `SELECT ${keySql(table, `"${table.name}"`)}, ${columns} FROM "${table.name}"`,
  );
  return rows.raw().iterate();
}
