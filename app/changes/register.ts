/** One write of one field: by which store, its counter there, and the instant by that store's clock (shown, never compared). */
export interface Write {
  readonly store: string;
  readonly counter: number;
  readonly at: string;
}

/** A write with what it wrote: a value as JSON text, or null where the field was removed. */
export interface WrittenValue extends Write {
  readonly value: string | null;
}

/** The highest counter of each store's writes that are known or replaced: a version vector. */
export type Seen = Readonly<Record<string, number>>;

/**
 * One field: the writes that no other known write replaces, and every write that went into it. More than one value means
 * that two stores wrote without knowing of each other. A multi-value register, as in N. Preguiça and others, "Dotted
 * Version Vectors: Logical Clocks for Optimistic Replication" (2010), arXiv:1011.5808 (cited from memory).
 */
export interface Register {
  readonly seen: Seen;
  readonly values: readonly WrittenValue[];
}

/**
 * What is known of a field when two stores meet. A value stays when both hold it, or when the other has not seen its
 * write. The order of meetings does not matter, and meeting twice changes nothing.
 */
export function mergeRegisters(a: Register, b: Register): Register {
  const kept = (from: Register, other: Register) =>
    from.values.filter(
      (value) =>
        value.counter > (other.seen[value.store] ?? -1) ||
        other.values.some((held) => sameWrite(held, value)),
    );
  const all = [...kept(a, b), ...kept(b, a)];
  // A store that could not read its row, or may not, holds a write without its value: the other's is the one that was written.
  const isDouble = (value: WrittenValue, i: number) =>
    all.some(
      (one, j) =>
        sameWrite(one, value) && (one.value === value.value ? j < i : known(value.value) < known(one.value)),
    );
  const values = all.filter((value, i) => !isDouble(value, i));
  return { seen: mergeSeen(a.seen, b.seen), values: values.sort(latestFirst) };
}

/**
 * How much is known of the value of a write: 0 nothing, 1 an empty place (a seat whose athlete may not be read here), 2 the
 * value.
 */
function known(value: string | null): number {
  if (value === null) return 0;
  return value === 'null' ? 1 : 2;
}

/** The higher counter of each store. */
export function mergeSeen(a: Seen, b: Seen): Seen {
  const seen: Record<string, number> = { ...a };
  for (const [store, counter] of Object.entries(b)) seen[store] = Math.max(counter, seen[store] ?? counter);
  return seen;
}

export function sameWrite(a: Write, b: Write): boolean {
  return a.store === b.store && a.counter === b.counter;
}

/**
 * The value that stands until somebody decides: one that is there before one that was removed, then the highest counter,
 * then the store's name. Counters grow with what a store has seen, so this order is the same everywhere.
 */
export function latestFirst(a: WrittenValue, b: WrittenValue): number {
  const removed = Number(a.value === null) - Number(b.value === null);
  return (
    removed || b.counter - a.counter || compare(a.store, b.store) || compare(a.value ?? '', b.value ?? '')
  );
}

function compare(a: string, b: string): number {
  if (a === b) return 0;
  return a < b ? 1 : -1;
}
