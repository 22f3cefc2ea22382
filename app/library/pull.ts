import { type FieldVersion, sameVersion } from '../changes/record-state.ts';
import type { Incoming } from '../store/incoming.ts';
import { mergeIn } from '../store/merge.ts';
import type { MergeCounts } from '../store/merge-counts.ts';
import { openPhoto } from '../store/photos.ts';
import { type RecordRef, readVersions } from '../store/record-versions.ts';
import { atomically, type Store } from '../store/store.ts';
import { storeId } from '../store/store-identity.ts';
import type { Library } from './address.ts';
import { digestHere, type LocalState } from './local-state.ts';
import { type FitNews, listedItem, photoItem, readFits } from './read-server.ts';
import { type Asking, readRecords, type ServerRecord } from './server-record.ts';
import { transaction } from './transaction.ts';

/** Changes in one transaction: few enough that nobody who edits meanwhile waits for them. */
const BATCH = 40;

/** How what comes is imported. */
export interface Taking {
  readonly state: LocalState;
  /** Fits that somebody here is working on: what is new of them waits. */
  isHeld(fitId: string): boolean;
  /** Runs what writes the store, when it may be written. */
  write<T>(work: () => T): Promise<T>;
  /** Told what every batch brought. */
  took(counts: MergeCounts): void;
}

interface Change {
  readonly kind: RecordRef['kind'] | 'revision';
  readonly id: string;
  readonly owner: string | null;
  readonly sent_by: string | null;
  readonly n: string;
}

/** Fetches everything that is new, batch by batch: each is read in one transaction, and kept in one. Gives how much was new. */
export async function pull(sql: Library, store: Store, taking: Taking): Promise<number> {
  let fetched = 0;
  for (;;) {
    const cursor = taking.state.cursor();
    const batch = await transaction(
      sql,
      (tx) => readBatch(tx, { store, taking, cursor }),
      'ISOLATION LEVEL REPEATABLE READ',
    );
    if (batch.last === null) return fetched;
    const { last } = batch;
    await taking.write(() => takeIn(store, batch, taking));
    for (const id of batch.photos) taking.state.want({ kind: 'photo', id });
    for (const id of batch.held) taking.state.want({ kind: 'fit', id });
    taking.state.setCursor(last);
    fetched += batch.fetched;
    if (batch.isLast) return fetched;
  }
}

interface Batch {
  readonly items: Incoming[];
  readonly records: readonly ServerRecord[];
  readonly revisions: readonly string[];
  readonly photos: readonly string[];
  readonly held: readonly string[];
  readonly last: number | null;
  readonly isLast: boolean;
  readonly fetched: number;
}

async function readBatch(
  tx: Asking,
  { store, taking, cursor }: { store: Store; taking: Taking; cursor: number },
): Promise<Batch> {
  const changes = await tx<Change[]>`
    SELECT * FROM (
      (SELECT kind, id, owner, sent_by, n FROM records WHERE n > ${cursor} ORDER BY n LIMIT ${BATCH})
      UNION ALL (SELECT 'revision', id, fit_id, sent_by, n FROM revisions WHERE n > ${cursor} ORDER BY n LIMIT ${BATCH})
    ) AS news ORDER BY n LIMIT ${BATCH}`;
  const here = storeId(store);
  const news = changes.filter(({ sent_by }) => sent_by !== here);
  const of = (kind: Change['kind']) => news.filter((change) => change.kind === kind);
  const listed = await readRecords(
    tx,
    (['athlete', 'boat', 'paddle'] as const).flatMap((kind) => of(kind).map(({ id }) => ({ kind, id }))),
  );
  const all = fitNews(news);
  const held = all.filter(({ id }) => taking.isHeld(id)).map(({ id }) => id);
  const fits = await readFits(
    tx,
    all.filter(({ id }) => !held.includes(id)),
  );
  const items = [
    ...[...listed.values()].map(listedItem),
    ...fits.items.map((item) => ({ kind: 'fit', item }) as const),
  ];
  return {
    items,
    records: [...listed.values(), ...fits.records],
    revisions: fits.items.flatMap(({ revisions }) => revisions.map(({ id }) => id)),
    photos: of('photo').map(({ id }) => id),
    held,
    last: changes.length > 0 ? Number(changes.at(-1)!.n) : null,
    isLast: changes.length < BATCH,
    fetched: news.length,
  };
}

