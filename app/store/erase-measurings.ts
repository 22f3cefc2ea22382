import type Database from 'better-sqlite3';
import type { Person } from './person.ts';

/** Whether a database is of a version that keeps measurings. */
function hasMeasurings(db: Database.Database): boolean {
  return db.prepare("SELECT 1 FROM sqlite_schema WHERE name = 'measurings'").get() !== undefined;
}

/** Takes away everything that an athlete ever measured; gives how many days. Must come before the athlete's own row goes. */
export function eraseMeasurings(db: Database.Database, person: Person): number {
  if (!hasMeasurings(db)) return 0;
  const gone = db.prepare('DELETE FROM measurings WHERE athlete_id = ?').run(person.id).changes;
  db.prepare("DELETE FROM quarantine WHERE table_name = 'measurings' AND instr(row_id, ?)").run(person.id);
  return gone;
}
