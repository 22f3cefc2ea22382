import { type Library, type LibraryAddress, openLibrary } from '../../app/library/address.ts';
import type { PersonRole } from '../../app/library/club.ts';
import type { Store } from '../../app/store/store.ts';

/** Whose laptop, and what may be on it. */
interface Reader {
  readonly store: Store;
  readonly address: LibraryAddress;
  readonly role: PersonRole;
  readonly seesAll: boolean;
}

/**
 * Counts what somebody can read without the right to: athletes whom they do not look after, in the library by their own login
 * and in their own store, and people who were erased. Whom each may see is found here anew, from the groups.
 */
export async function wrongReaders(club: { laptops: readonly Reader[]; owner: Library }): Promise<number> {
  let wrong = 0;
  for (const reader of club.laptops) {
    if (reader.seesAll) continue;
    const forbidden = await forbiddenTo(club.owner, reader);
    wrong += await readByLogin(reader, forbidden);
    wrong += forbidden.filter((id) => standsInStore(reader.store, id)).length;
  }
  return wrong;
}

async function forbiddenTo(owner: Library, { role, address }: Reader): Promise<string[]> {
  const rows = await owner<{ id: string; mine: boolean }[]>`
    SELECT id, EXISTS (
      SELECT FROM kneelwright.group_athletes NATURAL JOIN kneelwright.group_people NATURAL JOIN kneelwright.logins
      WHERE login = ${address.login} AND athlete_id = records.id
    ) OR made_by = (SELECT person_id FROM kneelwright.logins WHERE login = ${address.login}) AS mine
    FROM kneelwright.records WHERE kind = 'athlete'`;
  return rows.filter(({ mine }) => role === 'boatbuilder' || !mine).map(({ id }) => id);
}

async function readByLogin({ address, role }: Reader, forbidden: readonly string[]): Promise<number> {
  const sql = openLibrary(address);
  try {
    const tables = ['records', 'fields', 'revision_athletes', 'revision_words', 'revisions', 'photographs'];
    let wrong = 0;
    for (const table of tables) {
      const rows = await sql.unsafe(
        `SELECT count(*)::int AS rows FROM ${table} AS t, unnest($1::uuid[]) AS person WHERE strpos(t::text, person::text) > 0
           AND ($2 <> 'records' OR t::text LIKE '(athlete,%')`,
        [[...forbidden], table] as never,
      );
      wrong += rows[0]!.rows;
    }
    if (role === 'boatbuilder') {
      const words =
        await sql`SELECT FROM fields WHERE kind IN ('athlete', 'trial') OR path = 'notes' OR path LIKE '%/athlete'`;
      wrong += words.count;
    }
    return wrong;
  } finally {
    await sql.end({ timeout: 0 });
  }
}

/** Whether an identifier stands in any row of a store's tables of people and fits. */
function standsInStore({ db }: Store, id: string): boolean {
  const places = [
    'SELECT 1 FROM athletes WHERE id = ?',
    'SELECT 1 FROM measurings WHERE athlete_id = ?',
    'SELECT 1 FROM revisions WHERE instr(fit, ?)',
    'SELECT 1 FROM drafts WHERE instr(fit, ?)',
    'SELECT 1 FROM trials WHERE athlete_id = ?',
    'SELECT 1 FROM field_versions WHERE instr(others, ?)',
  ];
  return places.some((sql) => db.prepare(sql).get(id) !== undefined);
}
