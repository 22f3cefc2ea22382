import Database from 'better-sqlite3';

/**
 * Opens the store a second time, to read it as it is at this moment for as long as it is open: what is written meanwhile
 * goes into the log behind it.
 */
export async function withSnapshot<T>(file: string, read: (db: Database.Database) => Promise<T>): Promise<T> {
  const db = new Database(file, { readonly: true });
  try {
    db.exec('BEGIN');
    // The first read takes the snapshot.
    db.prepare('SELECT count(*) FROM sqlite_schema').get();
    return await read(db);
  } finally {
    db.close();
  }
}
