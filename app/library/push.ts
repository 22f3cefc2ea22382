import { createHash } from 'node:crypto';
import { contentOfLeaves } from '../changes/record-content.ts';
import { heldBack, mergeStates, type RecordState, sameVersion } from '../changes/record-state.ts';
import { checkedDocument, readLeaves } from '../store/record-rows.ts';
import { fieldsOf, type RecordRef, readVersions } from '../store/record-versions.ts';
import type { Store } from '../store/store.ts';
import { storeId } from '../store/store-identity.ts';
import type { Library } from './address.ts';
import { digestHere, type LocalState } from './local-state.ts';
import { pushRevisions } from './push-revisions.ts';
import { type Asking, fieldRows, readRecords, type ServerRecord, withoutFields } from './server-record.ts';
import { transaction } from './transaction.ts';

/** Records in one transaction. */
const BATCH = 60;

/** A record as it is here, at one instant. */
interface Local {
  readonly ref: RecordRef;
  readonly state: RecordState;
  readonly digest: string;
  readonly about: About;
}

interface About {
  readonly owner: string | null;
  readonly created: string;
  readonly changed: string;
  readonly mime: string | null;
}

/**
 * Sends everything that the library does not have; owners come before what belongs to them. Each batch is one transaction: what
 * is cut off is as if it had not begun, and what is sent twice changes nothing. Gives how many records and revisions went.
 */
export async function push(
  sql: Library,
  store: Store,
  { state, writes, not = [] }: { state: LocalState; writes: readonly string[]; not?: readonly RecordRef[] },
): Promise<number> {
  const { refs, revisions } = state.waiting(writes);
  const unseen = new Set(not.map(({ kind, id }) => `${kind} ${id}`));
  const queue = [...refs.values()].filter((ref) => !unseen.has(keyOf(ref)));
  let sent = 0;
  while (queue.length > 0) {
    const [{ kind }] = queue as [RecordRef];
    const length = queue.findIndex((ref, i) => ref.kind !== kind || i >= BATCH);
    const batch = queue.splice(0, length < 0 ? queue.length : length);
    const local = batch.flatMap((ref) => readLocal(store, ref) ?? []);
    await transaction(sql, (tx) => sendRecords(tx, store, local));
    for (const { ref, digest } of local) state.know(ref, digest);
    sent += local.length;
  }
  sent += await pushRevisions(sql, store, { state, revisions });
  return sent;
}

function readLocal(store: Store, ref: RecordRef): Local | null {
  const versions = readVersions(store, ref);
  const about = ABOUT[ref.kind](store, ref.id);
  const leaves = readLeaves(store, ref, 'checked');
  if (!versions || (!leaves && ref.kind !== 'photo')) return null;
  return {
    ref,
    state: { leaves: leaves ?? new Map(), ...fieldsOf(versions) },
    digest: digestHere(store, ref),
    about: about ?? { owner: null, created: '', changed: '', mime: null },
  };
}

function aboutFrom(sql: string) {
  return ({ db }: Store, id: string) => db.prepare<[string], About>(sql).get(id) ?? null;
}
const listed = (table: string) =>
  aboutFrom(
    `SELECT NULL AS owner, created_at AS created, changed_at AS changed, NULL AS mime FROM ${table} WHERE id = ?`,
  );
const ABOUT: Readonly<Record<RecordRef['kind'], (store: Store, id: string) => About | null>> = {
  athlete: listed('athletes'),
  boat: listed('boats'),
  paddle: listed('paddles'),
  fit: listed('fits'),
  photo: aboutFrom(
    'SELECT boat_id AS owner, added_at AS created, added_at AS changed, mime FROM boat_photos WHERE id = ?',
  ),
  trial: aboutFrom(
    'SELECT fit_id AS owner, created_at AS created, changed_at AS changed, NULL AS mime FROM trials WHERE id = ?',
  ),
};