/** A fit comes with what is new of its revisions and trials, and these never without it. */
function fitNews(news: readonly Change[]): FitNews[] {
  const fits = new Map<string, { revisions: string[]; trials: string[] }>();
  const at = (id: string) => {
    const known = fits.get(id) ?? { revisions: [], trials: [] };
    fits.set(id, known);
    return known;
  };
  for (const { kind, id, owner } of news) {
    if (kind === 'fit') at(id);
    else if (kind === 'revision' && owner) at(owner).revisions.push(id);
    else if (kind === 'trial' && owner) at(owner).trials.push(id);
  }
  return [...fits].map(([id, parts]) => ({ id, ...parts }));
}

function takeIn(
  store: Store,
  { items, records, revisions }: Pick<Batch, 'items' | 'records' | 'revisions'>,
  { state, took }: Taking,
): void {
  const missing = records.filter(({ row }) => readVersions(store, row) === null);
  took(atomically(store, () => mergeIn(store, items)));
  for (const { row } of missing) if (readVersions(store, row)) state.came(row);
  for (const { row, state: theirs } of records) {
    const ref = { kind: row.kind, id: row.id };
    const ours = readVersions(store, ref);
    const isSame = ours !== null && sameFields(ours, theirs);
    state.know(ref, isSame ? digestHere(store, ref) : null);
  }
  for (const id of revisions) state.know({ kind: 'revision', id }, 'there');
}

function sameFields(
  a: { base: FieldVersion; fields: Readonly<Record<string, FieldVersion>> },
  b: { base: FieldVersion; fields: ReadonlyMap<string, FieldVersion> },
): boolean {
  const paths = Object.keys(a.fields);
  return (
    sameVersion(a.base, b.base) &&
    paths.length === b.fields.size &&
    paths.every((path) => b.fields.has(path) && sameVersion(a.fields[path]!, b.fields.get(path)!))
  );
}

/** Fetches fits that were held back, as soon as nobody works on them here. */
export async function pullHeld(sql: Library, store: Store, taking: Taking): Promise<void> {
  for (const id of taking.state.wanted('fit')) {
    if (taking.isHeld(id)) continue;
    const { items, records } = await transaction(
      sql,
      (tx) => readFits(tx, [{ id, revisions: 'all', trials: 'all' }]),
      'ISOLATION LEVEL REPEATABLE READ',
    );
    const revisions = items.flatMap((item) => item.revisions.map((one) => one.id));
    const incoming = items.map((item) => ({ kind: 'fit', item }) as const);
    await taking.write(() => takeIn(store, { items: incoming, records, revisions }, taking));
    taking.state.fetched({ kind: 'fit', id });
  }
}

/** Fetches photographs one by one, after everything else. A picture that is here already is not sent again. */
export async function pullPhotos(sql: Library, store: Store, taking: Taking): Promise<number> {
  let fetched = 0;
  for (const id of taking.state.wanted('photo')) {
    const record = (await readRecords(sql, [{ kind: 'photo', id }])).get(`photo ${id}`);
    const bytes = record ? (openPhoto(store, id)?.bytes ?? (await pictureOf(sql, record))) : null;
    const item = record ? photoItem(record, bytes) : null;
    const boat = record?.row.owner ?? null;
    const isPlaced =
      item?.kind === 'removed-photo' ||
      store.db.prepare('SELECT 1 FROM boats WHERE id = ?').get(boat) !== undefined;
    if (record && item && isPlaced) {
      await taking.write(() => takeIn(store, { items: [item], records: [record], revisions: [] }, taking));
      fetched += 1;
    }
    taking.state.fetched({ kind: 'photo', id });
  }
  return fetched;
}

async function pictureOf(sql: Asking, { row }: ServerRecord): Promise<Uint8Array | null> {
  if (!row.hash) return null;
  const [picture] = await sql<
    { bytes: Uint8Array }[]
  >`SELECT bytes FROM photographs WHERE hash = ${row.hash}`;
  return picture?.bytes ?? null;
}
