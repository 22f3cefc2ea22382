import { atomically, type Store } from './store.ts';
import { tracked } from './track.ts';

/** An entry of the roster with its name. */
export interface NamedEntry {
  readonly id: string;
  readonly name: string;
}

/**
 * Entries that are listed: those that are joined to another one that is here are shown with it. Two that two computers
 * joined to each other are shown under the one with the lower identifier.
 */
export const LISTED_ENTRIES = `(joined_into IS NULL OR NOT EXISTS (
  SELECT 1 FROM athletes AS other WHERE other.id = athletes.joined_into
    AND NOT (other.joined_into IS athletes.id AND athletes.id < other.id)))`;

/** Shows one entry of a person with another one of the same. Nothing of either is changed, so they can be taken apart. */
export function joinEntries(
  store: Store,
  { id, into }: { id: string; into: string },
): 'joined' | 'none' | 'circle' {
  return atomically(store, () => {
    const exists = store.db.prepare('SELECT 1 FROM athletes WHERE id = ?');
    if (!exists.get(id) || !exists.get(into)) return 'none';
    if (entryIdsOf(store, id).includes(into)) return 'circle';
    setJoined(store, id, into);
    return 'joined';
  });
}

/** Makes a joined entry one of its own again; false if there is none. */
export function takeApart(store: Store, id: string): boolean {
  return setJoined(store, id, null);
}

function setJoined(store: Store, id: string, into: string | null): boolean {
  return tracked(
    store,
    { kind: 'athlete', id },
    () => store.db.prepare('UPDATE athletes SET joined_into = ? WHERE id = ?').run(into, id).changes > 0,
  );
}

/** An entry's identifier, and those of every entry that is joined to it, directly or through another. */
export function entryIdsOf({ db }: Pick<Store, 'db'>, id: string): string[] {
  return db
    .prepare<[string], string>(
      `WITH RECURSIVE entry (id) AS (
         VALUES (?) UNION SELECT athletes.id FROM athletes JOIN entry ON joined_into = entry.id
       ) SELECT id FROM entry`,
    )
    .pluck()
    .all(id);
}

/** What an entry is joined to, and which are joined to it. */
export function entriesOfPerson(
  store: Store,
  id: string,
): { joinedInto: NamedEntry | null; joined: NamedEntry[] } {
  const into = store.db
    .prepare<[string], NamedEntry>(
      'SELECT id, name FROM athletes WHERE id = (SELECT joined_into FROM athletes WHERE id = ?)',
    )
    .get(id);
  const one = store.db.prepare<[string], NamedEntry>('SELECT id, name FROM athletes WHERE id = ?');
  const joined = entryIdsOf(store, id).flatMap((entry) => (entry === id ? [] : (one.get(entry) ?? [])));
  return { joinedInto: into ?? null, joined: joined.filter((entry) => entry.id !== into?.id) };
}
