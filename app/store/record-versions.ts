import { z } from 'zod';
import type { RecordKind } from '../changes/record-shapes.ts';
import { type FieldVersion, type RecordState, sameVersion } from '../changes/record-state.ts';
import { prepared } from './prepared.ts';
import type { Store } from './store.ts';

/** Which record. */
export interface RecordRef {
  readonly kind: RecordKind;
  readonly id: string;
}

const storeName = z.string().min(1).max(40);
const counter = z.int().min(0).max(1e12);
const write = z.strictObject({ store: storeName, counter, at: z.string().max(40) });

/** A value that waits for a decision, as JSON text: it may become part of a document later. */
export const waitingValue = z.string().max(8_000_000).refine(isJson, { message: 'bundle.damaged' });

/** The version of one field as it lies in the store and in bundles. */
export const fieldVersion = z.strictObject({
  seen: z.record(storeName, counter),
  writes: z.array(write).max(1000),
  others: z.array(write.extend({ value: waitingValue.nullable() })).max(1000),
});

/** The versions of a whole record. */
export const recordVersions = z.strictObject({
  base: fieldVersion,
  fields: z.record(z.string().max(400), fieldVersion).default({}),
});
export type RecordVersions = z.infer<typeof recordVersions>;

interface Row {
  readonly path: string;
  readonly seen: string;
  readonly writes: string;
  readonly others: string;
}

/** The versions of a record's fields; null if none are kept, or they do not read. */
export function readVersions({ db }: Pick<Store, 'db'>, { kind, id }: RecordRef): RecordVersions | null {
  const rows = prepared<[string, string], Row>(
    db,
    'SELECT path, seen, writes, others FROM field_versions WHERE kind = ? AND record_id = ?',
  ).all(kind, id);
  const versions = new Map(
    rows.flatMap(({ path, ...row }) => {
      const read = fieldVersion.safeParse(parsed(row));
      return read.success ? [[path, read.data] as const] : [];
    }),
  );
  const base = versions.get('');
  if (!base) return null;
  versions.delete('');
  return { base, fields: Object.fromEntries(versions) };
}

/** Writes the versions that differ from those that are kept. */
export function writeVersions(
  { db }: Pick<Store, 'db'>,
  { kind, id }: RecordRef,
  { before, after }: { before: RecordVersions | null; after: Pick<RecordState, 'base' | 'fields'> },
): void {
  const put = prepared(
    db,
    `INSERT INTO field_versions (kind, record_id, path, seen, writes, others) VALUES (?, ?, ?, ?, ?, ?)
     ON CONFLICT DO UPDATE SET seen = excluded.seen, writes = excluded.writes, others = excluded.others`,
  );
  const known = (path: string) => (path === '' ? before?.base : before?.fields[path]);
  for (const [path, version] of [['', after.base] as const, ...after.fields]) {
    const held = known(path);
    if (held && sameVersion(held, version)) continue;
    const { seen, writes, others } = version;
    put.run(kind, id, path, JSON.stringify(seen), JSON.stringify(writes), JSON.stringify(others));
  }
  const remove = prepared(db, 'DELETE FROM field_versions WHERE kind = ? AND record_id = ? AND path = ?');
  for (const path of Object.keys(before?.fields ?? {}))
    if (!after.fields.has(path)) remove.run(kind, id, path);
}

/** Versions as the pure functions take them. */
export function fieldsOf({ base, fields }: RecordVersions): {
  base: FieldVersion;
  fields: Map<string, FieldVersion>;
} {
  return { base, fields: new Map(Object.entries(fields)) };
}

function isJson(text: string): boolean {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
}

function parsed({ seen, writes, others }: Omit<Row, 'path'>): unknown {
  try {
    return { seen: JSON.parse(seen), writes: JSON.parse(writes), others: JSON.parse(others) };
  } catch {
    return null;
  }
}
