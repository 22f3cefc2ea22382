import { crc32 } from 'node:zlib';
import type Database from 'better-sqlite3';

/** A value as SQLite keeps it. */
export type RowValue = string | number | bigint | null | Uint8Array;

/** One row as it was written, or that it was removed. */
export interface RowChange {
  /** Counts the rows written since the store was made. */
  readonly n: number;
  readonly table: string;
  /** The row's primary key as a JSON list. */
  readonly key: string;
  /** Null: the row was removed. */
  readonly row: Readonly<Record<string, RowValue>> | null;
}

/** A table whose rows are guarded: its columns, and which of them make the key. */
export interface GuardedTable {
  readonly name: string;
  readonly columns: readonly string[];
  readonly key: readonly string[];
}

/**
 * Tables that hold no person's work: the guard's own two, the list that opens revisions to changes, and this copy's identity.
 */
const UNGUARDED = ['row_sums', 'journal_position', 'erasing', 'this_store'];

/** Every table whose rows are guarded. */
export function guardedTables(db: Database.Database): GuardedTable[] {
  const names = db
    .prepare<[], string>(
      "SELECT name FROM main.sqlite_schema WHERE type = 'table' AND name NOT LIKE 'sqlite_%' ORDER BY name",
    )
    .pluck()
    .all();
  return names
    .filter((name) => !UNGUARDED.includes(name))
    .map((name) => {
      const columns = db.pragma(`main.table_info("${name}")`) as { name: string; pk: number }[];
      const key = columns.filter(({ pk }) => pk > 0).sort((a, b) => a.pk - b.pk);
      return { name, columns: columns.map((column) => column.name), key: key.map((column) => column.name) };
    });
}

/** The SQL that makes a row's key; `row` is NEW, OLD or the table's name. */
export function keySql({ key }: GuardedTable, row: string): string {
  const parts = key.length > 0 ? key.map((column) => `${row}."${column}"`) : [`${row}.rowid`];
  return `json_array(${parts.join(', ')})`;
}

/** The SQL that finds a row by its key, over the key's own index; `keyValues` gives what it is asked with. */
export function whereKey({ key }: GuardedTable): string {
  return key.length > 0 ? key.map((column) => `"${column}" = ?`).join(' AND ') : 'rowid = ?';
}

/** The values of a row's key. */
export function keyValues(key: string): RowValue[] {
  return JSON.parse(key) as RowValue[];
}

/** A row's checksum over its values in the order of the table's columns. */
export function rowSum(values: readonly RowValue[]): number {
  let sum = 0;
  for (const value of values) {
    sum = crc32(typeof value === 'object' && value !== null ? 'b' : (typeof value)[0]!, sum);
    sum = crc32(value instanceof Uint8Array ? Buffer.from(value) : String(value), sum);
  }
  return sum;
}

/**
 * Sees to it that every row that this connection writes or removes gets its checksum and its number, and is told to
 * `changed`, all within the transaction that writes it. The triggers are temporary: another program that opens the
 * file finds none.
 */
export function guardRows(db: Database.Database, changed: (change: RowChange) => void): void {
  const tables = guardedTables(db);
  const byName = new Map(tables.map((table) => [table.name, table]));
  db.function('row_kept', { varargs: true }, (...given: unknown[]) => {
    const [name, n, key, ...values] = given as [string, number, string, ...RowValue[]];
    const { columns } = byName.get(name)!;
    changed({ n, table: name, key, row: Object.fromEntries(columns.map((c, i) => [c, values[i]!])) });
    return rowSum(values);
  });
  db.function('row_gone', (name: unknown, n: unknown, key: unknown) => {
    changed({ n: n as number, table: name as string, key: key as string, row: null });
    return null;
  });
  for (const table of tables) db.exec(triggersOf(table));
}

function triggersOf(table: GuardedTable): string {
  const { name, columns } = table;
  const values = columns.map((column) => `NEW."${column}"`).join(', ');
  const position = '(SELECT n FROM journal_position)';
  const next = 'UPDATE journal_position SET n = n + 1;';
  const kept = `${next}
    INSERT INTO row_sums (table_name, row_key, sum)
      VALUES ('${name}', ${keySql(table, 'NEW')}, row_kept('${name}', ${position}, ${keySql(table, 'NEW')}, ${values}))
      ON CONFLICT (table_name, row_key) DO UPDATE SET sum = excluded.sum;`;
  const gone = `${next}
    DELETE FROM row_sums WHERE table_name = '${name}' AND row_key = ${keySql(table, 'OLD')};
    SELECT row_gone('${name}', ${position}, ${keySql(table, 'OLD')});`;
  const moved = `${keySql(table, 'OLD')} <> ${keySql(table, 'NEW')}`;
  return `
    CREATE TEMP TRIGGER "guard ${name} insert" AFTER INSERT ON main."${name}" BEGIN ${kept} END;
    CREATE TEMP TRIGGER "guard ${name} move" AFTER UPDATE ON main."${name}" WHEN ${moved} BEGIN ${gone} END;
    CREATE TEMP TRIGGER "guard ${name} update" AFTER UPDATE ON main."${name}" BEGIN ${kept} END;
    CREATE TEMP TRIGGER "guard ${name} delete" AFTER DELETE ON main."${name}" BEGIN ${gone} END;`;
}
