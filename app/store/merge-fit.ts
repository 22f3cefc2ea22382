import { contentOfLeaves, leavesOfContent, type RecordContent } from '../changes/record-content.ts';
import { editedState, type Leaves, sameLeaves } from '../changes/record-state.ts';
import { listEntry } from './fit-list-entry.ts';
import type { IncomingFit, IncomingFitPart } from './incoming.ts';
import type { MergeCounts } from './merge-counts.ts';
import { type MergedRecord, mergeRecord, tally } from './merge-record.ts';
import { mergeRevision } from './merge-revision.ts';
import { mergeTrial } from './merge-trial.ts';
import { prepared } from './prepared.ts';
import { putFitState } from './put-fit-state.ts';
import { checkedDocument, readLeaves } from './record-rows.ts';
import { fieldsOf, readVersions, writeVersions } from './record-versions.ts';
import { openRevision, revisionIdsOf } from './revisions.ts';
import type { Store } from './store.ts';
import { nextWrite } from './store-identity.ts';

/**
 * Takes a fit in: its revisions by their identifiers, its present state field by field. The present state is a draft where
 * it is not the newest revision; a draft never becomes a revision by itself. With `stays`, what is here and reads is left as
 * it is, and only what is missing is added.
 */
export function mergeFit(
  store: Store,
  item: IncomingFit,
  { counts, stays = false }: { counts: MergeCounts; stays?: boolean },
): void {
  const { id } = item;
  const known = prepared(store.db, 'SELECT 1 FROM fits WHERE id = ?').get(id) !== undefined;
  const here = known ? readLeaves(store, { kind: 'fit', id }, 'checked') : null;
  const older = here ? olderSide(store, item, { here, stays }) : 'neither';
  if (!known) insertFit(store, item);
  const added = addRevisions(store, id, { revisions: item.revisions, counts });
  const merged = mergePresent(store, item, { here, older });
  tally(counts.fits, added > 0 && merged.outcome !== 'added' ? { ...merged, outcome: 'updated' } : merged);
  addTrials(store, id, { trials: item.trials, counts, stays });
}

/** Imports what else belongs to a fit that has come before; of one that was refused, nothing. */
export function mergeFitPart(
  store: Store,
  { fitId, revisions, trials }: IncomingFitPart,
  { counts, stays = false }: { counts: MergeCounts; stays?: boolean },
): void {
  if (!prepared(store.db, 'SELECT 1 FROM fits WHERE id = ?').get(fitId)) return;
  addRevisions(store, fitId, { revisions, counts });
  addTrials(store, fitId, { trials, counts, stays });
}

function addRevisions(
  store: Store,
  fitId: string,
  { revisions, counts }: { revisions: IncomingFit['revisions']; counts: MergeCounts },
): number {
  const added = revisions.filter((revision) => mergeRevision(store, fitId, revision)).length;
  counts.revisions.added += added;
  counts.revisions.same += revisions.length - added;
  return added;
}

function addTrials(
  store: Store,
  fitId: string,
  { trials, counts, stays }: { trials: IncomingFit['trials']; counts: MergeCounts; stays: boolean },
): void {
  for (const trial of trials) {
    const isHere = stays && readLeaves(store, { kind: 'trial', id: trial.id }, 'checked');
    if (isHere) counts.trials.keptNewer += 1;
    else tally(counts.trials, mergeTrial(store, fitId, trial));
  }
}

type OlderSide = 'ours' | 'theirs' | 'neither';

/** The revisions are in already: whatever is the newest of them now, the state stays what the fields say. */
function mergePresent(
  store: Store,
  item: IncomingFit,
  { here, older }: { here: Leaves | null; older: OlderSide },
): MergedRecord {
  let present = here ? contentOfLeaves('fit', here) : contentOf(item);
  const put = (content: RecordContent) => {
    if (!checkedDocument('fit', content.document)) return false;
    present = { ...content, document: content.document };
    return true;
  };
  const merged =
    here && older !== 'neither'
      ? followHistory(store, item, { here, older, put })
      : mergeRecord(
          store,
          { kind: 'fit', id: item.id },
          {
            content: contentOf(item),
            versions: item.versions,
            changedAt: item.changedAt,
            here,
            put,
            insert: () => {
              present = contentOf(item);
            },
          },
        );
  putFitState(store, item.id, { content: present, at: item.draft?.savedAt ?? item.changedAt });
  return merged;
}

/** The state that a fit was in where it comes from. */
function presentFit({ draft, revisions }: IncomingFit) {
  return draft?.fit ?? revisions.reduce((a, b) => (b.number > a.number ? b : a)).fit;
}

function contentOf(item: IncomingFit): RecordContent & { document: object } {
  return { document: presentFit(item), archived: item.archivedAt !== null };
}

function insertFit(store: Store, item: IncomingFit): void {
  const { id, createdAt, changedAt, archivedAt } = item;
  const add = prepared(
    store.db,
    `INSERT INTO fits (id, name, boat_name, athlete_names, athlete_ids, boat_id, search, created_at, changed_at, archived_at)
     VALUES (@id, @name, @boatName, @athleteNames, @athleteIds, @boatId, @search, @createdAt, @changedAt, @archivedAt)`,
  );
  add.run({ id, createdAt, changedAt, archivedAt, ...listEntry(presentFit(item)) });
}

/** Without versions, the revisions tell which side knew the other: a state that the other side has as a revision is older. */
function olderSide(
  store: Store,
  item: IncomingFit,
  { here, stays }: { here: Leaves; stays: boolean },
): OlderSide {
  if (stays) return 'theirs';
  if (item.versions) return 'neither';
  const archived = here.has('@archived');
  const theirs = JSON.stringify(presentFit(item));
  const hasTheirs = revisionIdsOf(store, item.id).some((id) => {
    const opened = openRevision(store, id);
    return typeof opened !== 'string' && JSON.stringify(opened.fit) === theirs;
  });
  if (hasTheirs) return 'theirs';
  const isHere = (fit: object) => sameLeaves(leavesOfContent('fit', { document: fit, archived }), here);
  return item.revisions.some(({ fit }) => isHere(fit)) ? 'ours' : 'neither';
}

/** Takes over a state that follows ours, as an edit made here; or stays as it is. */
function followHistory(
  store: Store,
  item: IncomingFit,
  { here, older, put }: { here: Leaves; older: OlderSide; put: (content: RecordContent) => boolean },
): MergedRecord {
  const content = { document: presentFit(item), archived: here.has('@archived') };
  const leaves = leavesOfContent('fit', content);
  if (sameLeaves(leaves, here)) return { outcome: 'same', conflicts: 0 };
  const ref = { kind: 'fit', id: item.id } as const;
  const versions = readVersions(store, ref);
  if (older === 'theirs' || !versions || !put(content)) return { outcome: 'keptNewer', conflicts: 0 };
  const after = editedState({ leaves: here, ...fieldsOf(versions) }, leaves, { write: nextWrite(store) });
  writeVersions(store, ref, { before: versions, after });
  return { outcome: 'updated', conflicts: 0 };
}
