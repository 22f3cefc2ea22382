import { createHash } from 'node:crypto';
import { contentOfLeaves, leavesOfContent, type RecordContent } from '../changes/record-content.ts';
import {
  conflictsOf,
  heldBack,
  highestCounter,
  type Leaves,
  mergeStates,
  type RecordState,
  sameLeaves,
} from '../changes/record-state.ts';
import { askedOnce } from './conflicts.ts';
import type { MergeCount, MergeOutcome } from './merge-counts.ts';
import { putRecord } from './put-record.ts';
import { readLeaves } from './record-rows.ts';
import {
  fieldsOf,
  type RecordRef,
  type RecordVersions,
  readVersions,
  writeVersions,
} from './record-versions.ts';
import type { Store } from './store.ts';
import { countOnFrom } from './store-identity.ts';

/** A record on its way in, and how it is dealt with. */
export interface IncomingRecord {
  readonly content: RecordContent;
  /** Missing where it was written by a program that kept none. */
  readonly versions: RecordVersions | undefined;
  readonly changedAt: string;
  /** Writes it as it comes, where nothing that reads is known of it. */
  readonly insert: () => void;
  /** Writes it as merged; false if it makes no sound document. */
  readonly put?: (content: RecordContent) => boolean;
  /** The record as it stands here, if that has been read already; null if there is none that reads. */
  readonly here?: Leaves | null;
}

export interface MergedRecord {
  readonly outcome: MergeOutcome;
  /** Fields of it that now wait for a decision and did not before. */
  readonly conflicts: number;
}

/** Counts what became of one record. */
export function tally(count: MergeCount, { outcome, conflicts }: MergedRecord): void {
  count[outcome] += 1;
  count.conflicts += conflicts;
}

/** Brings what is known here and what comes in together, field by field. */
export function mergeRecord(store: Store, ref: RecordRef, incoming: IncomingRecord): MergedRecord {
  const { changedAt, here = readLeaves(store, ref, 'checked') } = incoming;
  const theirs = incomingState(ref, incoming);
  countOnFrom(store, highestCounter(theirs));
  const versions = readVersions(store, ref);
  const leaves = here ?? (versions && ref.kind === 'photo' ? new Map<string, string>() : null);
  if (!leaves) {
    incoming.insert();
    writeVersions(store, ref, { before: versions, after: theirs });
    return { outcome: 'added', conflicts: questionCount(ref, theirs) };
  }
  if (!incoming.versions && sameLeaves(leaves, theirs.leaves)) return { outcome: 'same', conflicts: 0 };
  const ours = { leaves, ...fieldsOf(versions ?? withoutAncestors(ref, leaves, changedAt)) };
  const put = incoming.put ?? ((content) => putRecord(store, ref, { content, at: changedAt }));
  const after = mergedSoundly({ ours, theirs }, (merged) => put(contentOfLeaves(ref.kind, merged)));
  writeVersions(store, ref, { before: versions, after });
  const conflicts = Math.max(0, questionCount(ref, after) - questionCount(ref, ours));
  if (!sameLeaves(after.leaves, leaves)) return { outcome: 'updated', conflicts };
  return { outcome: sameLeaves(leaves, theirs.leaves) ? 'same' : 'keptNewer', conflicts };
}

/** How many questions the fields of a record ask that wait for a decision. */
function questionCount(ref: RecordRef, state: RecordState): number {
  return askedOnce(conflictsOf(state).map((conflict) => ({ ...ref, ...conflict }))).length;
}

function mergedSoundly(
  { ours, theirs }: { ours: RecordState; theirs: RecordState },
  put: (leaves: Leaves) => boolean,
): RecordState {
  const merged = mergeStates(ours, theirs);
  if (sameLeaves(merged.leaves, ours.leaves) || put(merged.leaves)) return merged;
  return heldBack(ours, merged);
}

function incomingState(ref: RecordRef, { content, versions, changedAt }: IncomingRecord): RecordState {
  const leaves = leavesOfContent(ref.kind, content);
  return { leaves, ...fieldsOf(versions ?? withoutAncestors(ref, leaves, changedAt)) };
}

/**
 * Versions for values of which nobody knows what they replaced: a write of their own, called by what was written. The same
 * values coming in twice are one write, so that a decision once taken is not asked for again.
 */
function withoutAncestors({ kind, id }: RecordRef, leaves: Leaves, at: string): RecordVersions {
  const said = JSON.stringify([kind, id, [...leaves].sort(([a], [b]) => (a < b ? -1 : 1))]);
  const name = `old-${createHash('sha256').update(said).digest('hex').slice(0, 16)}`;
  const base = { seen: { [name]: 0 }, writes: [{ store: name, counter: 0, at }], others: [] };
  return { base, fields: {} };
}
