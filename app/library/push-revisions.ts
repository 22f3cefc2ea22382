import { leavesOfContent } from '../changes/record-content.ts';
import { openRevision } from '../store/revisions.ts';
import type { Store } from '../store/store.ts';
import { storeId } from '../store/store-identity.ts';
import type { Library } from './address.ts';
import type { LocalState } from './local-state.ts';
import type { Asking } from './server-record.ts';
import { transaction } from './transaction.ts';

/** Revisions in one transaction: each holds a whole fit. */
const BATCH = 40;

/** The copy of an athlete in a fit. */
const ATHLETE = /^seats\/\d+\/athlete$/;
/** What of a fit everybody reads who reads fits: as `is_setting` in the library says. */
const SETTING =
  /^(@archived|name|format|boat|heelDeg|water\/.*|seats\/\d+\/(side|kneels|locks|kneePad\/.*|rearRest\/.*|frontFoot\/.*|paddle\/.*))$/;

/** Whether a boatbuilder may read this field of a fit. */
export function isSetting(path: string): boolean {
  return SETTING.test(path);
}

/** Sends revisions that the library has not; one that is there stays as it is. Gives how many it has of them now. */
export async function pushRevisions(
  sql: Library,
  store: Store,
  { state, revisions }: { state: LocalState; revisions: readonly string[] },
): Promise<number> {
  let sent = 0;
  for (let i = 0; i < revisions.length; i += BATCH) {
    const batch = revisions.slice(i, i + BATCH);
    const rows = batch.flatMap((id) => rowOf(store, id) ?? []);
    const there = await transaction(sql, (tx) => sendRevisions(tx, rows));
    for (const id of there) state.know({ kind: 'revision', id }, 'there');
    sent += there.length;
  }
  return sent;
}

function rowOf(store: Store, id: string) {
  const opened = openRevision(store, id);
  const kept = store.db
    .prepare<[string], { fitId: string; answers: string | null }>(
      'SELECT fit_id AS fitId, answers FROM revisions LEFT JOIN revision_words ON revision_id = id WHERE id = ?',
    )
    .get(id);
  if (typeof opened === 'string' || !kept) return null;
  const { number, name, reason, savedAt } = opened.revision;
  const leaves = [...leavesOfContent('fit', { document: opened.fit })];
  const pick = (of: (path: string) => boolean) => Object.fromEntries(leaves.filter(([path]) => of(path)));
  return {
    id,
    fit_id: kept.fitId,
    number,
    saved_at: savedAt,
    settings: JSON.stringify(pick(isSetting)),
    sent_by: storeId(store),
    athletes: Object.entries(pick((path) => ATHLETE.test(path))).map(([path, value]) => ({ path, value })),
    name,
    reason,
    answers: kept.answers ?? '[]',
    private: JSON.stringify(pick((path) => !isSetting(path) && !ATHLETE.test(path))),
  };
}

/** Gives those that the library has now. */
async function sendRevisions(tx: Asking, rows: readonly { id: string }[]): Promise<string[]> {
  await tx`SELECT pg_advisory_xact_lock(hashtext('kneelwright changes'))`;
  // What belongs to a revision comes with it or not at all: only those that were not there get words and athletes.
  const added = await tx<{ id: string }[]>`
    INSERT INTO revisions (id, fit_id, number, saved_at, settings, sent_by)
    SELECT id, fit_id, number, saved_at, settings, sent_by
    FROM jsonb_to_recordset(${tx.json(rows as never)}) AS sent (id uuid, fit_id uuid, number int, saved_at text,
      settings text, sent_by text)
    WHERE EXISTS (SELECT FROM records WHERE kind = 'fit' AND records.id = fit_id)
    ON CONFLICT DO NOTHING RETURNING id`;
  const ids = added.map(({ id }) => id);
  const wanted = rows.map(({ id }) => id);
  const there = await tx<{ id: string }[]>`SELECT id FROM revisions WHERE id = ANY (${wanted}::uuid[])`;
  const all = there.map(({ id }) => id);
  if (ids.length === 0) return all;
  await tx`
    INSERT INTO revision_words (revision_id, name, reason, answers, private)
    SELECT id, name, reason, answers, private
    FROM jsonb_to_recordset(${tx.json(rows as never)}) AS sent (id uuid, name text, reason text, answers text, private text)
    WHERE id = ANY (${ids}::uuid[])`;
  await tx`
    INSERT INTO revision_athletes (revision_id, path, value)
    SELECT sent.id, athlete.path, athlete.value
    FROM jsonb_to_recordset(${tx.json(rows as never)}) AS sent (id uuid, athletes jsonb),
      jsonb_to_recordset(athletes) AS athlete (path text, value text)
    WHERE sent.id = ANY (${ids}::uuid[])`;
  await tx`SELECT pg_notify('kneelwright', 'changed')`;
  return all;
}
