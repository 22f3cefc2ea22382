import type Database from 'better-sqlite3';

/**
 * Runs `work` with the named revisions open to change; every other one stays locked by the triggers. Must be inside a
 * transaction. Used for two things only: erasing a person, and putting a sound copy in place of an unreadable row.
 */
export function withRevisionsUnlocked(
  { db }: { readonly db: Database.Database },
  ids: readonly string[],
  work: () => void,
): void {
  const unlock = db.prepare('INSERT INTO erasing (revision_id) VALUES (?)');
  for (const id of ids) unlock.run(id);
  work();
  db.exec('DELETE FROM erasing');
}
