import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Library } from './address.ts';

const FOLDER = join(import.meta.dirname, 'migrations');

/** Names of all migrations, in order: each stands for one version. */
function migrationFiles(): string[] {
  return readdirSync(FOLDER)
    .filter((name) => /^\d{4}-.*\.sql$/.test(name))
    .sort();
}

/** The version of the library that this program works with. */
export const LIBRARY_VERSION = 8;

/** The first version that members could use. */
const FIRST_WITH_MEMBERS = 4;

/**
 * Brings a library up to this program's version, in one transaction: all of it or nothing. Gives from which version to which.
 * Needs the rights of the database's owner.
 */
export function migrateLibrary(sql: Library, upTo = LIBRARY_VERSION): Promise<{ from: number; to: number }> {
  return sql.begin(async (tx) => {
    await tx`SELECT pg_advisory_xact_lock(hashtext('kneelwright migrations'))`;
    await tx`CREATE SCHEMA IF NOT EXISTS kneelwright`;
    await tx.unsafe('SET LOCAL search_path = kneelwright');
    await tx`CREATE TABLE IF NOT EXISTS migrations (version int PRIMARY KEY, name text NOT NULL, at timestamptz DEFAULT now())`;
    const [known] = await tx<
      { version: number }[]
    >`SELECT coalesce(max(version), 0) AS version FROM migrations`;
    const from = known!.version;
    for (const [i, name] of migrationFiles().slice(0, upTo).entries()) {
      if (i < from) continue;
      await tx.unsafe(readFileSync(join(FOLDER, name), 'utf8'));
      await tx`INSERT INTO migrations (version, name) VALUES (${i + 1}, ${name})`;
    }
    await makeMemberRole(tx);
    if (upTo >= FIRST_WITH_MEMBERS) await tx.unsafe(readFileSync(join(FOLDER, 'grants.sql'), 'utf8'));
    return { from, to: Math.max(from, upTo) };
  }) as Promise<{ from: number; to: number }>;
}

/** The database role that every login of a member is in. Roles belong to the server: another club's library may have made it. */
async function makeMemberRole(tx: Library | Parameters<Parameters<Library['begin']>[1]>[0]): Promise<void> {
  const [there] = await tx`SELECT FROM pg_roles WHERE rolname = 'kneelwright_member'`;
  if (!there) await tx.unsafe('CREATE ROLE kneelwright_member NOLOGIN');
}
