import { createReadStream } from 'node:fs';
import { createInterface } from 'node:readline';
import { say } from '../shell/say.ts';
import type { Library } from './address.ts';
import { BACKUP_END } from './backup.ts';
import { LIBRARY_VERSION, migrateLibrary } from './migrate-library.ts';

/** What keeps a backup from being restored. */
export class CannotRestore extends Error {}

/** Rows are written in portions of so many. */
const PORTION = 300;

/** The tables in the order in which rows may be written: what others belong to comes first. */
const TABLES = [
  ...[
    'club',
    'people',
    'groups',
    'group_people',
    'group_athletes',
    'logins',
    'records',
    'fields',
    'revisions',
  ],
  ...['revision_athletes', 'revision_words', 'photographs', 'tombstones', 'tombstones_seen', 'audit'],
];

type Transaction = Parameters<Parameters<Library['begin']>[1]>[0];

/**
 * Restores a backup into an empty database: all of it or nothing. The library goes by a new identifier, so that every laptop
 * compares what it has and sends what came after the backup. Logins that this server does not know are left out: these people are
 * invited again by the same name and role, and have their rights as before. Gives the number of rows.
 */
export async function restoreLibrary(sql: Library, from: string): Promise<number> {
  const [there] = await sql`SELECT FROM pg_namespace WHERE nspname = 'kneelwright'`;
  if (there) throw new CannotRestore(say('library-cli.not-empty'));
  const version = await checkedVersion(from);
  try {
    await migrateLibrary(sql, version);
    const rows = await sql.begin((tx) => writeRows(tx, from));
    await migrateLibrary(sql);
    // One row for each migration is in the file too; it is there already.
    return (rows as number) + version;
  } catch (error) {
    await sql`DROP SCHEMA IF EXISTS kneelwright CASCADE`;
    throw error;
  }
}

type Line = readonly [table: string, row: Record<string, unknown>];

async function* linesOf(path: string): AsyncGenerator<Line> {
  const lines = createInterface({
    input: createReadStream(path, 'utf8'),
    crlfDelay: Number.POSITIVE_INFINITY,
  });
  for await (const line of lines) {
    try {
      yield JSON.parse(line) as Line;
    } catch {
      throw new CannotRestore(say('bundle.damaged'));
    }
  }
}

/** Reads the file to its end: of which version it is. */
async function checkedVersion(path: string): Promise<number> {
  let version = 0;
  let rows = 0;
  let end: unknown = null;
  for await (const [table, row] of linesOf(path)) {
    if (table === BACKUP_END) end = row.rows;
    else rows += 1;
    if (table === 'migrations') version = Math.max(version, Number(row.version));
  }
  if (end !== rows || version === 0) throw new CannotRestore(say('bundle.damaged'));
  if (version > LIBRARY_VERSION) throw new CannotRestore(say('bundle.newer'));
  return version;
}

async function writeRows(tx: Transaction, from: string): Promise<number> {
  let written = 0;
  for (const table of TABLES) {
    const [known] = await tx`SELECT to_regclass(${`kneelwright.${table}`}) AS there`;
    if (!known?.there) continue;
    await tx.unsafe(`ALTER TABLE kneelwright.${table} DISABLE TRIGGER USER`);
    let portion: unknown[] = [];
    for await (const [name, row] of linesOf(from)) {
      if (name !== table) continue;
      portion.push(row);
      if (portion.length < PORTION) continue;
      written += await writePortion(tx, table, portion);
      portion = [];
    }
    written += await writePortion(tx, table, portion);
    await tx.unsafe(`ALTER TABLE kneelwright.${table} ENABLE TRIGGER USER`);
  }
  await tx`UPDATE kneelwright.club SET id = gen_random_uuid()`;
  await tx`SELECT setval('kneelwright.change_number', greatest(1, (SELECT max(n) FROM kneelwright.records), (SELECT max(n) FROM kneelwright.revisions)))`;
  await tx`SELECT setval(pg_get_serial_sequence('kneelwright.audit', 'n'), greatest(1, (SELECT max(n) FROM kneelwright.audit)))`;
  return written;
}

async function writePortion(tx: Transaction, table: string, rows: readonly unknown[]): Promise<number> {
  if (rows.length === 0) return 0;
  // What the server computes itself is not written.
  const columns = await tx<{ name: string }[]>`
    SELECT quote_ident(attname) AS name FROM pg_attribute
    WHERE attrelid = ${`kneelwright.${table}`}::regclass AND attnum > 0 AND NOT attisdropped AND attgenerated = ''`;
  const names = columns.map(({ name }) => name).join(', ');
  const added = await tx.unsafe(
    `INSERT INTO kneelwright.${table} (${names}) OVERRIDING SYSTEM VALUE
     SELECT ${names} FROM jsonb_populate_recordset(null::kneelwright.${table}, $1::text::jsonb) ${ONLY[table] ?? ''}`,
    [JSON.stringify(rows)],
  );
  return added.count;
}

/** Which rows of a table are restored, where not all are. */
const ONLY: Readonly<Record<string, string>> = {
  logins: 'WHERE login IN (SELECT rolname FROM pg_roles)',
  tombstones_seen: 'WHERE login IN (SELECT login FROM kneelwright.logins)',
};
