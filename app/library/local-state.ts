import { createHash } from 'node:crypto';
import { rmSync } from 'node:fs';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { makePrivateFile } from '../shell/private-files.ts';
import type { RecordRef } from '../store/record-versions.ts';
import type { Store } from '../store/store.ts';
import { storeId } from '../store/store-identity.ts';

/** Lies beside the store of a laptop that shares a library. It holds identifiers and digests, nothing anybody entered. */
export const LIBRARY_FILE = 'library.db';

/** What is fetched later, one by one: pictures, and fits that were open when news of them came. */
export interface Wanted {
  readonly kind: 'photo' | 'fit';
  readonly id: string;
}

/** How far a laptop and its library know of each other. All of it can be lost: then everything is compared again. */
export interface LocalState {
  /**
   * Names the library with which this store is shared. What was known of another one is forgotten, and everything is compared
   * again.
   */
  belongTo(library: string): void;
  /** The number of the last change up to which everything has been fetched. */
  cursor(): number;
  setCursor(n: number): void;
  /** Notes that the library has a record just as it is here, or with null that it has not. */
  know(ref: RecordRef | { kind: 'revision'; id: string }, digest: string | null): void;
  /** Records and revisions that the library has not, or not so. Of the kinds that may be sent. */
  waiting(kinds: readonly string[]): { refs: Map<string, RecordRef>; revisions: string[] };
  wanted(kind: Wanted['kind']): string[];
  want(wanted: Wanted): void;
  fetched(wanted: Wanted): void;
  /** Notes that a record came from others, and was not here before. */
  came(ref: RecordRef): void;
  /** Records of a kind that are here and were in the library once. */
  shared(kind: RecordRef['kind']): string[];
  /** Notes that a record went from here because it may no longer be seen: if it comes again, it is new. */
  went(ref: RecordRef): void;
  /** Everything that came from others. */
  listCame(): RecordRef[];
  note(name: string, value: string): void;
  noted(name: string): string | null;
  close(): void;
}

const TABLES = `
CREATE TABLE IF NOT EXISTS known (kind TEXT NOT NULL, id TEXT NOT NULL, digest TEXT NOT NULL,
  PRIMARY KEY (kind, id)) STRICT, WITHOUT ROWID;
CREATE TABLE IF NOT EXISTS wanted (kind TEXT NOT NULL, id TEXT NOT NULL, PRIMARY KEY (kind, id)) STRICT, WITHOUT ROWID;
CREATE TABLE IF NOT EXISTS came (kind TEXT NOT NULL, id TEXT NOT NULL, PRIMARY KEY (kind, id)) STRICT, WITHOUT ROWID;
CREATE TABLE IF NOT EXISTS notes (name TEXT PRIMARY KEY, value TEXT NOT NULL) STRICT, WITHOUT ROWID;
`;

const FORGET = "DELETE FROM known; DELETE FROM wanted; DELETE FROM notes WHERE name IN ('store', 'cursor')";

/** Opens what is kept of a library beside a store. A store that went back to an earlier state begins again: it goes by another name. */
export function openLocalState(store: Store): LocalState {
  const db = openFile(join(store.folder, LIBRARY_FILE));
  const put = db.prepare('INSERT OR REPLACE INTO notes (name, value) VALUES (?, ?)');
  const get = db.prepare<[string], string>('SELECT value FROM notes WHERE name = ?').pluck();
  const noted = (name: string) => (get.get(name) as string | undefined) ?? null;
  if (noted('store') !== storeId(store)) {
    db.exec(FORGET);
    put.run('store', storeId(store));
  }
  const know = db.prepare('INSERT OR REPLACE INTO known (kind, id, digest) VALUES (?, ?, ?)');
  const forget = db.prepare('DELETE FROM known WHERE kind = ? AND id = ?');
  let looked: { key: string; in: Database.Database; found: ReturnType<typeof waiting> } | null = null;
  const want = db.prepare('INSERT OR IGNORE INTO wanted (kind, id) VALUES (?, ?)');
  const came = db.prepare('INSERT OR IGNORE INTO came (kind, id) VALUES (?, ?)');
  const fetched = db.prepare('DELETE FROM wanted WHERE kind = ? AND id = ?');
  return {
    belongTo(library) {
      if (noted('library') === library) return;
      // One that was joined before libraries had a name of their own is the same.
      if (noted('library') !== null) {
        db.exec(FORGET);
        put.run('store', storeId(store));
      }
      put.run('library', library);
    },
    cursor: () => Number(noted('cursor') ?? 0),
    setCursor: (n) => void put.run('cursor', String(n)),
    know: ({ kind, id }, digest) => {
      if (digest === null) forget.run(kind, id);
      else know.run(kind, id, digest);
    },
    waiting(kinds) {
      const key = [changesOf(store.db), changesOf(db), ...kinds].join(' ');
      if (looked?.key !== key || looked.in !== store.db)
        looked = { key, in: store.db, found: waiting(store, db, kinds) };
      return looked.found;
    },
    wanted: (kind) =>
      db.prepare<[string], string>('SELECT id FROM wanted WHERE kind = ? ORDER BY id').pluck().all(kind),
    want: ({ kind, id }) => void want.run(kind, id),
    fetched: ({ kind, id }) => void fetched.run(kind, id),
    came: ({ kind, id }) => void came.run(kind, id),
    shared: (kind) => {
      const here = store.db.prepare<[string], number>(HERE[kind]).pluck();
      const ids = db.prepare<{ kind: string }, string>(SHARED).pluck().all({ kind });
      return ids.filter((id) => here.get(id) !== undefined);
    },
    went: ({ kind, id }) => {
      forget.run(kind, id);
      db.prepare('DELETE FROM came WHERE kind = ? AND id = ?').run(kind, id);
    },
    listCame: () => db.prepare<[], RecordRef>('SELECT kind, id FROM came').all(),
    note: (name, value) => void put.run(name, value),
    noted,
    close: () => void db.close(),
  };
}

