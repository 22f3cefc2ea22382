import type Database from 'better-sqlite3';
import {
  type GuardedTable,
  guardedTables,
  keyValues,
  type RowChange,
  type RowValue,
  rowSum,
  whereKey,
} from './row-guard.ts';

/**
 * Writes journal changes into an open database, one row each as it was kept last, and sets its position to the last of
 * them. The changes have their numbers already and get no new ones. Columns that a later version added
 * take their defaults.
 */
export function replay(db: Database.Database, changes: readonly RowChange[]): void {
  const last = changes.at(-1);
  if (!last) return;
  const tables = new Map(guardedTables(db).map((table) => [table.name, table]));
  const newest = new Map(changes.map((change) => [`${change.table} ${change.key}`, change]));
  db.transaction(() => {
    const before = db.prepare<[], number>('SELECT n FROM journal_position').pluck().get()!;
    const reached = Math.max(before, last.n);
    const setPosition = db.prepare('UPDATE journal_position SET n = ?');
    // A guard that is at work numbers these rows beyond what is reached, and so leaves them out of the journal.
    setPosition.run(reached);
    db.pragma('defer_foreign_keys = ON');
    db.exec('INSERT OR IGNORE INTO erasing (revision_id) SELECT id FROM revisions');
    for (const change of newest.values()) {
      const table = tables.get(change.table);
      if (!table) continue;
      db.prepare(`DELETE FROM "${table.name}" WHERE ${whereKey(table)}`).run(...keyValues(change.key));
      // Read again at each asking: once is enough.
      const { row } = change;
      if (row === null) continue;
      const columns = table.columns.filter((column) => column in row);
      const names = columns.map((column) => `"${column}"`).join(', ');
      db.prepare(`INSERT INTO "${table.name}" (${names}) VALUES (${columns.map(() => '?').join(', ')})`).run(
        ...columns.map((column) => row[column]),
      );
    }
    db.exec('DELETE FROM erasing');
    for (const change of newest.values()) {
      const table = tables.get(change.table);
      if (table) renewSumOf(db, table, change.key);
    }
    setPosition.run(reached);
  }).immediate();
}

/** The checksum of one row as it is now; none if it is gone. */
function renewSumOf(db: Database.Database, table: GuardedTable, key: string): void {
  const columns = table.columns.map((column) => `"${column}"`).join(', ');
  const values = db
    .prepare<RowValue[], RowValue[]>(`SELECT ${columns} FROM "${table.name}" WHERE ${whereKey(table)}`)
    .raw()
    .get(...keyValues(key));
  db.prepare('DELETE FROM row_sums WHERE table_name = ? AND row_key = ?').run(table.name, key);
  if (!values) return;
  db.prepare('INSERT INTO row_sums (table_name, row_key, sum) VALUES (?, ?, ?)').run(
    table.name,
    key,
    rowSum(values),
  );
}
