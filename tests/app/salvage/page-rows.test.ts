import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { openPages, PAGE_SIZES } from '../../../app/salvage/page-file.ts';
import { rowsInPages } from '../../../app/salvage/page-rows.ts';
import type { PageValue } from '../../../app/salvage/record.ts';
import { cases } from '../../cases.ts';
import { temporaryFolder } from '../temporary.ts';

/** Values of every kind and length that SQLite keeps: short ones, and some that fill several pages. */
const value = fc.oneof(
  fc.constant(null),
  fc.integer(),
  fc.bigInt({ min: -(2n ** 63n), max: 2n ** 63n - 1n }),
  fc.double({ noNaN: true }),
  fc.string({ unit: 'grapheme', maxLength: 40 }),
  fc.integer({ min: 400, max: 9000 }).map((length) => 'kneel'.repeat(length / 5)),
  fc.uint8Array({ maxLength: 60 }),
  fc.integer({ min: 400, max: 9000 }).map((length) => new Uint8Array(length).fill(length)),
);
const rows = fc.array(fc.tuple(value, value, value), { minLength: 1, maxLength: 40 });

interface Made {
  readonly path: string;
  /** What SQLite itself reads. */
  readonly table: unknown[];
  readonly index: unknown[];
}

/** A file that SQLite wrote, with a table, and one that is kept as an index; its first page is noise afterwards. */
function made(pageSize: number, values: readonly (readonly unknown[])[], log: 'log' | 'no log'): Made {
  const path = join(temporaryFolder(), 'any.db');
  const db = new Database(path);
  db.defaultSafeIntegers(true);
  db.pragma(`page_size = ${pageSize}`);
  if (log === 'log') db.pragma('journal_mode = WAL');
  // As the store does: what is freed is zeroed.
  db.pragma('secure_delete = ON');
  db.exec('CREATE TABLE t (a, b, c); CREATE TABLE i (n INTEGER, a, b, PRIMARY KEY (n)) WITHOUT ROWID');
  const add = [db.prepare('INSERT INTO t VALUES (?, ?, ?)'), db.prepare('INSERT INTO i VALUES (?, ?, ?)')];
  for (const [i, [a, b, c]] of values.entries()) {
    add[0]!.run(a, b, c);
    add[1]!.run(i, a, b);
  }
  // An edit leaves an older state of its page in the file, and the newer one in the log.
  db.exec("UPDATE t SET c = 'edited' WHERE rowid % 3 = 0");
  const read = (sql: string) => db.prepare(sql).raw().all().map(comparable);
  const found = { table: read('SELECT * FROM t'), index: read('SELECT * FROM i') };
  const files = ['', '-wal'].map(
    (end) => [end, log === 'log' || end === '' ? readFileSync(path + end) : null] as const,
  );
  db.close();
  const copy = `${path}.copy`;
  for (const [end, bytes] of files) if (bytes) writeFileSync(copy + end, bytes);
  const bytes = readFileSync(copy);
  if (log === 'no log') bytes.fill(0xa7, 0, pageSize);
  else bytes.fill(0xa7, 0, Math.min(100, bytes.length));
  writeFileSync(copy, bytes);
  return { path: copy, ...found };
}

/** One text for each row, so that two lists of rows compare whatever their order. */
function comparable(values: unknown): string {
  return (values as PageValue[])
    .map((one) => {
      if (one instanceof Uint8Array) return `blob ${Buffer.from(one).toString('hex')}`;
      if (typeof one === 'string') return `text ${one}`;
      // SQLite keeps a whole number in the column of a floating one as a whole number, and gives it back as the other.
      return one === null ? 'null' : `number ${Number(one)}`;
    })
    .join(' | ');
}

function foundIn(path: string, pageSize: number) {
  const pages = openPages(path, pageSize);
  const found = rowsInPages(pages);
  const all = [...found.rows];
  const of = (from: string) => all.filter((row) => row.from === from).map(({ values }) => comparable(values));
  const result = {
    table: of('table').filter((row) => !/^text (table|index) /.test(row)),
    index: of('index'),
    unreadableRows: found.unreadableRows(),
    unreadablePages: found.unreadablePages(),
  };
  pages.close();
  return result;
}

describe('the rows in a file’s pages, without its header', () => {
  it.each(PAGE_SIZES)('are those that SQLite reads, with pages of %i bytes', (pageSize) => {
    fc.assert(
      fc.property(rows, fc.constantFrom('log', 'no log'), (values, log) => {
        const { path, table, index } = made(pageSize, values, log);
        const found = foundIn(path, pageSize);
        expect(found.table.sort()).toEqual(table.sort());
        expect(found.index.sort()).toEqual(index.sort());
        expect(found.unreadableRows).toBe(0);
        expect(found.unreadablePages).toBe(0);
      }),
      { numRuns: cases(2, 60), seed: 41 },
    );
  });

  it('are given without those that a damaged page takes with it, which are counted', () => {
    const values = Array.from({ length: 200 }, (_, i) => [
      i,
      `row ${i} `.repeat(i % 50 === 0 ? 2000 : 4),
      null,
    ]);
    const { path, table } = made(4096, values, 'no log');
    const bytes = readFileSync(path);
    fc.assert(
      fc.property(fc.integer({ min: 1, max: bytes.length / 4096 - 1 }), (page) => {
        const damaged = Buffer.from(bytes);
        damaged.fill(0xa7, page * 4096, (page + 1) * 4096);
        writeFileSync(path, damaged);
        const found = foundIn(path, 4096);
        const known = new Set(table);
        expect(found.table.every((row) => known.has(row))).toBe(true);
        expect(found.unreadableRows + found.unreadablePages).toBeGreaterThan(0);
      }),
      { numRuns: cases(20, 200), seed: 42 },
    );
  });

  it('never throws and never ends nowhere, whatever bytes lie there', () => {
    const path = join(temporaryFolder(), 'noise.db');
    fc.assert(
      fc.property(
        fc.uint8Array({ minLength: 512, maxLength: 4096 }),
        fc.constantFrom(2, 5, 10, 13),
        (bytes, kind) => {
          for (let at = 0; at < bytes.length; at += 512) bytes[at] = kind;
          writeFileSync(path, bytes);
          expect(foundIn(path, 512).unreadableRows).toBeGreaterThanOrEqual(0);
        },
      ),
      { numRuns: cases(50, 3000), seed: 43 },
    );
  });
});
