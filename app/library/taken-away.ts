import { errorCode } from '../shell/error-code.ts';
import type { RecordRef } from '../store/record-versions.ts';
import type { Store } from '../store/store.ts';
import type { Library } from './address.ts';
import type { LocalState } from './local-state.ts';

/** Records of the library that are here and that the caller may no longer see. */
export interface TakenAway {
  /** Athletes who go from this computer. */
  readonly go: readonly { id: string; name: string }[];
  /** Athletes who stay until they are removed by hand: changes made here could not be sent any more. */
  readonly stay: readonly string[];
  /** Every record that may no longer be sent. */
  readonly refs: readonly RecordRef[];
}

const NOTHING: TakenAway = { go: [], stay: [], refs: [] };
/** The library is of a version that cannot say it. */
const NOT_KNOWN_THERE = '42883';
const KINDS = ['athlete', 'fit', 'trial', 'photo'] as const;

/**
 * Finds what this computer has of records that are in the library and that its person may no longer see. Who has a fit open
 * here, or changes that were not sent, stays.
 */
export async function findTakenAway(
  sql: Library,
  store: Store,
  {
    state,
    writes,
    isHeld,
  }: { state: LocalState; writes: readonly string[]; isHeld: (fitId: string) => boolean },
): Promise<TakenAway> {
  const refs: RecordRef[] = [];
  for (const kind of KINDS) {
    const ids = state.shared(kind);
    if (ids.length === 0) continue;
    try {
      const hidden = await sql<{ id: string }[]>`
        SELECT id FROM are_here(${kind}, ${ids}::uuid[]) AS here (id)
        EXCEPT SELECT id FROM records WHERE kind = ${kind} AND id = ANY (${ids}::uuid[])`;
      refs.push(...hidden.map(({ id }) => ({ kind, id })));
    } catch (error) {
      if (errorCode(error) === NOT_KNOWN_THERE) return NOTHING;
      throw error;
    }
  }
  if (refs.length === 0) return NOTHING;
  const unsent = new Set(unsentOf(store, state, { writes, refs }));
  const athletes = refs.flatMap(({ kind, id }) => {
    const name = kind === 'athlete' ? nameOf(store, id) : null;
    return name === null ? [] : [{ id, name, fits: fitsWith(store, id) }];
  });
  const stays = ({ id, fits }: (typeof athletes)[number]) =>
    unsent.has(id) || fits.some((one) => unsent.has(one));
  const go = athletes.filter((one) => !stays(one) && !one.fits.some(isHeld));
  return {
    go: go.map(({ id, name }) => ({ id, name })),
    stay: athletes.filter(stays).map(({ id }) => id),
    refs,
  };
}

/** Every fit in which an athlete kneels or knelt. */
export function fitsWith({ db }: Pick<Store, 'db'>, athleteId: string): string[] {
  return db
    .prepare<[string, string], string>(
      `SELECT id FROM fits WHERE instr(athlete_ids, ?)
       UNION SELECT fit_id FROM revisions JOIN revision_words ON revision_id = id WHERE instr(revision_words.athlete_ids, ?)`,
    )
    .pluck()
    .all(athleteId, athleteId);
}

/** Athletes and fits among these records with something that the library has not. */
function unsentOf(
  { db }: Store,
  state: LocalState,
  { writes, refs }: { writes: readonly string[]; refs: readonly RecordRef[] },
): string[] {
  const waiting = state.waiting(writes);
  const gone = new Set(refs.map(({ id }) => id));
  const owner = (sql: string, id: string) => db.prepare<[string], string>(sql).pluck().get(id) ?? '';
  const fitsOfRevisions = waiting.revisions.map((id) =>
    owner('SELECT fit_id FROM revisions WHERE id = ?', id),
  );
  const ofRecords = [...waiting.refs.values()].map(({ kind, id }) =>
    kind === 'trial' ? owner('SELECT fit_id FROM trials WHERE id = ?', id) : id,
  );
  return [...fitsOfRevisions, ...ofRecords].filter((id) => gone.has(id));
}

function nameOf({ db }: Store, id: string): string | null {
  return db.prepare<[string], string>('SELECT name FROM athletes WHERE id = ?').pluck().get(id) ?? null;
}
