import { randomBytes } from 'node:crypto';
import type { Library, LibraryAddress } from './address.ts';
import { codeOf } from './invitation.ts';
import { migrateLibrary } from './migrate-library.ts';

export const PERSON_ROLES = ['head-coach', 'coach', 'boatbuilder', 'viewer'] as const;
export type PersonRole = (typeof PERSON_ROLES)[number];

/** How long an invitation holds. */
const HOLDS_DAYS = 14;

/** Makes a library in an empty database, or brings one that is there up to date. */
export async function initLibrary(sql: Library, club: string): Promise<{ from: number; to: number }> {
  const done = await migrateLibrary(sql);
  await sql`INSERT INTO kneelwright.club (name) VALUES (${club}) ON CONFLICT DO NOTHING`;
  await sql`INSERT INTO kneelwright.groups (name, everyone) VALUES ('Everyone', true) ON CONFLICT DO NOTHING`;
  return done;
}

/**
 * Invites a person, or another computer of a person who is known by that name and role. Gives the code, which serves once. The
 * address is that of the owner, whose rights this needs; what the code carries is a login of its own.
 */
export async function invite(
  sql: Library,
  owner: LibraryAddress,
  guest: { name: string; role: PersonRole; groups?: readonly string[] },
): Promise<{ code: string; address: LibraryAddress }> {
  const login = `kneelwright_${randomBytes(6).toString('hex')}`;
  const password = randomBytes(18).toString('base64url');
  await sql.begin(async (tx) => {
    const until = new Date(Date.now() + HOLDS_DAYS * 86_400_000).toISOString();
    await tx.unsafe(
      `CREATE ROLE ${login} LOGIN PASSWORD '${password}' VALID UNTIL '${until}' IN ROLE kneelwright_member`,
    );
    const [known] = await tx<{ id: string }[]>`
      SELECT id FROM kneelwright.people WHERE name = ${guest.name} AND role = ${guest.role}`;
    const [person] = known
      ? [known]
      : await tx<{ id: string }[]>`
          INSERT INTO kneelwright.people (name, role) VALUES (${guest.name}, ${guest.role}) RETURNING id`;
    await tx`INSERT INTO kneelwright.logins (login, person_id) VALUES (${login}, ${person!.id})`;
    for (const name of guest.groups ?? []) {
      await tx`INSERT INTO kneelwright.groups (name) VALUES (${name}) ON CONFLICT DO NOTHING`;
      await tx`INSERT INTO kneelwright.group_people (group_id, person_id)
        SELECT id, ${person!.id} FROM kneelwright.groups WHERE name = ${name} ON CONFLICT DO NOTHING`;
    }
  });
  const address = { ...owner, login, password };
  return { code: codeOf(address), address };
}

/** Puts athletes into a group. Its coaches fetch everything about them when they next call. */
export async function putInGroup(sql: Library, group: string, athleteIds: readonly string[]): Promise<void> {
  await sql.begin(async (tx) => {
    await tx`SELECT pg_advisory_xact_lock(hashtext('kneelwright changes'))`;
    await tx`INSERT INTO kneelwright.groups (name) VALUES (${group}) ON CONFLICT DO NOTHING`;
    await tx`INSERT INTO kneelwright.group_athletes (group_id, athlete_id)
      SELECT groups.id, athlete FROM kneelwright.groups, unnest(${[...athleteIds]}::uuid[]) AS athlete
      WHERE name = ${group} ON CONFLICT DO NOTHING`;
    await tx`NOTIFY kneelwright, 'changed'`;
  });
}

/**
 * Takes a person's rights back, on every computer and at once: a connection that is open reads nothing any more. What the person made stays. Gives
 * how many logins that were; 0 if nobody is called so.
 */
export function revokePerson(sql: Library, name: string): Promise<number> {
  return sql.begin(async (tx) => {
    const logins = await tx<{ login: string }[]>`
      SELECT login FROM kneelwright.logins JOIN kneelwright.people ON people.id = person_id WHERE people.name = ${name}`;
    for (const { login } of logins) {
      await tx`DELETE FROM kneelwright.presence WHERE login = ${login}`;
      await tx`DELETE FROM kneelwright.logins WHERE login = ${login}`;
      await tx.unsafe(`DROP ROLE IF EXISTS ${login}`);
    }
    await tx`DELETE FROM kneelwright.group_people WHERE person_id IN (SELECT id FROM kneelwright.people WHERE name = ${name})`;
    return logins.length;
  }) as Promise<number>;
}

/** The state of a library, for the club's volunteer. */
export interface LibraryStatus {
  readonly club: string;
  readonly version: number;
  readonly records: Record<string, number>;
  readonly revisions: number;
  readonly laptops: readonly {
    person: string;
    role: string;
    lastContact: Date | null;
    accepted: boolean;
  }[];
  /** Laptops that have not called since somebody was erased: they may still hold that person. */
  readonly notCalledSince: readonly { person: string; lastContact: Date | null; tombstones: number }[];
}

export async function statusOf(sql: Library): Promise<LibraryStatus> {
  const [club] = await sql<{ name: string; version: number; revisions: number }[]>`
    SELECT name, (SELECT max(version) FROM kneelwright.migrations) AS version,
      (SELECT count(*)::int FROM kneelwright.revisions) AS revisions FROM kneelwright.club`;
  const kinds = await sql<{ kind: string; count: number }[]>`
    SELECT kind, count(*)::int FROM kneelwright.records GROUP BY kind ORDER BY kind`;
  const laptops = await sql<LibraryStatus['laptops'][number][]>`
    SELECT people.name AS person, role::text, last_contact AS "lastContact", accepted_at IS NOT NULL AS accepted
    FROM kneelwright.logins JOIN kneelwright.people ON people.id = person_id ORDER BY people.name, invited_at`;
  const notCalledSince = await sql<LibraryStatus['notCalledSince'][number][]>`
    SELECT person, last_contact AS "lastContact", tombstones FROM kneelwright.not_called_since ORDER BY person`;
  return {
    club: club!.name,
    version: club!.version,
    revisions: club!.revisions,
    records: Object.fromEntries(kinds.map(({ kind, count }) => [kind, count])),
    laptops: [...laptops],
    notCalledSince: [...notCalledSince],
  };
}
