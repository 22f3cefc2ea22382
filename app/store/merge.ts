import { randomUUID } from 'node:crypto';
import { documentWords } from './document-words.ts';
import { listEntry, touchFit } from './fit-list-entry.ts';
import type { Incoming, IncomingFit, IncomingRevision } from './incoming.ts';
import { emptyCounts, type MergeCount, type MergeCounts } from './merge-counts.ts';
import { mergeMeasuring, mergePhoto } from './merge-measuring.ts';
import { mergeTrial } from './merge-trial.ts';
import { isSetAside, putBack } from './quarantine.ts';
import { withRevisionsUnlocked } from './revision-lock.ts';
import { describeRevision } from './revision-words.ts';
import { atomically, type Store } from './store.ts';

/** The name of a revision made from a draft that came in. */
const DRAFT_REVISION = 'Draft that came in';

/**
 * Takes items in, by id and by revision, one at each step: what is missing is added, what is newer here stays. A
 * revision is never changed; a draft is never written over. Runs inside the caller's transaction.
 */
export function* mergeSteps(store: Store, items: Iterable<Incoming>): Generator<void, MergeCounts> {
  const counts = emptyCounts();
  for (const incoming of items) {
    if (incoming.kind === 'fit') mergeFit(store, incoming.item, counts);
    else if (incoming.kind === 'photo') counts.photos[mergePhoto(store, incoming.item)] += 1;
    else if (incoming.kind === 'athlete') counts.athletes[mergeAthlete(store, incoming)] += 1;
    else counts[`${incoming.kind}s`][mergeDocument(store, incoming)] += 1;
    yield;
  }
  return counts;
}

/** All of `mergeSteps` at once, as one transaction. */
export function mergeIn(store: Store, items: Iterable<Incoming>): MergeCounts {
  return atomically(store, () => {
    const steps = mergeSteps(store, items);
    for (;;) {
      const step = steps.next();
      if (step.done) return step.value;
    }
  });
}

type IncomingDocument = Extract<Incoming, { kind: 'athlete' | 'boat' | 'paddle' }>;

/** The athlete's own document, and every day's measuring by itself. */
function mergeAthlete(store: Store, incoming: Extract<Incoming, { kind: 'athlete' }>): keyof MergeCount {
  const { id, measurings } = incoming.item;
  const outcome = mergeDocument(store, incoming);
  const taken = measurings.filter((one) => mergeMeasuring(store, id, one)).length;
  return outcome === 'same' && taken > 0 ? 'updated' : outcome;
}

function mergeDocument(store: Store, incoming: IncomingDocument): keyof MergeCount {
  const { kind, item } = incoming;
  const held = documentOf(incoming);
  const text = JSON.stringify({ ...held, id: item.id });
  const known = store.db
    .prepare<[string], { text: string; changedAt: string }>(
      `SELECT ${kind} AS text, changed_at AS changedAt FROM ${kind}s WHERE id = ?`,
    )
    .get(item.id);
  if (known?.text === text) return 'same';
  const place = { table: `${kind}s`, rowId: item.id } as const;
  if (known && known.changedAt >= item.changedAt && !isSetAside(store, place)) return 'keptNewer';
  store.db
    .prepare(
      `INSERT INTO ${kind}s (id, name, search, ${kind}, created_at, changed_at, archived_at)
       VALUES (@id, @name, @search, @text, @createdAt, @changedAt, @archivedAt)
       ON CONFLICT (id) DO UPDATE SET name = excluded.name, search = excluded.search, ${kind} = excluded.${kind},
         changed_at = excluded.changed_at`,
    )
    .run({ ...datesOf(item), id: item.id, name: held.name, search: documentWords(held), text });
  putBack(store, place);
  return known ? 'updated' : 'added';
}

function documentOf(incoming: IncomingDocument) {
  if (incoming.kind === 'athlete') return incoming.item.athlete;
  return incoming.kind === 'boat' ? incoming.item.boat : incoming.item.paddle;
}

function datesOf({
  createdAt,
  changedAt,
  archivedAt,
}: Pick<IncomingFit, 'createdAt' | 'changedAt' | 'archivedAt'>) {
  return { createdAt, changedAt, archivedAt };
}

