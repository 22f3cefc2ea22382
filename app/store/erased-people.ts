import { createHash, randomBytes } from 'node:crypto';
import type Database from 'better-sqlite3';
import { z } from 'zod';

/** That somebody was erased: a digest of the identifier with a salt of its own. No name, nothing that can be read back. */
export const erasedPerson = z.strictObject({ salt: z.string().max(64), digest: z.hash('sha256') });
export type ErasedPerson = z.infer<typeof erasedPerson>;

/** Everybody who was erased here or, by what came in, elsewhere. */
export function listErased(db: Database.Database): ErasedPerson[] {
  const has = db.prepare("SELECT 1 FROM sqlite_schema WHERE name = 'erased_people'").get();
  return has
    ? db.prepare<[], ErasedPerson>('SELECT salt, digest FROM erased_people ORDER BY salt, digest').all()
    : [];
}

/** Writes down that somebody was erased. */
export function addErased(db: Database.Database, { salt, digest }: ErasedPerson): void {
  db.prepare('INSERT OR IGNORE INTO erased_people (salt, digest) VALUES (?, ?)').run(salt, digest);
}

/** The mark of a person who is being erased: one that is kept already, or a new one. */
export function erasedMark(erased: readonly ErasedPerson[], id: string): ErasedPerson {
  const known = erased.find((one) => digestOf(one.salt, id) === one.digest);
  if (known) return known;
  const salt = randomBytes(16).toString('hex');
  return { salt, digest: digestOf(salt, id) };
}

/** Whether somebody was erased, by the identifier. */
export function wasErased(erased: readonly ErasedPerson[], id: string): boolean {
  return erased.some(({ salt, digest }) => digestOf(salt, id) === digest);
}

/** Athletes who are here although they were erased: elsewhere, or before an older state came back. */
export function erasedButHere(db: Database.Database): { id: string; name: string }[] {
  const erased = listErased(db);
  if (erased.length === 0) return [];
  const rows = db.prepare<[], { id: string; name: string }>('SELECT id, name FROM athletes').all();
  return rows.filter(({ id }) => wasErased(erased, id));
}

function digestOf(salt: string, id: string): string {
  return createHash('sha256').update(`${salt} ${id.toLowerCase()}`).digest('hex');
}
