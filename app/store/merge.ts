import { addErased, erasedButHere } from './erased-people.ts';
import type { Incoming } from './incoming.ts';
import { emptyCounts, type MergeCount, type MergeCounts } from './merge-counts.ts';
import { bringBack, mergeDocument } from './merge-documents.ts';
import { mergeFit, mergeFitPart } from './merge-fit.ts';
import { mergePhoto, mergeRemovedPhoto } from './merge-photo.ts';
import { type MergedRecord, tally } from './merge-record.ts';
import { refuseErased } from './refuse-erased.ts';
import { atomically, type Store } from './store.ts';

/** `merge` brings both sides together; `bring-back` only adds what is missing here, from an older copy of this store. */
type MergeHow = 'merge' | 'bring-back';

/**
 * Takes items in, one at each step. What is missing is added; a record that is known is merged field by field against what
 * both sides knew; a revision is never changed. Runs inside the caller's transaction.
 */
export function* mergeSteps(
  store: Store,
  items: Iterable<Incoming>,
  how: MergeHow = 'merge',
): Generator<void, MergeCounts> {
  const counts = emptyCounts();
  const door = refuseErased(store, counts);
  for (const incoming of items) {
    for (const item of door.admit(incoming)) mergeOne(store, item, { counts, how });
    yield;
  }
  counts.erasedHere = erasedButHere(store.db).length;
  return counts;
}

function mergeOne(
  store: Store,
  incoming: Incoming,
  { counts, how }: { counts: MergeCounts; how: MergeHow },
): void {
  const stays = how === 'bring-back';
  if (incoming.kind === 'erased') addErased(store.db, incoming.item);
  else if (incoming.kind === 'fit') mergeFit(store, incoming.item, { counts, stays });
  else if (incoming.kind === 'fit-part') mergeFitPart(store, incoming.item, { counts, stays });
  else if (stays && incoming.kind !== 'photo' && incoming.kind !== 'removed-photo') {
    tally(counts[`${incoming.kind}s`], bringBack(store, incoming));
  } else if (incoming.kind === 'photo') tally(counts.photos, mergePhoto(store, incoming.item));
  else if (incoming.kind === 'removed-photo')
    tallyRemoved(counts.photos, mergeRemovedPhoto(store, incoming.item));
  else tally(counts[`${incoming.kind}s`], mergeDocument(store, incoming));
}

/** A photograph that was not known here either is not worth a word. */
function tallyRemoved(count: MergeCount, merged: MergedRecord): void {
  if (merged.outcome === 'updated' || merged.conflicts > 0) tally(count, merged);
}

/** All of `mergeSteps` at once, as one transaction. */
export function mergeIn(store: Store, items: Iterable<Incoming>, how: MergeHow = 'merge'): MergeCounts {
  return atomically(store, () => {
    const steps = mergeSteps(store, items, how);
    for (;;) {
      const step = steps.next();
      if (step.done) return step.value;
    }
  });
}

/** The tables whose rows are merged one by one, or are this store's own; `erasing` is empty outside a transaction. */
const MERGED_TABLES = [
  'athletes',
  'boats',
  'paddles',
  'fits',
  'revisions',
  'revision_words',
  'drafts',
  'trials',
  'measurings',
  'quarantine',
  'erasing',
  'this_store',
  'field_versions',
  'row_sums',
  'journal_position',
];

/** The tables that are merged whole, not row by row: of no use to `mergeIn`, and of one version on both sides. */
export function otherTables({ db }: Store): string[] {
  const tables = db
    .prepare<[], string>(
      "SELECT name FROM main.sqlite_schema WHERE type = 'table' AND name NOT LIKE 'sqlite_%'",
    )
    .pluck()
    .all();
  return tables.filter((name) => !MERGED_TABLES.includes(name));
}

/** Adds the rows of an attached store's table whose keys are not known here, unless what they belong to is missing. */
export function addRowsOf({ db }: Store, table: string, attachedAs: string): void {
  const owners = db.pragma(`main.foreign_key_list("${table}")`) as {
    table: string;
    from: string;
    to: string;
  }[];
  const owned = owners.map(
    ({ table: owner, from, to }) => `"${from}" IN (SELECT "${to}" FROM main."${owner}")`,
  );
  db.exec(
    `INSERT OR IGNORE INTO main."${table}" SELECT * FROM "${attachedAs}"."${table}"
     WHERE ${['true', ...owned].join(' AND ')}`,
  );
}
