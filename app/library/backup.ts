import { once } from 'node:events';
import { createWriteStream, renameSync } from 'node:fs';
import { makePrivateFile } from '../shell/private-files.ts';
import type { Library } from './address.ts';

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
  makePrivateFile(beside);
  const file = createWriteStream(beside);
  let rows = 0;
  await sql.begin('isolation level repeatable read', async (tx) => {
    const tables = await tx<{ name: string }[]>`
      SELECT tablename AS name FROM pg_tables WHERE schemaname = 'kneelwright' AND tablename <> 'presence' ORDER BY 1`;
    for (const { name } of tables) {
      const lines = tx<{ line: string }[]>`
        SELECT json_build_array(${name}::text, to_jsonb(t))::text AS line FROM ${tx(`kneelwright.${name}`)} AS t`;
      for await (const portion of lines.cursor(PORTION)) {
        for (const { line } of portion) if (!file.write(`${line}\n`)) await once(file, 'drain');
        rows += portion.length;
      }
    }
    await tx`INSERT INTO kneelwright.audit (what, athletes) SELECT 'backup', coalesce(array_agg(id), '{}')
      FROM kneelwright.records WHERE kind = 'athlete'`;
  });
  file.write(`${JSON.stringify([BACKUP_END, { rows }])}\n`);
  file.end();
  await once(file, 'close');
  renameSync(beside, to);
  return rows;
}
