import { createHash, randomBytes } from 'node:crypto';
import { realpathSync, statSync } from 'node:fs';
import { hostname } from 'node:os';
import type { Write } from '../changes/register.ts';
import { prepared } from './prepared.ts';
import { atomically, now, type Store } from './store.ts';

interface Identity {
  readonly id: string;
  readonly counter: number;
  readonly place: string;
}

/** The name under which this store writes. */
export function storeId({ db }: Pick<Store, 'db'>): string {
  return identity(db).id;
}

/** The next write of this store. Every edit has one of its own, and all fields of one edit share it. */
export function nextWrite(store: Store): Write {
  prepared(store.db, 'UPDATE this_store SET counter = counter + 1').run();
  const { id, counter } = identity(store.db);
  return { store: id, counter, at: now(store) };
}

/** The counter of this store's last write. */
export function counterOf({ db }: Pick<Store, 'db'>): number {
  return identity(db).counter;
}

/** Counts on from what has been seen elsewhere, so that a later write also has a higher counter. */
export function countOnFrom({ db }: Pick<Store, 'db'>, counter: number): void {
  prepared(db, 'UPDATE this_store SET counter = max(counter, ?)').run(counter);
}

/**
 * Gives the store a new name for its writes. Needed wherever it may have gone back to an earlier state: two different
 * writes of one store must never have one counter.
 */
export function renewIdentity({ db }: Pick<Store, 'db'>): void {
  db.prepare('UPDATE this_store SET id = ?').run(randomBytes(6).toString('hex'));
}

/** Renews the identity of a store whose file is not where, or not the one that, it was: a copy of the folder. */
export function settleIdentity(store: Store): void {
  const place = placeOf(store.file);
  const known = identity(store.db);
  if (known.place === place) return;
  atomically(store, () => {
    if (known.place !== '') renewIdentity(store);
    store.db.prepare('UPDATE this_store SET place = ?').run(place);
  });
}

/**
 * Notes that a store's file, still at `file`, will lie at `at`, where another file lies now: so it does not count as a copied
 * folder.
 */
export function settlePlace({ db, file, at }: Pick<Store, 'db' | 'file'> & { at: string }): void {
  db.prepare('UPDATE this_store SET place = ?').run(placeOf(at, file));
}

/** This computer, this folder and this file, as a digest: nothing of it can be read back. */
function placeOf(file: string, now = file): string {
  const { ino } = statSync(now, { bigint: true });
  const words = [hostname(), realpathSync(file), String(ino)];
  return createHash('sha256').update(words.join('\0')).digest('hex').slice(0, 32);
}

function identity(db: Store['db']): Identity {
  const row = prepared<[], Identity>(db, 'SELECT id, counter, place FROM this_store').get();
  if (!row) throw new Error('the store has no identity');
  return row;
}
