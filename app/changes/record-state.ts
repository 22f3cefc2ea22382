import {
  latestFirst,
  mergeRegisters,
  type Register,
  type Seen,
  type Write,
  type WrittenValue,
} from './register.ts';

/** A record taken apart: the JSON text of each field's value, by its path (a JSON pointer, RFC 6901, without the first `/`). */
export type Leaves = ReadonlyMap<string, string>;

/** What is kept of a field beside its value. */
export interface FieldVersion {
  readonly seen: Seen;
  /** The writes of the value that the record holds. */
  readonly writes: readonly Write[];
  /** Other values, written without knowledge of it; to be decided by a person. */
  readonly others: readonly WrittenValue[];
}

/** A record with the version of each field. Fields that were never written by themselves share `base`. */
export interface RecordState {
  readonly leaves: Leaves;
  readonly base: FieldVersion;
  readonly fields: ReadonlyMap<string, FieldVersion>;
}

/** A field with two values, written without knowing of each other. */
export interface Conflict {
  readonly path: string;
  /** The value that stands until it is decided, first. */
  readonly values: readonly WrittenValue[];
}

/** A record that is written for the first time. */
export function newState(leaves: Leaves, write: Write): RecordState {
  return {
    leaves,
    base: { seen: { [write.store]: write.counter }, writes: [write], others: [] },
    fields: new Map(),
  };
}

/**
 * A record after an edit: every field that differs is written. A value that was written elsewhere and waits for a
 * decision goes on waiting: whoever edits has seen only the value that stands. At `unseen` paths not even that was seen:
 * what stood there waits for a decision too.
 */
export function editedState(
  state: RecordState,
  leaves: Leaves,
  { write, unseen }: { write: Write; unseen?: ReadonlySet<string> },
): RecordState {
  const fields = new Map(state.fields);
  for (const path of new Set([...state.leaves.keys(), ...leaves.keys()])) {
    const value = leaves.get(path) ?? null;
    if (value === (state.leaves.get(path) ?? null)) continue;
    const { seen, values: known } = registerAt(state, path);
    const waiting = unseen?.has(path) ? known : versionAt(state, path).others;
    const values = [{ ...write, value }, ...waiting];
    fields.set(path, split({ seen: withWrite(seen, write), values }, value));
  }
  return { leaves, base: state.base, fields };
}

/** A record after a person has decided a conflict: one value stands, and all others count as replaced. */
export function decidedState(
  state: RecordState,
  { path, value }: { path: string; value: string | null },
  write: Write,
): RecordState {
  const { seen } = versionAt(state, path);
  const leaves = new Map(state.leaves);
  if (value === null) leaves.delete(path);
  else leaves.set(path, value);
  const version = { seen: withWrite(seen, write), writes: [write], others: [] };
  return { leaves, base: state.base, fields: new Map(state.fields).set(path, version) };
}

/** What two stores know of one record, together. */
export function mergeStates(a: RecordState, b: RecordState): RecordState {
  const base = baseOf(mergeRegisters(registerOfBase(a.base), registerOfBase(b.base)));
  const fields = new Map<string, FieldVersion>();
  const leaves = new Map<string, string>();
  const paths = [a.leaves, b.leaves, a.fields, b.fields].flatMap((map) => [...map.keys()]);
  for (const path of new Set(paths)) {
    const merged = mergeRegisters(registerAt(a, path), registerAt(b, path));
    const value = [...merged.values].sort(latestFirst)[0]?.value ?? null;
    const version = split(merged, value);
    if (value !== null) leaves.set(path, value);
    if (!sameVersion(version, base)) fields.set(path, version);
  }
  return { leaves, base, fields };
}

/** Fields that wait for a decision, by path. */
export function conflictsOf(state: RecordState): Conflict[] {
  return [...state.fields.keys()].sort().flatMap((path) => {
    const { writes, others } = versionAt(state, path);
    if (others.length === 0) return [];
    const stands = { ...(writes[0] ?? UNKNOWN_WRITE), value: state.leaves.get(path) ?? null };
    const values = [stands, ...others];
    const distinct = values.filter((one, i) => values.findIndex(({ value }) => value === one.value) === i);
    return distinct.length > 1 ? [{ path, values: distinct }] : [];
  });
}

/** Stands for the write of a value that is kept although the other side replaced it: see `heldBack`. */
const UNKNOWN_WRITE: Write = { store: '', counter: 0, at: '' };

/**
 * What two stores know together makes no sound document (two lists of stock, together too long). What is here stays, and
 * everything that would have come waits for a decision: more is asked than needs be, nothing is lost.
 */
export function heldBack(ours: RecordState, merged: RecordState): RecordState {
  const fields = new Map(merged.fields);
  for (const path of new Set([...ours.leaves.keys(), ...merged.leaves.keys()])) {
    const stands = ours.leaves.get(path) ?? null;
    if (stands !== (merged.leaves.get(path) ?? null))
      fields.set(path, split(registerAt(merged, path), stands));
  }
  return { leaves: ours.leaves, base: merged.base, fields };
}

/** Whether two records hold the same values. */
export function sameLeaves(a: Leaves, b: Leaves): boolean {
  return a.size === b.size && [...a].every(([path, value]) => b.get(path) === value);
}

/** Whether two versions of a field came out of the same writes. */
export function sameVersion(a: FieldVersion, b: FieldVersion): boolean {
  return canonical(a) === canonical(b);
}

/** The highest counter in a record: a store that has taken it in counts on from there. */
export function highestCounter({ base, fields }: Pick<RecordState, 'base' | 'fields'>): number {
  const all = [base, ...fields.values()].flatMap(({ seen }) => Object.values(seen));
  return Math.max(0, ...all);
}

/** The version of a field: its own, or the record's. */
export function versionAt({ base, fields }: RecordState, path: string): FieldVersion {
  return fields.get(path) ?? base;
}

function registerAt(state: RecordState, path: string): Register {
  const { seen, writes, others } = versionAt(state, path);
  const value = state.leaves.get(path) ?? null;
  return { seen, values: [...writes.map((write) => ({ ...write, value })), ...others] };
}

/** A register as it is kept beside the value that stands. */
function split({ seen, values }: Register, stands: string | null): FieldVersion {
  const sorted = [...values].sort(latestFirst);
  const writes = sorted.filter(({ value }) => value === stands).map(withoutValue);
  return { seen, writes, others: sorted.filter(({ value }) => value !== stands) };
}

function withoutValue({ store, counter, at }: WrittenValue): Write {
  return { store, counter, at };
}

function registerOfBase({ seen, writes }: FieldVersion): Register {
  return { seen, values: writes.map((write) => ({ ...write, value: null })) };
}

function baseOf({ seen, values }: Register): FieldVersion {
  return { seen, writes: values.map(withoutValue), others: [] };
}

function withWrite(seen: Seen, { store, counter }: Write): Seen {
  return { ...seen, [store]: counter };
}

function canonical({ seen, writes, others }: FieldVersion): string {
  const pairs = Object.entries(seen).sort(([a], [b]) => (a < b ? -1 : 1));
  const dots = writes.map(({ store, counter }) => `${store} ${counter}`).sort();
  return JSON.stringify([pairs, dots, others.map(({ store, counter, value }) => [store, counter, value])]);
}
