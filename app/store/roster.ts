import { randomUUID } from 'node:crypto';
import type { z } from 'zod';
import { athleteSchema } from '../../core/document/athlete-schema.ts';
import { boatSchema } from '../../core/document/boat-schema.ts';
import { stockPaddleSchema } from '../../core/document/stock-paddle-schema.ts';
import type { Listing } from '../contract/contract.ts';
import type { AthleteRecord, BoatRecord, PaddleRecord } from '../contract/records.ts';
import { documentWords, type ListedDocument } from './document-words.ts';
import { LISTED_ENTRIES } from './join-people.ts';
import { recordBody } from './measurings.ts';
import { onTop } from './on-top.ts';
import { putBack, readStored } from './quarantine.ts';
import { EVERY_ROW, searchPattern } from './search-text.ts';
import { atomically, now, type Store } from './store.ts';
import { tracked } from './track.ts';

/** One of the lists that fits are made from. All tables have the same shape; only the document differs. */
interface Roster<D extends { id?: string; name: string }, R> {
  list(store: Store, listing: Listing): R[];
  /** Null when there is no such row, or it is quarantined. */
  get(store: Store, id: string): R | null;
  /**
   * Writes a new row, or the row with the document's own id. `opened` is the document as the person had it before the change:
   * what others have changed since stays. Where both changed one field, the document's value stands and a person decides.
   */
  save(store: Store, document: D, opened?: D): R;
  setArchived(store: Store, id: string, archived: boolean): R | null;
}

interface Row {
  readonly id: string;
  readonly document: string;
  readonly changedAt: string;
  readonly archivedAt: string | null;
}

interface RosterShape<D, R> {
  table: 'athletes' | 'boats' | 'paddles';
  column: 'athlete' | 'boat' | 'paddle';
  schema: z.ZodType<D>;
  record: (document: D, row: Row) => R;
  /** A condition on the rows that are listed. */
  listed?: string;
  /** What is kept besides a saved document, in the same transaction. */
  kept?: (store: Store, id: string, document: D) => void;
}

function roster<D extends { id?: string; name: string }, R>(shape: RosterShape<D, R>): Roster<D, R> {
  const { table, column, schema, listed = 'true' } = shape;
  const columns = `id, ${column} AS document, changed_at AS changedAt, archived_at AS archivedAt`;

  const documentIn = (store: Store, row: Row) =>
    readStored(store, { table, rowId: row.id }, { text: row.document, schema });

  function recordOf(store: Store, row: Row | undefined): R | null {
    const document = row ? documentIn(store, row) : null;
    return row && document !== null ? shape.record(document, row) : null;
  }

  const rowOf = (store: Store, id: string) =>
    store.db.prepare<[string], Row>(`SELECT ${columns} FROM ${table} WHERE id = ?`).get(id);

  function documentNow(store: Store, id: string): D | null {
    const row = rowOf(store, id);
    return row ? documentIn(store, row) : null;
  }

  const get = (store: Store, id: string) => recordOf(store, rowOf(store, id));

  return {
    get,
    list(store, { archived, search, limit, offset }) {
      return store.db
        .prepare<[number, string, number, number], Row>(
          `SELECT ${columns} FROM ${table} WHERE (archived_at IS NOT NULL) = ? AND search LIKE ? ESCAPE '\\'
             AND ${listed}
           ORDER BY search, id LIMIT ? OFFSET ?`,
        )
        .all(archived ? 1 : 0, searchPattern(search), limit ?? EVERY_ROW, offset)
        .map((row) => recordOf(store, row))
        .filter((record) => record !== null);
    },
    save(store, document, opened) {
      const id = document.id ?? randomUUID();
      return atomically(store, () => {
        const now = opened && documentNow(store, id);
        const { written, unseen } = onTop({ kind: column, schema }, { opened, made: document, now });
        const write = () => {
          writeDocument(store, shape, { ...written, id });
          shape.kept?.(store, id, written);
          return get(store, id)!;
        };
        return tracked(store, { kind: column, id }, write, { unseen });
      });
    },
    setArchived(store, id, archived) {
      return tracked(store, { kind: column, id }, () => {
        store.db
          .prepare(
            `UPDATE ${table} SET archived_at = CASE WHEN ? THEN coalesce(archived_at, ?) END WHERE id = ?`,
          )
          .run(archived ? 1 : 0, now(store), id);
        return get(store, id);
      });
    },
  };
}

/** Writes a row, or writes it again. */
function writeDocument(
  store: Store,
  { table, column }: Pick<RosterShape<never, unknown>, 'table' | 'column'>,
  document: ListedDocument & { id: string },
): void {
  const at = now(store);
  store.db
    .prepare(
      `INSERT INTO ${table} (id, name, search, ${column}, created_at, changed_at) VALUES (?, ?, ?, ?, ?, ?)
       ON CONFLICT (id) DO UPDATE SET name = excluded.name, search = excluded.search,
         ${column} = excluded.${column}, changed_at = excluded.changed_at`,
    )
    .run(document.id, document.name, documentWords(document), JSON.stringify(document), at, at);
  putBack(store, { table, rowId: document.id });
}

/** What a record tells beside its document. */
const aboutRow = ({ id, archivedAt, changedAt }: Row) => ({ id, archived: archivedAt !== null, changedAt });

export const athletes: Roster<z.output<typeof athleteSchema>, AthleteRecord> = roster({
  table: 'athletes',
  column: 'athlete',
  schema: athleteSchema,
  record: (athlete, row) => ({ ...aboutRow(row), athlete }),
  kept: recordBody,
  listed: LISTED_ENTRIES,
});

export const boats: Roster<z.output<typeof boatSchema>, BoatRecord> = roster({
  table: 'boats',
  column: 'boat',
  schema: boatSchema,
  record: (boat, row) => ({ ...aboutRow(row), boat }),
});

/** The club's paddles. */
export const paddles: Roster<z.output<typeof stockPaddleSchema>, PaddleRecord> = roster({
  table: 'paddles',
  column: 'paddle',
  schema: stockPaddleSchema,
  record: (paddle, row) => ({ ...aboutRow(row), paddle }),
});
