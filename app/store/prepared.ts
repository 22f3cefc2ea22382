import type Database from 'better-sqlite3';

/** A statement that gives whole rows. It has no `pluck`, `raw` or `iterate`: others use the same one. */
type Kept<P extends unknown[], R> = Pick<Database.Statement<P, R>, 'run' | 'get' | 'all'>;

const kept = new WeakMap<Database.Database, Map<string, unknown>>();

/**
 * The statement of these words, prepared once and kept while its database is open. For what is asked row by row: to prepare takes
 * longer than most questions, and thousands of statements that are let go of hold everything up when the memory is cleared.
 */
export function prepared<P extends unknown[] | object = unknown[], R = unknown>(
  db: Database.Database,
  sql: string,
): Kept<P extends unknown[] ? P : [P], R> {
  const statements = kept.get(db) ?? new Map<string, unknown>();
  kept.set(db, statements);
  const statement = statements.get(sql) ?? db.prepare(sql);
  statements.set(sql, statement);
  return statement as Kept<P extends unknown[] ? P : [P], R>;
}
