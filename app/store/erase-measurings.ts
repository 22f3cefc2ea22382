import type Database from 'better-sqlite3';
import { type Person, withoutName } from './erase-from-fit.ts';

/** Whether a database is of a version that keeps measurings and photographs. */
function hasMeasurings(db: Database.Database): boolean {
  return db.prepare("SELECT 1 FROM sqlite_schema WHERE name = 'measurings'").get() !== undefined;
}

/**
 * Takes away everything that an athlete ever measured, and the name from what is written under photographs of boats. Gives
 * how many measurings there were. Must come before the athlete's own row goes.
 */
export function eraseMeasurings(db: Database.Database, person: Person): number {
  if (!hasMeasurings(db)) return 0;
  const gone = db.prepare('DELETE FROM measurings WHERE athlete_id = ?').run(person.id).changes;
  db.prepare("DELETE FROM quarantine WHERE table_name = 'measurings' AND instr(row_id, ?)").run(person.id);
  const update = db.prepare('UPDATE boat_photos SET caption = ? WHERE id = ?');
  for (const { id, caption } of db
    .prepare<[], { id: string; caption: string }>('SELECT id, caption FROM boat_photos')
    .all()) {
    const cleaned = withoutName(caption, person.name);
    if (cleaned !== caption) update.run(cleaned, id);
  }
  return gone;
}