function mergeFit(store: Store, item: IncomingFit, counts: MergeCounts): void {
  const known = store.db
    .prepare<[string], { changedAt: string }>('SELECT changed_at AS changedAt FROM fits WHERE id = ?')
    .get(item.id);
  const newest = newestState(item);
  if (!known) {
    store.db
      .prepare(
        `INSERT INTO fits (id, name, boat_name, athlete_names, athlete_ids, boat_id, search, created_at, changed_at,
           archived_at)
         VALUES (@id, @name, @boatName, @athleteNames, @athleteIds, @boatId, @search, @createdAt, @changedAt, @archivedAt)`,
      )
      .run({ id: item.id, ...datesOf(item), ...listEntry(newest) });
  }
  const addedRevisions = item.revisions.filter((revision) => mergeRevision(store, item.id, revision));
  counts.revisions.added += addedRevisions.length;
  counts.revisions.same += item.revisions.length - addedRevisions.length;
  const draft = mergeDraft(store, item, known === undefined);
  if (draft === 'kept-as-revision') counts.draftsKeptAsRevisions += 1;
  const trials = item.trials.map((trial) => mergeTrial(store, item.id, trial));
  for (const outcome of trials) counts.trials[outcome] += 1;
  const changed = addedRevisions.length > 0 || draft !== 'same';
  if (known && changed && item.changedAt > known.changedAt) {
    touchFit(store, { id: item.id, fit: newest, at: item.changedAt });
  }
  counts.fits[fitOutcome(known?.changedAt, item.changedAt, changed)] += 1;
}

function newestState(item: IncomingFit) {
  return item.draft?.fit ?? item.revisions.reduce((a, b) => (b.savedAt >= a.savedAt ? b : a)).fit;
}

function fitOutcome(known: string | undefined, incoming: string, changed: boolean): keyof MergeCount {
  if (known === undefined) return 'added';
  if (changed) return 'updated';
  return known > incoming ? 'keptNewer' : 'same';
}

/** Adds a revision that is not known by its id, or cannot be read here any more; takes the next free number where its own is taken. */
function mergeRevision(store: Store, fitId: string, revision: IncomingRevision): boolean {
  if (store.db.prepare('SELECT 1 FROM revisions WHERE id = ?').get(revision.id)) {
    const place = { table: 'revisions', rowId: revision.id } as const;
    if (!isSetAside(store, place)) return false;
    withRevisionsUnlocked(store, [revision.id], () => {
      store.db.prepare('DELETE FROM revision_words WHERE revision_id = ?').run(revision.id);
      store.db.prepare('DELETE FROM revisions WHERE id = ?').run(revision.id);
    });
    putBack(store, place);
  }
  const taken = store.db
    .prepare('SELECT 1 FROM revisions WHERE fit_id = ? AND number = ?')
    .get(fitId, revision.number);
  store.db
    .prepare(
      `INSERT INTO revisions (id, fit_id, number, name, reason, saved_at, fit)
       SELECT @id, @fitId, CASE WHEN @taken THEN coalesce(max(number), 0) + 1 ELSE @number END,
         @name, @reason, @savedAt, @fit FROM revisions WHERE fit_id = @fitId`,
    )
    .run({ ...revision, fitId, taken: taken ? 1 : 0, fit: JSON.stringify(revision.fit) });
  describeRevision(store, revision);
  return true;
}

/** A draft comes in as a draft where there is no other work it could stand in the way of, else as a revision. */
function mergeDraft(store: Store, item: IncomingFit, isNew: boolean): 'same' | 'taken' | 'kept-as-revision' {
  const { draft } = item;
  if (!draft) return 'same';
  const text = JSON.stringify(draft.fit);
  const known = store.db
    .prepare(
      'SELECT 1 FROM drafts WHERE fit_id = @id AND fit = @text UNION ALL SELECT 1 FROM revisions WHERE fit_id = @id AND fit = @text',
    )
    .get({ id: item.id, text });
  if (known) return 'same';
  const otherDraft = store.db.prepare('SELECT 1 FROM drafts WHERE fit_id = ?').get(item.id);
  const newestHere = store.db
    .prepare<[string], string | null>('SELECT max(saved_at) FROM revisions WHERE fit_id = ?')
    .pluck()
    .get(item.id) as unknown as string | null;
  if (isNew || (!otherDraft && draft.savedAt > (newestHere ?? ''))) {
    store.db
      .prepare('INSERT INTO drafts (fit_id, saved_at, fit) VALUES (?, ?, ?)')
      .run(item.id, draft.savedAt, text);
    return 'taken';
  }
  const made = { id: randomUUID(), number: 1, name: DRAFT_REVISION, reason: '', answers: [], ...draft };
  mergeRevision(store, item.id, made);
  return 'kept-as-revision';
}

/** The tables whose rows are merged one by one; `erasing` is empty outside a transaction. */
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
];

/** The tables that are merged whole, not row by row: of no use to `mergeIn`, and of one version on both sides. */
export function otherTables({ db }: Store): string[] {
  const tables = db
    .prepare<[], string>(
      "SELECT name FROM main.sqlite_schema WHERE type = 'table' AND name NOT LIKE 'sqlite_%'",
    )
    .pluck()
    .all() as unknown as string[];
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
