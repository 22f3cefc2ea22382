import { MEASURED_PATH } from '../changes/record-content.ts';
import { editedState, type Leaves, newState, sameLeaves } from '../changes/record-state.ts';
import { readLeaves } from './record-rows.ts';
import { fieldsOf, type RecordRef, readVersions, writeVersions } from './record-versions.ts';
import { atomically, type Store } from './store.ts';
import { nextWrite } from './store-identity.ts';

const NOTHING: ReadonlySet<string> = new Set();

/**
 * Runs an edit of one record as one transaction, and writes down which fields it changed. Every way in which a person
 * changes a record goes through here. `unseen`: paths of fields whose values the person had not seen.
 */
export function tracked<T>(
  store: Store,
  ref: RecordRef,
  edit: () => T,
  { unseen = NOTHING }: { unseen?: ReadonlySet<string> } = {},
): T {
  return atomically(store, () => {
    const before = readLeaves(store, ref, 'as-kept');
    const result = edit();
    noteChange(store, ref, { before, after: readLeaves(store, ref, 'as-kept'), unseen });
    return result;
  });
}

/** Writes down what was changed between two states of a record. */
export function noteChange(
  store: Store,
  ref: RecordRef,
  change: { before: Leaves | null; after: Leaves | null; unseen?: ReadonlySet<string> },
): void {
  const { before, after, unseen = NOTHING } = change;
  const [old, now] = [before ?? new Map(), after ?? new Map()];
  const versions = readVersions(store, ref);
  if (sameLeaves(old, now) && (versions || now.size === 0)) return;
  const write = nextWrite(store);
  const state = versions
    ? editedState({ leaves: old, ...fieldsOf(versions) }, now, {
        write,
        unseen: withMeasured(unseen, old),
      })
    : newState(now, write);
  writeVersions(store, ref, { before: versions, after: state });
}

/** Unseen fields of an athlete, and those of a day's measuring that hold the same: saving an athlete writes both. */
function withMeasured(unseen: ReadonlySet<string>, leaves: Leaves): Set<string> {
  const measured = [...leaves.keys()].filter((path) => {
    if (!path.startsWith(MEASURED_PATH)) return false;
    const own = path.slice(path.indexOf('/', MEASURED_PATH.length) + 1);
    return unseen.has(own) && leaves.get(own) === leaves.get(path);
  });
  return new Set([...unseen, ...measured]);
}
