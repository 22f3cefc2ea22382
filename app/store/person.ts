import type Database from 'better-sqlite3';
import { z } from 'zod';
import { readJson } from './read-json.ts';

/** Whom to erase, and every word by which the person may be known in free text. */
export const personSchema = z.strictObject({
  id: z.string(),
  name: z.string(),
  /** Names that the person had before, or is called by in copies of the store. */
  formerNames: z.array(z.string()).default([]),
  /** Who gave a consent for the person. */
  guardians: z.array(z.string()).default([]),
});
export type Person = z.infer<typeof personSchema>;

/** Shorter names than this are left in free text: they are too often words of their own. */
const SHORTEST_NAME = 3;

/** Every full name of a person and of the guardians, the longest first. */
export function fullNames({ name, formerNames, guardians }: Person): string[] {
  return [...new Set([name, ...formerNames, ...guardians])]
    .filter((one) => one.trim().length >= SHORTEST_NAME)
    .sort((a, b) => b.length - a.length);
}

/** Parts of a person's own names that are long enough to be told from a word. */
export function nameParts({ name, formerNames }: Person): string[] {
  const parts = [name, ...formerNames].flatMap((one) => one.split(/\s+/));
  return [...new Set(parts)].filter((part) => part.length >= SHORTEST_NAME);
}

/** A person with every name and guardian that a database knows of, besides those that are known already. */
export function knownIn(db: Database.Database, person: Person): Person {
  const names = new Set([...person.formerNames]);
  const guardians = new Set(person.guardians);
  for (const entry of entriesOf(db, person.id)) {
    if (typeof entry.name === 'string' && entry.name !== person.name) names.add(entry.name);
    for (const given of Object.values(entry.consent ?? {})) {
      if (typeof given?.by === 'string') guardians.add(given.by);
    }
  }
  return { ...person, formerNames: [...names], guardians: [...guardians] };
}

interface LooseEntry {
  readonly name?: unknown;
  readonly consent?: Record<string, { by?: unknown } | null> | null;
}

/** What stands of a person in the roster, and in every fit's copy. */
function entriesOf(db: Database.Database, id: string): LooseEntry[] {
  const queries = [
    'SELECT athlete AS text FROM athletes WHERE id = ?',
    ...['revisions', 'drafts'].map(
      (
        table,
      ) => `SELECT DISTINCT seat.value -> '$.athlete' AS text FROM ${table}, json_each(fit, '$.seats') AS seat
        WHERE json_valid(fit) AND seat.value ->> '$.athlete.id' = ?`,
    ),
  ];
  return queries.flatMap((query) =>
    db
      .prepare<[string], string>(query)
      .pluck()
      .all(id)
      .flatMap((text) => (readJson(text) as LooseEntry | null | undefined) ?? []),
  );
}
