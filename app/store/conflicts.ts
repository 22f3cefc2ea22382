import { contentOfLeaves, MEASURED_PATH } from '../changes/record-content.ts';
import type { RecordKind } from '../changes/record-shapes.ts';
import { conflictsOf, decidedState, type Leaves } from '../changes/record-state.ts';
import type { WrittenValue } from '../changes/register.ts';
import { putRecord } from './put-record.ts';
import { readLeaves } from './record-rows.ts';
import { fieldsOf, type RecordRef, readVersions, writeVersions } from './record-versions.ts';
import { atomically, type Store } from './store.ts';
import { nextWrite } from './store-identity.ts';

/** A field with two values, written on two computers or two pages without knowing of each other; a person decides. */
export interface FieldConflict extends RecordRef {
  readonly path: string;
  /** The value that stands until then, first; JSON text, or null where it was removed. */
  readonly values: readonly WrittenValue[];
}

/** Every field that waits for a decision. */
export function listConflicts(store: Store): FieldConflict[] {
  return store.db
    .prepare<[], { kind: RecordKind; id: string }>(
      "SELECT DISTINCT kind, record_id AS id FROM field_versions WHERE others <> '[]' ORDER BY kind, record_id",
    )
    .all()
    .flatMap((ref) => {
      const leaves: Leaves = readLeaves(store, ref, 'checked') ?? new Map();
      const versions = readVersions(store, ref);
      if (!versions) return [];
      return conflictsOf({ leaves, ...fieldsOf(versions) }).map((conflict) => ({ ...ref, ...conflict }));
    });
}

/**
 * Days of an athlete's measurings that ask just what the athlete's own field asks: saving an athlete writes both. They are
 * asked once, and decided together.
 */
export function sameQuestions(
  open: readonly FieldConflict[],
  asked: Omit<FieldConflict, 'values'>,
): FieldConflict[] {
  const own = open.find((one) => isOne(one, asked));
  if (!own || own.path.startsWith(MEASURED_PATH)) return [];
  const valuesOf = (one: FieldConflict) => JSON.stringify(one.values.map(({ value }) => value).sort());
  return open.filter(
    (one) =>
      one.kind === own.kind &&
      one.id === own.id &&
      one.path.startsWith(MEASURED_PATH) &&
      one.path.endsWith(`/${own.path}`) &&
      valuesOf(one) === valuesOf(own),
  );
}

/** Conflicts without those that ask what another one asks. */
export function askedOnce(open: readonly FieldConflict[]): FieldConflict[] {
  const twice = new Set(open.flatMap((one) => sameQuestions(open, one)));
  return open.filter((one) => !twice.has(one));
}

function isOne(a: Omit<FieldConflict, 'values'>, b: Omit<FieldConflict, 'values'>): boolean {
  return a.kind === b.kind && a.id === b.id && a.path === b.path;
}

/**
 * Decides a field: one of its values stands from now on, here and wherever this store's changes come. `unsound` when the
 * record would not be sound with it; nothing is changed then.
 */
export function decideConflict(
  store: Store,
  { kind, id, path, value }: RecordRef & { path: string; value: string | null },
): 'decided' | 'none' | 'unsound' {
  const ref = { kind, id };
  return atomically(store, () => {
    // Words of a picture that was removed can be waiting still.
    const leaves = readLeaves(store, ref, 'checked') ?? (kind === 'photo' ? new Map<string, string>() : null);
    const versions = readVersions(store, ref);
    if (!leaves || !versions) return 'none';
    const state = { leaves, ...fieldsOf(versions) };
    const open = conflictsOf(state).find((conflict) => conflict.path === path);
    if (!open?.values.some((one) => one.value === value)) return 'none';
    const write = nextWrite(store);
    const after = decidedState(state, { path, value }, write);
    if (!putRecord(store, ref, { content: contentOfLeaves(kind, after.leaves), at: write.at }))
      return 'unsound';
    writeVersions(store, ref, { before: versions, after });
    return 'decided';
  });
}
