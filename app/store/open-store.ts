import { accessSync, constants, existsSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { errorCode } from '../shell/error-code.ts';
import { keepPrivate, makePrivateFile, makePrivateFolder } from '../shell/private-files.ts';
import { damageOf } from './integrity.ts';
import { migrate, STORE_VERSION, storeVersion } from './migrate.ts';
import { guardStore } from './safeguard.ts';
import type { Store } from './store.ts';
import { settleIdentity } from './store-identity.ts';
import { type StoreLock, takeStoreLock } from './store-lock.ts';

/** `KNLW`: marks the file as this program's in its header. */
const APPLICATION_ID = 0x4b4e4c57;
export const STORE_FILE = 'kneelwright.db';
/** How long to wait for another program that has the file, milliseconds: enough for one that is just closing. */
const LOCK_WAIT_MS = 1500;
/** The write-ahead log is cut back to this size after each checkpoint, bytes. */
const WAL_LIMIT = 4 * 1024 * 1024;

/** Why a store was not opened. Nothing has been changed in any of these cases. */
export type StoreRefusal =
  | { readonly code: 'cannot-write'; readonly folder: string }
  | { readonly code: 'in-use'; readonly file: string }
  | { readonly code: 'newer'; readonly file: string; readonly found: number; readonly known: number }
  | { readonly code: 'foreign'; readonly file: string }
  | { readonly code: 'damaged'; readonly file: string; readonly detail: string }
  | { readonly code: 'disk-full'; readonly folder: string }
  | { readonly code: 'disk-error'; readonly file: string; readonly detail: string };

export type StoreOpening =
  | { readonly kind: 'open'; readonly store: Store; readonly copiedTo: string | null }
  | { readonly kind: 'refused'; readonly refusal: StoreRefusal };

/** Opens the store in `folder`, making or upgrading it as needed. The folder is this process's own until closed. */
export function openStore(folder: string, clock: () => number = Date.now): StoreOpening {
  const file = join(folder, STORE_FILE);
  let db: Database.Database | null = null;
  let lock: StoreLock | null = null;
  try {
    makePrivateFolder(folder);
    accessSync(folder, constants.R_OK | constants.W_OK | constants.X_OK);
    // SQLite would quietly open a file it may not write for reading only, and fail at the lock with a mere I/O error.
    if (existsSync(file)) accessSync(file, constants.R_OK | constants.W_OK);
    keepPrivate(folder);
    lock = takeStoreLock(folder, LOCK_WAIT_MS);
    const suspect = needsCheck(file);
    makePrivateFile(file);
    db = new Database(file, { timeout: LOCK_WAIT_MS });
    const refusal = claim(db, file, suspect ? 'check' : 'trust');
    if (refusal) {
      db.close();
      lock.release();
      return { kind: 'refused', refusal };
    }
    rmSync(file + SUSPECT, { force: true });
    const before = storeVersion(db);
    const copiedTo = migrate({ db, folder, clock });
    const safeguard = guardStore({ db, folder, file }, before < STORE_VERSION);
    const store: Store = { db, folder, file, clock, safeguard, lock };
    settleIdentity(store);
    return { kind: 'open', store, copiedTo };
  } catch (error) {
    db?.close();
    lock?.release();
    return { kind: 'refused', refusal: refusalOf(error, { folder, file }) };
  }
}

/** Lies beside a store whose backup was found damaged: the next start checks the store itself, however large. */
const SUSPECT = '.check';
/** Up to this size a store is read through at every start, bytes; that takes about 0.3 s per 100 MB. */
const ALWAYS_CHECKED = 64 * 1024 * 1024;

/** A small store is always checked; a large one after a crash (its log is still there), or when it is suspect. */
function needsCheck(file: string): boolean {
  if (!existsSync(file)) return false;
  return statSync(file).size <= ALWAYS_CHECKED || existsSync(`${file}-wal`) || existsSync(file + SUSPECT);
}

/** Whether a store is read through when it is opened now, rows and all. */
export function isChecked(file: string): boolean {
  return needsCheck(file);
}

/** Asks for a check of the store at the next start. */
export function suspectStore({ file }: Store): void {
  writeFileSync(file + SUSPECT, '', { mode: 0o600 });
}

/** Indexes are held against their tables as well where that is a matter of milliseconds, bytes. */
const CHECKED_WHOLE = 16 * 1024 * 1024;

function depthFor(file: string): 'quick' | 'whole' {
  return statSync(file).size <= CHECKED_WHOLE ? 'whole' : 'quick';
}

/** Checks the file before the first write to it; sets how it is written. */
function claim(db: Database.Database, file: string, trust: 'check' | 'trust'): StoreRefusal | null {
  const version = storeVersion(db);
  const mark = db.pragma('application_id', { simple: true }) as number;
  const tables = db.prepare<[], number>('SELECT count(*) FROM sqlite_schema').pluck().get()!;
  const fresh = version === 0 && tables === 0 && mark === 0;
  if (!fresh && mark !== APPLICATION_ID) return { code: 'foreign', file };
  if (version > STORE_VERSION) return { code: 'newer', file, found: version, known: STORE_VERSION };
  const damage = trust === 'check' ? damageOf(db, depthFor(file)) : null;
  if (damage !== null) return { code: 'damaged', file, detail: damage };
  settlePragmas(db);
  if (fresh) db.pragma(`application_id = ${APPLICATION_ID}`);
  // A program of an older version, which has no lock file, is met here and not at the first save.
  db.transaction(() => db.pragma(`user_version = ${version}`)).exclusive();
  return null;
}

/** How every store is read and written. */
export function settlePragmas(db: Database.Database): void {
  db.pragma('journal_mode = WAL');
  db.pragma('synchronous = FULL');
  db.pragma('foreign_keys = ON');
  db.pragma('trusted_schema = OFF');
  db.pragma('secure_delete = ON');
  db.pragma(`journal_size_limit = ${WAL_LIMIT}`);
}

const READ_ONLY = /^(EACCES|EPERM|EROFS|SQLITE_READONLY|SQLITE_CANTOPEN)/;
const FULL = /^(ENOSPC|EDQUOT|SQLITE_FULL)/;
const DAMAGED = /^SQLITE_(CORRUPT|NOTADB)/;
const DISK_ERROR = /^(EIO|EFBIG|SQLITE_IOERR)/;
const IN_USE = /^SQLITE_(BUSY|LOCKED)/;

function refusalOf(error: unknown, { folder, file }: { folder: string; file: string }): StoreRefusal {
  const code = errorCode(error);
  if (READ_ONLY.test(code)) return { code: 'cannot-write', folder };
  if (FULL.test(code)) return { code: 'disk-full', folder };
  if (IN_USE.test(code)) return { code: 'in-use', file };
  const detail = error instanceof Error ? error.message : String(error);
  if (DISK_ERROR.test(code)) return { code: 'disk-error', file, detail };
  if (DAMAGED.test(code)) return { code: 'damaged', file, detail };
  throw error;
}

/** Writes the log back into the file and closes it, before it returns. */
export function closeStore(store: Store): void {
  store.safeguard.close();
  try {
    closeDatabase(store);
  } finally {
    store.lock.release();
  }
}

function closeDatabase(store: Store): void {
  if (!store.db.open) return;
  try {
    store.db.pragma('wal_checkpoint(TRUNCATE)');
  } catch {
    // Everything acknowledged is in the log already; the next start reads it from there.
  }
  store.db.close();
}
