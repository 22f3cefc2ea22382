import type { FieldVersion, RecordState } from '../changes/record-state.ts';
import type { Seen, Write, WrittenValue } from '../changes/register.ts';
import type { RecordRef } from '../store/record-versions.ts';
import type { Library } from './address.ts';

/** A question within a transaction, or without one. */
export type Asking = Library | Parameters<Parameters<Library['begin']>[1]>[0];

/** A row of the library's table `records`. */
export interface RecordRow extends RecordRef {
  readonly owner: string | null;
  readonly created_at: string;
  readonly changed_at: string;
  readonly mime: string | null;
  readonly hash: string | null;
  readonly base_seen: Seen;
  readonly base_writes: readonly Write[];
  readonly sent_by: string | null;
}

interface FieldRow {
  readonly kind: string;
  readonly id: string;
  readonly path: string;
  readonly value: string | null;
  readonly seen: Seen | null;
  readonly writes: readonly Write[] | null;
  readonly others: readonly WrittenValue[];
}

/** A record as the library has it, as far as whoever asks may read it. */
export interface ServerRecord {
  readonly row: RecordRow;
  readonly state: RecordState;
  /** Fields that are there and may not be read. */
  readonly hidden: ReadonlySet<string>;
}

/** Reads records, by `kind id`. Those that are not there, or may not be seen, are left out. */
export async function readRecords(
  sql: Asking,
  refs: readonly RecordRef[],
): Promise<Map<string, ServerRecord>> {
  if (refs.length === 0) return new Map();
  const [kinds, ids] = [refs.map(({ kind }) => kind), refs.map(({ id }) => id)];
  const wanted = sql`SELECT * FROM unnest(${kinds}::text[], ${ids}::uuid[]) AS wanted (kind, id)`;
  const rows = await sql<RecordRow[]>`
    SELECT kind, id, owner, created_at, changed_at, mime, hash, base_seen, base_writes, sent_by
    FROM records WHERE (kind, id) IN (${wanted})`;
  const fields = await sql<FieldRow[]>`
    SELECT kind, id, path, value, seen, writes, others FROM fields WHERE (kind, id) IN (${wanted})`;
  const hidden = await sql<{ kind: string; id: string; path: string }[]>`
    SELECT kind, id, path FROM (${wanted}) AS wanted, hidden_fields(kind, id) AS path`;
  const fieldsOf = Map.groupBy(fields, ({ kind, id }) => `${kind} ${id}`);
  const hiddenOf = Map.groupBy(hidden, ({ kind, id }) => `${kind} ${id}`);
  return new Map(
    rows.map((row) => {
      const key = `${row.kind} ${row.id}`;
      const paths = new Set((hiddenOf.get(key) ?? []).map(({ path }) => path));
      return [key, { row, state: stateOf(row, fieldsOf.get(key) ?? []), hidden: paths }];
    }),
  );
}

function stateOf(row: RecordRow, fields: readonly FieldRow[]): RecordState {
  const leaves = new Map<string, string>();
  const versions = new Map<string, FieldVersion>();
  for (const { path, value, seen, writes, others } of fields) {
    if (value !== null) leaves.set(path, value);
    if (seen && writes) versions.set(path, { seen, writes, others });
  }
  return { leaves, base: { seen: row.base_seen, writes: row.base_writes, others: [] }, fields: versions };
}

/** Writes what of a record differs from how the library has it. */
export function fieldRows(ref: RecordRef, state: RecordState, before: RecordState | null): FieldRow[] {
  const paths = new Set([...state.leaves.keys(), ...state.fields.keys(), ...(before?.fields.keys() ?? [])]);
  const row = (from: RecordState, path: string): FieldRow => {
    const version = from.fields.get(path);
    return {
      ...ref,
      path,
      value: from.leaves.get(path) ?? null,
      seen: version?.seen ?? null,
      writes: version?.writes ?? null,
      others: version?.others ?? [],
    };
  };
  return [...paths].flatMap((path) => {
    const now = row(state, path);
    const isKnown = before !== null && (before.leaves.has(path) || before.fields.has(path));
    return isKnown && sameRow(now, row(before, path)) ? [] : [now];
  });
}

function sameRow(a: FieldRow, b: FieldRow): boolean {
  const text = ({ value, seen, writes, others }: FieldRow) =>
    JSON.stringify([
      value,
      seen && Object.entries(seen).sort(([one], [two]) => (one < two ? -1 : 1)),
      writes?.map(({ store, counter }) => `${store} ${counter}`).sort(),
      others.map(({ store, counter, value: held }) => [store, counter, held]),
    ]);
  return text(a) === text(b);
}

/** A record without some of its fields: what may not be read here is no part of what is known. */
export function withoutFields(state: RecordState, hidden: ReadonlySet<string>): RecordState {
  if (hidden.size === 0) return state;
  return {
    base: state.base,
    leaves: new Map([...state.leaves].filter(([path]) => !hidden.has(path))),
    fields: new Map([...state.fields].filter(([path]) => !hidden.has(path))),
  };
}
