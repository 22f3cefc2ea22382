import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { STORE_VERSION } from '../../../app/store/migrate.ts';
import { temporaryStore } from '../temporary.ts';

describe('the schema', () => {
  it('is the one committed beside this test: a change to it is a new migration, never an edit of an old one', () => {
    const rows = temporaryStore()
      .db.prepare<[], string>('SELECT sql FROM sqlite_schema WHERE sql IS NOT NULL ORDER BY type, name')
      .pluck()
      .all() as unknown as string[];
    const text = `-- store version ${STORE_VERSION}\n\n${rows.join(';\n\n')};\n`;
    expect(text).toBe(readFileSync(join(import.meta.dirname, 'schema-snapshot.sql'), 'utf8'));
  });

  it('is strict in every table', () => {
    const loose = temporaryStore()
      .db.prepare<[], string>("SELECT name FROM pragma_table_list WHERE schema = 'main' AND strict = 0")
      .pluck()
      .all();
    expect(loose).toEqual(['sqlite_schema']);
  });
});