async function sendRecords(tx: Asking, store: Store, locals: readonly Local[]): Promise<void> {
  // One at a time: so that changes are numbered in the order in which they are there to be seen.
  await tx`SELECT pg_advisory_xact_lock(hashtext('kneelwright changes'))`;
  const there = await readRecords(
    tx,
    locals.map(({ ref }) => ref),
  );
  const hashes = await sendPictures(tx, store, locals);
  const merged = locals.map((local) => mergeInto(local, there.get(keyOf(local.ref)) ?? null));
  const changed = merged.filter(({ isNews }) => isNews);
  if (changed.length === 0) return;
  const rows = changed.map(({ local: { ref, about }, state, known, isOurs }) => ({
    ...ref,
    ...about,
    changed: known && known.row.changed_at > about.changed ? known.row.changed_at : about.changed,
    owner: about.owner ?? known?.row.owner ?? null,
    mime: about.mime ?? known?.row.mime ?? null,
    hash: hashes.get(ref.id) ?? known?.row.hash ?? null,
    base_seen: state.base.seen,
    base_writes: state.base.writes,
    sent_by: isOurs ? storeId(store) : null,
  }));
  await tx`
    INSERT INTO records (kind, id, owner, created_at, changed_at, mime, hash, base_seen, base_writes, sent_by)
    SELECT kind, id, owner, created, changed, mime, hash, base_seen, base_writes, sent_by
    FROM jsonb_to_recordset(${tx.json(rows as never)}) AS sent (kind text, id uuid, owner uuid, created text,
      changed text, mime text, hash text, base_seen jsonb, base_writes jsonb, sent_by text)
    ON CONFLICT (kind, id) DO UPDATE SET owner = excluded.owner, changed_at = excluded.changed_at, mime = excluded.mime,
      hash = excluded.hash, base_seen = excluded.base_seen, base_writes = excluded.base_writes,
      sent_by = excluded.sent_by, n = nextval('change_number')`;
  const fields = changed.flatMap(({ local, state, known }) =>
    fieldRows(local.ref, state, known?.state ?? null),
  );
  await tx`
    INSERT INTO fields (kind, id, path, value, seen, writes, others)
    SELECT kind, id, path, value, nullif(seen, 'null'), nullif(writes, 'null'), others
    FROM jsonb_to_recordset(${tx.json(fields as never)}) AS sent (kind text, id uuid, path text, value text,
      seen jsonb, writes jsonb, others jsonb)
    ON CONFLICT (kind, id, path) DO UPDATE SET value = excluded.value, seen = excluded.seen, writes = excluded.writes,
      others = excluded.others`;
  await tx`SELECT pg_notify('kneelwright', 'changed')`;
}

interface Merged {
  readonly local: Local;
  readonly known: ServerRecord | null;
  readonly state: RecordState;
  /** Whether the library learns anything from it. */
  readonly isNews: boolean;
  /** Whether this store has it just so already. */
  readonly isOurs: boolean;
}

function mergeInto(local: Local, known: ServerRecord | null): Merged {
  if (!known) return { local, known, state: local.state, isNews: true, isOurs: true };
  const ours = withoutFields(local.state, known.hidden);
  const both = mergeStates(known.state, ours);
  const isSound =
    local.ref.kind === 'photo' ||
    checkedDocument(
      local.ref.kind,
      withEmptySeats(local.ref, contentOfLeaves(local.ref.kind, both.leaves).document),
    );
  const state = isSound ? both : heldBack(known.state, both);
  const differs = (one: RecordState) => fieldRows(local.ref, state, one).length > 0;
  const isNews = !sameVersion(state.base, known.state.base) || differs(known.state);
  return { local, known, state, isNews, isOurs: known.hidden.size === 0 && !differs(ours) };
}

/** A seat whose athlete may not be read here stands empty. */
export function withEmptySeats({ kind }: Pick<RecordRef, 'kind'>, document: object | null): object | null {
  const { seats } = (document ?? {}) as { seats?: readonly object[] };
  if (kind !== 'fit' || !seats) return document;
  return { ...document, seats: seats.map((seat) => ({ athlete: null, ...seat })) };
}

/** Sends the pictures of photographs that the library has not; gives the hash of each. */
async function sendPictures(
  tx: Asking,
  { db }: Store,
  locals: readonly Local[],
): Promise<Map<string, string>> {
  const hashes = new Map<string, string>();
  for (const { ref } of locals) {
    if (ref.kind !== 'photo') continue;
    const bytes = db
      .prepare<[string], Buffer>('SELECT bytes FROM boat_photos WHERE id = ?')
      .pluck()
      .get(ref.id);
    if (!bytes) continue;
    const [sum] = await tx<{ hash: string; there: boolean }[]>`
      SELECT hash, EXISTS (SELECT FROM photographs WHERE photographs.hash = sent.hash) AS there
      FROM (SELECT ${hashOf(bytes)}::text AS hash) AS sent`;
    if (!sum!.there)
      await tx`INSERT INTO photographs (hash, bytes) VALUES (${sum!.hash}, ${bytes}) ON CONFLICT DO NOTHING`;
    hashes.set(ref.id, sum!.hash);
  }
  return hashes;
}

function keyOf({ kind, id }: RecordRef): string {
  return `${kind} ${id}`;
}

function hashOf(bytes: Uint8Array): string {
  return createHash('sha256').update(bytes).digest('hex');
}
