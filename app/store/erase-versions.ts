import type Database from 'better-sqlite3';
import type { RecordKind } from '../changes/record-shapes.ts';

/** Whether a database is of a version that keeps the version of each field. */
export function hasVersions(db: Database.Database): boolean {
  return db.prepare("SELECT 1 FROM sqlite_schema WHERE name = 'field_versions'").get() !== undefined;
}

/** Forgets everything that was kept of the fields of records that go. */
export function eraseVersionsOf(db: Database.Database, kind: RecordKind, ids: readonly string[]): void {
  if (!hasVersions(db)) return;
  const erase = db.prepare('DELETE FROM field_versions WHERE kind = ? AND record_id = ?');
  for (const id of ids) erase.run(kind, id);
}

/** Values that wait for a decision are dropped where any of `texts` stands in them. */
export function dropWaitingValues(db: Database.Database, texts: readonly string[]): void {
  if (!hasVersions(db)) return;
  const rows = db
    .prepare<[], { kind: string; id: string; path: string; others: string }>(
      "SELECT kind, record_id AS id, path, others FROM field_versions WHERE others <> '[]'",
    )
    .all();
  const put = db.prepare(
    'UPDATE field_versions SET others = ? WHERE kind = ? AND record_id = ? AND path = ?',
  );
  for (const { kind, id, path, others } of rows) {
    const values = JSON.parse(others) as { value: string | null }[];
    const kept = values.filter(({ value }) => !texts.some((text) => value?.includes(text)));
    if (kept.length < values.length) put.run(JSON.stringify(kept), kind, id, path);
  }
}
