import { editedState, type Leaves, newState, sameLeaves } from '../changes/record-state.ts';
import { readLeaves } from './record-rows.ts';
import { fieldsOf, type RecordRef, readVersions, writeVersions } from './record-versions.ts';
import { atomically, type Store } from './store.ts';
import { nextWrite } from './store-identity.ts';

/**
 * Runs an edit of one record as one transaction, and writes down which fields it changed. Every way in which a person
 * changes a record goes through here.
 */
export function tracked<T>(store: Store, ref: RecordRef, edit: () => T): T {
  return atomically(store, () => {
    const before = readLeaves(store, ref, 'as-kept');
    const result = edit();
    noteChange(store, ref, { before, after: readLeaves(store, ref, 'as-kept') });
    return result;
  });
}

/** Writes down what was changed between two states of a record. */
export function noteChange(
  store: Store,
  ref: RecordRef,
  { before, after }: { before: Leaves | null; after: Leaves | null },
): void {
  const [old, now] = [before ?? new Map(), after ?? new Map()];
  const versions = readVersions(store, ref);
  if (sameLeaves(old, now) && (versions || now.size === 0)) return;
  const write = nextWrite(store);
  const state = versions
    ? editedState({ leaves: old, ...fieldsOf(versions) }, now, write)
    : newState(now, write);
  writeVersions(store, ref, { before: versions, after: state });
}
