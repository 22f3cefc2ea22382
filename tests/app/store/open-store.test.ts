import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { describe, expect, it } from 'vitest';
import { closeStore, openStore, STORE_FILE } from '../../../app/store/open-store.ts';
import { temporaryFolder, temporaryStore } from '../temporary.ts';

describe('opening the store', () => {
  it('writes user work through to the disk before it is acknowledged', () => {
    const { db } = temporaryStore();
    expect(db.pragma('journal_mode', { simple: true })).toBe('wal');
    expect(db.pragma('synchronous', { simple: true })).toBe(2);
    expect(db.pragma('foreign_keys', { simple: true })).toBe(1);
  });

  it('leaves one file behind when closed', () => {
    const folder = temporaryFolder();
    closeStore(temporaryStore(folder));
    const left = readdirSync(folder).filter((name) => name.startsWith(STORE_FILE));
    expect(left).toEqual([STORE_FILE]);
  });

  it('refuses a store that another program has open', () => {
    const folder = temporaryFolder();
    temporaryStore(folder);
    expect(openStore(folder)).toMatchObject({ kind: 'refused', refusal: { code: 'in-use' } });
  });

  it('refuses a store of a newer program and leaves it byte for byte', () => {
    const folder = temporaryFolder();
    const store = temporaryStore(folder);
    store.db.pragma('user_version = 999');
    closeStore(store);
    const before = readFileSync(join(folder, STORE_FILE));
    expect(openStore(folder)).toMatchObject({ kind: 'refused', refusal: { code: 'newer', found: 999 } });
    expect(readFileSync(join(folder, STORE_FILE)).equals(before)).toBe(true);
  });

  it('refuses a database of another program, and a file that is no database', () => {
    const folder = temporaryFolder();
    const other = new Database(join(folder, STORE_FILE));
    other.exec('CREATE TABLE shopping (item TEXT)');
    other.close();
    expect(openStore(folder)).toMatchObject({ kind: 'refused', refusal: { code: 'foreign' } });

    const noise = temporaryFolder();
    writeFileSync(
      join(noise, STORE_FILE),
      'no database at all, but long enough to be taken for one '.repeat(40),
    );
    expect(openStore(noise)).toMatchObject({ kind: 'refused', refusal: { code: 'damaged' } });
  });
});