/** Differs between any two states of a database, whichever connection changed it. */
function changesOf(db: Database.Database): string {
  return `${db.pragma('data_version', { simple: true })} ${db.prepare('SELECT total_changes()').pluck().get()}`;
}

const SHARED = 'SELECT id FROM known WHERE kind = @kind UNION SELECT id FROM came WHERE kind = @kind';

const HERE: Readonly<Record<RecordRef['kind'], string>> = {
  athlete: 'SELECT 1 FROM athletes WHERE id = ?',
  boat: 'SELECT 1 FROM boats WHERE id = ?',
  paddle: 'SELECT 1 FROM paddles WHERE id = ?',
  fit: 'SELECT 1 FROM fits WHERE id = ?',
  photo: 'SELECT 1 FROM boat_photos WHERE id = ?',
  trial: 'SELECT 1 FROM trials WHERE id = ?',
};

function openFile(path: string): Database.Database {
  try {
    return prepared(path);
  } catch {
    // Nothing in it is anybody's work.
    for (const ending of ['', '-wal', '-shm', '-journal']) rmSync(path + ending, { force: true });
    return prepared(path);
  }
}

function prepared(path: string): Database.Database {
  makePrivateFile(path);
  const db = new Database(path);
  db.pragma('secure_delete = ON');
  // Nobody waits for the disk here: after a power cut the last notes may be gone, and what they were of is compared again.
  db.pragma('journal_mode = WAL');
  db.pragma('synchronous = NORMAL');
  db.exec(TABLES);
  return db;
}

/** A digest of every version of a record as it is kept here. */
export function digestHere({ db }: Pick<Store, 'db'>, { kind, id }: RecordRef): string {
  const text = db
    .prepare<
      [string, string],
      string
    >(`SELECT group_concat(path || char(0) || seen || writes || others, char(0))
      FROM (SELECT * FROM field_versions WHERE kind = ? AND record_id = ? ORDER BY path)`)
    .pluck()
    .get(kind, id);
  return digest(String(text));
}

function digest(text: string): string {
  return createHash('sha256').update(text).digest('base64url');
}

/** In the order in which records are sent: what others belong to comes first. */
const ORDER = ['athlete', 'boat', 'paddle', 'fit', 'photo', 'trial'];

function waiting(store: Store, db: Database.Database, kinds: readonly string[]) {
  const known = new Map(
    db
      .prepare<[], { kind: string; id: string; digest: string }>('SELECT kind, id, digest FROM known')
      .all()
      .map((row) => [`${row.kind} ${row.id}`, row.digest]),
  );
  const rows = store.db
    .prepare<[], { kind: RecordRef['kind']; id: string; text: string }>(
      `SELECT kind, record_id AS id, group_concat(path || char(0) || seen || writes || others, char(0)) AS text
       FROM (SELECT * FROM field_versions ORDER BY kind, record_id, path) GROUP BY kind, record_id`,
    )
    .all()
    .filter(({ kind, id, text }) => kinds.includes(kind) && known.get(`${kind} ${id}`) !== digest(text))
    .sort((a, b) => ORDER.indexOf(a.kind) - ORDER.indexOf(b.kind));
  const revisions = kinds.includes('fit')
    ? store.db.prepare<[], string>('SELECT id FROM revisions ORDER BY saved_at, id').pluck().all()
    : [];
  return {
    refs: new Map(rows.map(({ kind, id }) => [`${kind} ${id}`, { kind, id }])),
    revisions: revisions.filter((id) => !known.has(`revision ${id}`)),
  };
}
