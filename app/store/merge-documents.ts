import type { RecordContent } from '../changes/record-content.ts';
import { documentWords } from './document-words.ts';
import type { Incoming, IncomingMeasuring } from './incoming.ts';
import { type MergedRecord, mergeRecord } from './merge-record.ts';
import { prepared } from './prepared.ts';
import { putRecord } from './put-record.ts';
import { readLeaves } from './record-rows.ts';
import type { Store } from './store.ts';
import { tracked } from './track.ts';

type IncomingDocument = Extract<Incoming, { kind: 'athlete' | 'boat' | 'paddle' }>;

/** Takes an athlete, a boat or a paddle in. */
export function mergeDocument(store: Store, incoming: IncomingDocument): MergedRecord {
  const { kind, item } = incoming;
  return mergeRecord(
    store,
    { kind, id: item.id },
    {
      content: contentOf(incoming),
      versions: item.versions,
      changedAt: item.changedAt,
      insert: () => insertDocument(store, incoming),
    },
  );
}

/** Imports what is missing here: the whole, or days of an athlete's measurings. What is here and reads stays. */
export function bringBack(store: Store, incoming: IncomingDocument): MergedRecord {
  const ref = { kind: incoming.kind, id: incoming.item.id };
  if (!readLeaves(store, ref, 'checked')) return mergeDocument(store, incoming);
  if (incoming.kind !== 'athlete') return { outcome: 'keptNewer', conflicts: 0 };
  const { measurings } = incoming.item;
  const back = tracked(store, ref, () => addMeasurings(store, ref.id, measurings));
  return { outcome: back > 0 ? 'updated' : 'keptNewer', conflicts: 0 };
}

function contentOf(incoming: IncomingDocument): RecordContent {
  const archived = incoming.item.archivedAt !== null;
  if (incoming.kind === 'boat') return { document: incoming.item.boat, archived };
  if (incoming.kind === 'paddle') return { document: incoming.item.paddle, archived };
  const { athlete, measurings, joinedInto } = incoming.item;
  return { document: athlete, archived, joinedInto, measured: measurings.map(({ measuring }) => measuring) };
}

function documentOf(incoming: IncomingDocument) {
  if (incoming.kind === 'athlete') return incoming.item.athlete;
  return incoming.kind === 'boat' ? incoming.item.boat : incoming.item.paddle;
}

/** A row as it comes; one that is here and does not read gives way. */
function insertDocument(store: Store, incoming: IncomingDocument): void {
  const { kind, item } = incoming;
  const { id, createdAt, changedAt, archivedAt } = item;
  const document = documentOf(incoming);
  const put = prepared(
    store.db,
    `INSERT INTO ${kind}s (id, name, search, ${kind}, created_at, changed_at, archived_at)
     VALUES (@id, @name, @search, @text, @createdAt, @changedAt, @archivedAt)
     ON CONFLICT (id) DO UPDATE SET name = excluded.name, search = excluded.search, ${kind} = excluded.${kind},
       changed_at = excluded.changed_at`,
  );
  put.run({
    id,
    name: document.name,
    search: documentWords(document),
    text: JSON.stringify({ ...document, id }),
    createdAt,
    changedAt,
    archivedAt,
  });
  if (incoming.kind === 'athlete') addMeasurings(store, id, incoming.item.measurings);
  putRecord(store, { kind, id }, { content: contentOf(incoming), at: changedAt });
}

/** Adds days that are missing; gives how many. */
function addMeasurings({ db }: Store, athleteId: string, measurings: readonly IncomingMeasuring[]): number {
  const add = prepared(
    db,
    'INSERT OR IGNORE INTO measurings (athlete_id, taken_on, measuring, saved_at) VALUES (?, ?, ?, ?)',
  );
  return measurings.filter(
    ({ measuring, savedAt }) =>
      add.run(athleteId, measuring.takenOn, JSON.stringify(measuring), savedAt).changes > 0,
  ).length;
}
