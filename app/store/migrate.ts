import { closeSync, fsyncSync, openSync } from 'node:fs';
import { join } from 'node:path';
import type Database from 'better-sqlite3';
import { makePrivateFile, makePrivateFolder } from '../shell/private-files.ts';
import { MIGRATIONS } from './migrations/index.ts';
import { searchText } from './search-text.ts';
import type { Store } from './store.ts';

/** The version that this program writes. */
export const STORE_VERSION = MIGRATIONS.length;

/** The version of an open database; 0 for an empty one. */
export function storeVersion(db: Database.Database): number {
  return db.pragma('user_version', { simple: true }) as number;
}

/**
 * Brings an older store up to this program's version, one migration per transaction. A store that holds anything is
 * copied first; the copy's path is given back, or null where there was nothing to copy.
 */
export function migrate(
  store: Pick<Store, 'db' | 'folder' | 'clock'>,
  migrations: readonly string[] = MIGRATIONS,
): string | null {
  const from = storeVersion(store.db);
  if (from >= migrations.length) return null;
  const copy = from > 0 ? copyBeforeMigration(store, from) : null;
  const inSearchForm = (...parts: unknown[]) => searchText(...parts.map(String));
  store.db.function('search_text', { deterministic: true, varargs: true }, inSearchForm);
  for (let version = from; version < migrations.length; version++) {
    store.db.transaction(() => {
      store.db.exec(migrations[version]!);
      store.db.pragma(`user_version = ${version + 1}`);
    })();
  }
  return copy;
}

/**
 * `VACUUM INTO` rather than a copy of the file: opening and closing the file a second time in this process would drop
 * the operating system's locks on it.
 */
function copyBeforeMigration(store: Pick<Store, 'db' | 'folder' | 'clock'>, version: number): string {
  const folder = join(store.folder, 'before-upgrade');
  makePrivateFolder(folder);
  const stamp = new Date(store.clock()).toISOString().replace(/[:.]/g, '-');
  const copy = join(folder, `kneelwright-v${version}-${stamp}.db`);
  makePrivateFile(copy);
  store.db.prepare('VACUUM INTO ?').run(copy);
  syncFile(copy);
  return copy;
}

/** Waits until a finished file is on the disk. */
export function syncFile(path: string): void {
  const handle = openSync(path, 'r+');
  try {
    fsyncSync(handle);
  } finally {
    closeSync(handle);
  }
}
