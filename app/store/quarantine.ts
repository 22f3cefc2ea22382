import type { z } from 'zod';
import type { QuarantinedRow } from '../contract/records.ts';
import { prepared } from './prepared.ts';
import { readJson } from './read-json.ts';
import { now, type Store } from './store.ts';

/** Where a row lies. */
export interface RowAddress {
  readonly table:
    | 'athletes'
    | 'boats'
    | 'paddles'
    | 'fits'
    | 'revisions'
    | 'revision_words'
    | 'drafts'
    | 'trials'
    | 'measurings';
  readonly rowId: string;
}

/**
 * Reads a stored JSON text by its schema. A text that does not parse is listed in the quarantine with a copy of what
 * it held, and null is given back: the row stays where it is and the list goes on without it.
 */
export function readStored<S extends z.ZodType>(
  store: Store,
  place: RowAddress,
  stored: { readonly text: string; readonly schema: S },
): z.output<S> | null {
  // No schema of the store accepts the undefined of a text that is not JSON.
  const parsed = stored.schema.safeParse(readJson(stored.text));
  if (parsed.success) return parsed.data;
  const [first] = parsed.error.issues;
  quarantineRow(store, place, {
    problem: first ? `${first.path.join('.') || 'the row'}: ${first.message}` : 'the row does not parse',
    raw: stored.text,
  });
  return null;
}

/** Lists a row as unreadable, unless it is listed already or the store cannot be written just now: a worker may have it. */
function quarantineRow(store: Store, place: RowAddress, found: { problem: string; raw: string }): void {
  if (store.safeguard.isLent()) return;
  try {
    store.db
      .prepare(
        `INSERT INTO quarantine (table_name, row_id, problem, raw, found_at) VALUES (?, ?, ?, ?, ?)
         ON CONFLICT DO NOTHING`,
      )
      .run(place.table, place.rowId, found.problem, found.raw, now(store));
  } catch {
    // A full disk or a read-only folder must not turn a readable list into a failure; the next read lists the row.
  }
}

/** Takes a row off the list, once it has been written afresh. */
export function putBack(store: Store, place: RowAddress): void {
  const remove = prepared(store.db, 'DELETE FROM quarantine WHERE table_name = ? AND row_id = ?');
  remove.run(place.table, place.rowId);
}

/** Whether a row is on the list. */
export function isQuarantined(store: Store, place: RowAddress): boolean {
  const listed = prepared(store.db, 'SELECT 1 FROM quarantine WHERE table_name = ? AND row_id = ?');
  return listed.get(place.table, place.rowId) !== undefined;
}

/** Every quarantined row, newest first. */
export function listQuarantine(store: Store): QuarantinedRow[] {
  return store.db
    .prepare<[], QuarantinedRow>(
      `SELECT table_name AS "table", row_id AS rowId, problem, found_at AS foundAt
       FROM quarantine ORDER BY found_at DESC, row_id LIMIT 1000`,
    )
    .all();
}
