import { renameSync, rmSync } from 'node:fs';
import { writePrivateFile } from '../background/write-file.ts';
import type { Library } from './address.ts';
import type { Asking } from './server-record.ts';

/** Stands in the last line: a file without it is cut off. */
export const BACKUP_END = 'end';

/** Rows are read from the server in portions of so many. */
const PORTION = 500;

/**
 * Writes every row of the library into one file, as it was at one instant: a line of JSON each, the table's name first. For a
 * whole server `pg_dump` does more; this needs nothing but the program. Gives the number of rows.
 */
export async function backUpLibrary(sql: Library, to: string): Promise<number> {
  const beside = `${to}.part`;
  let rows = 0;
  const counted = async function* (lines: AsyncIterable<string>) {
    for await (const line of lines) {
      rows += 1;
      yield Buffer.from(`${line}\n`);
    }
    yield Buffer.from(`${JSON.stringify([BACKUP_END, { rows }])}\n`);
  };
  try {
    await sql.begin('isolation level repeatable read', async (tx) => {
      await writePrivateFile(beside, counted(rowLines(tx)));
      await tx`INSERT INTO kneelwright.audit (what, athletes) SELECT 'backup', coalesce(array_agg(id), '{}')
        FROM kneelwright.records WHERE kind = 'athlete'`;
    });
    renameSync(beside, to);
  } finally {
    rmSync(beside, { force: true });
  }
  return rows;
}

/** Every row of every table, each as one line of JSON. */
async function* rowLines(tx: Asking): AsyncGenerator<string> {
  const tables = await tx<{ name: string }[]>`
    SELECT tablename AS name FROM pg_tables WHERE schemaname = 'kneelwright' AND tablename <> 'presence' ORDER BY 1`;
  for (const { name } of tables) {
    const lines = tx<{ line: string }[]>`
      SELECT json_build_array(${name}::text, to_jsonb(t))::text AS line FROM ${tx(`kneelwright.${name}`)} AS t`;
    for await (const portion of lines.cursor(PORTION)) for (const { line } of portion) yield line;
  }
}
