import type Database from 'better-sqlite3';
import { eraseVersionsOf } from './erase-versions.ts';
import type { Person } from './person.ts';

/** Whether a database is of a version that knows whom a photograph shows. */
function knowsSubjects(db: Database.Database): boolean {
  return (
    db.prepare("SELECT 1 FROM pragma_table_info('boat_photos') WHERE name = 'athlete_id'").get() !== undefined
  );
}

/** Takes away every photograph of an athlete with what was read off it; gives how many. */
export function erasePhotos(db: Database.Database, person: Person): number {
  if (!knowsSubjects(db)) return 0;
  const ids = db
    .prepare<[string], string>('SELECT id FROM boat_photos WHERE athlete_id = ?')
    .pluck()
    .all(person.id);
  db.prepare('DELETE FROM boat_photos WHERE athlete_id = ?').run(person.id);
  eraseVersionsOf(db, 'photo', ids);
  return ids.length;
}
