import { mkdtempSync, rmSync } from 'node:fs';
import { dirname, join } from 'node:path';
import type Database from 'better-sqlite3';
import { openPages, PAGE_SIZES, pageSizeOfLog } from '../salvage/page-file.ts';
import { rowsInPages } from '../salvage/page-rows.ts';
import type { PageValue } from '../salvage/record.ts';
import { isHousekeeping, shapeOf, type TableShape } from '../salvage/table-shapes.ts';
import { closeStore, openStore, STORE_FILE } from './open-store.ts';

/** What was found in a file's pages one by one. */
export interface PageSalvage {
  readonly rows: number;
  /** Rows that were begun and could not be read, or do not fit their table. */
  readonly unreadableRows: number;
  /** Pages that are neither empty nor part of anything that was read. */
  readonly unreadablePages: number;
}

/**
 * Puts every row that still stands in a damaged file's pages into a store of its own and hands that to `use`; it goes after
 * that. Needs neither the file's header nor its list of tables. Null if there is nothing to be found.
 */
export function salvagePages<T>(
  path: string,
  clock: () => number,
  use: (file: string, found: PageSalvage) => T,
): T | null {
  const workplace = mkdtempSync(join(dirname(path), 'restoring-'));
  try {
    const opening = openStore(workplace, clock);
    if (opening.kind === 'refused') return null;
    const { store } = opening;
    let found: PageSalvage | null = null;
    try {
      store.db.pragma('foreign_keys = OFF');
      for (const pageSize of pageSizes(path)) {
        found = store.db.transaction(() => salvageWith(store.db, path, pageSize))();
        if (found.rows > 0) break;
      }
    } finally {
      closeStore(store);
    }
    return found && found.rows > 0 ? use(join(workplace, STORE_FILE), found) : null;
  } finally {
    rmSync(workplace, { recursive: true, force: true });
  }
}

/** The log tells how large pages are; without it each size is tried, the usual one first. */
function pageSizes(path: string): readonly number[] {
  const ofLog = pageSizeOfLog(path);
  return ofLog === null ? PAGE_SIZES : [ofLog];
}

function salvageWith(db: Database.Database, path: string, pageSize: number): PageSalvage {
  const pages = openPages(path, pageSize);
  try {
    const found = rowsInPages(pages);
    let rows = 0;
    let unfit = 0;
    for (const { from, values } of found.rows) {
      const shape = shapeOf(from, values);
      if (shape && put(db, shape, values)) rows += 1;
      else if (shape || (from === 'table' && !isHousekeeping(values))) unfit += 1;
    }
    const unreadableRows = found.unreadableRows() + unfit;
    return { rows, unreadableRows, unreadablePages: found.unreadablePages() };
  } finally {
    pages.close();
  }
}

/** Of two rows of one key the newer one stays. False where the row does not fit its table. */
function put(
  db: Database.Database,
  { name, columns, newest }: TableShape,
  values: readonly PageValue[],
): boolean {
  const given = columns.slice(0, values.length).map((column) => column.name);
  const places = given.map(() => '?').join(', ');
  const newer = newest
    ? `ON CONFLICT DO UPDATE SET ${given.map((one) => `${one} = excluded.${one}`).join(', ')}
       WHERE excluded.${newest} > ${newest}`
    : 'ON CONFLICT DO NOTHING';
  try {
    db.prepare(`INSERT INTO ${name} (${given.join(', ')}) VALUES (${places}) ${newer}`).run(...values);
    return true;
  } catch {
    return false;
  }
}
