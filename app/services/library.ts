import { keysOf, recordOf } from '../../core/units/entries.ts';
import type { CallOutput, ParsedInput } from '../contract/contract.ts';
import type { CallResult } from '../contract/result.ts';
import { type Library, openLibrary } from '../library/address.ts';
import { accept, readCode } from '../library/invitation.ts';
import { memberText, problemOf } from '../library/problem.ts';
import { errorCode } from '../shell/error-code.ts';
import { forgetRecords } from '../store/forget-records.ts';
import { done, missing, type Program, refused } from './program.ts';
import { eraseEntry } from './safekeeping.ts';
import { SENTENCES } from './sentences.ts';

type Preview = CallOutput<'library.preview'>;
type State = Promise<CallResult<CallOutput<'library.state'>>>;
type Role = Extract<Preview, { kind: 'ready' }>['role'];

/** Tries an invitation without using it, and says what joining would share. */
export async function previewLibrary(
  { store }: Program,
  { code }: ParsedInput<'library.preview'>,
): Promise<CallResult<Preview>> {
  const invited = readCode(code);
  if (!invited) return done({ kind: 'unreadable' });
  const sql = openLibrary(invited);
  try {
    const [known] = await sql<{ role: Role | null; writes: string[] }[]>`
      SELECT my_role() AS role, ARRAY(SELECT kind FROM unnest(ARRAY['athlete', 'boat', 'paddle', 'photo', 'fit', 'trial']) AS kind
        WHERE writes_kind(kind)) AS writes`;
    if (!known?.role) return done({ kind: 'used' });
    return done({
      kind: 'ready',
      host: invited.host,
      role: known.role,
      shares: sharesOf(store, known.writes),
    });
  } catch (error) {
    const problem = problemOf(error);
    if (problem === 'gone') return done({ kind: 'used' });
    return done({ kind: problem === 'later-program' ? 'failed' : problem });
  } finally {
    await sql.end({ timeout: 0 });
  }
}

const TABLES = {
  athletes: ['athlete', 'athletes'],
  boats: ['boat', 'boats'],
  paddles: ['paddle', 'paddles'],
  fits: ['fit', 'fits'],
  revisions: ['fit', 'revisions'],
  trials: ['trial', 'trials'],
  photos: ['photo', 'boat_photos'],
} as const;

function sharesOf({ db }: Program['store'], writes: readonly string[]) {
  return recordOf(keysOf(TABLES), (name) => {
    const [kind, table] = TABLES[name];
    const count = db.prepare<[], number>(`SELECT count(*) FROM ${table}`).pluck().get()!;
    return writes.includes(kind) ? count : 0;
  });
}

/** Uses an invitation; from then on this computer shares. */
export async function joinLibrary({ library }: Program, { code }: ParsedInput<'library.join'>): State {
  const invited = readCode(code);
  const message = SENTENCES['no-invitation'];
  if (!invited) return refused('bad-input', message, [{ path: 'code', message }]);
  try {
    await library.join(await accept(invited));
  } catch (error) {
    const problem = problemOf(error);
    return refused(
      problem === 'gone' ? 'not-allowed' : 'not-found',
      memberText(problem === 'gone' ? 'used' : problem),
    );
  }
  return done(library.state());
}

/** Calls the library now. */
export async function callLibrary({ library }: Program): State {
  await library.callNow();
  return done(library.state());
}

/** Shares no more. What came from others stays here, or goes. */
export async function leaveLibrary(program: Program, { remove }: ParsedInput<'library.leave'>): State {
  const { library, store, turn, work } = program;
  // A call that is under way may wait for its turn: it ends first.
  const came = await library.leave();
  return turn.alone(async () => {
    if (remove) await work.run({ what: 'erase', of: came.length, mustEnd: true }, forgetRecords(store, came));
    return done(library.state());
  });
}

/** Removes an athlete whom this person may no longer see, with changes that could not be sent. */
export function discard(program: Program, { athleteId }: ParsedInput<'library.discard'>): State {
  const { library, turn } = program;
  return turn.alone(async () => {
    const athlete = library.state().kept.find(({ id }) => id === athleteId);
    if (!athlete) return missing('athlete');
    await eraseEntry(program, { ...athlete, takenAway: true }, 'none');
    return done(library.state());
  });
}

type Groups = Promise<CallResult<CallOutput<'library.groups'>>>;

/** The groups of the club, for the head coach; nobody else is told. */
export async function listGroups({ library }: Program): Groups {
  return groupsAfter(library, async () => {});
}

/** Makes a group, for the head coach. */
export async function makeGroup({ library }: Program, { name }: ParsedInput<'library.makeGroup'>): Groups {
  return groupsAfter(library, async (sql) => {
    await sql`SELECT make_group(${name})`;
  });
}

/** Puts an athlete into a group or takes one out, for the head coach. */
export async function setInGroup(
  { library }: Program,
  { groupId, athleteId, isIn }: ParsedInput<'library.setInGroup'>,
): Groups {
  return groupsAfter(library, async (sql) => {
    await sql`SELECT set_in_group(${groupId}::uuid, ${athleteId}::uuid, ${isIn})`;
  });
}

async function groupsAfter(library: Program['library'], change: (sql: Library) => Promise<void>): Groups {
  try {
    const groups = await library.ask(async (sql) => {
      await change(sql);
      return await sql<CallOutput<'library.groups'>['groups']>`SELECT * FROM list_groups()`;
    });
    return done({ groups: [...(groups ?? [])] });
  } catch (error) {
    if (errorCode(error) === NOT_HEAD_COACH) return done({ groups: [] });
    return refused('not-found', memberText(problemOf(error)));
  }
}

/** What the library says to whoever is no head coach. */
const NOT_HEAD_COACH = 'KW004';

/** Says which fit is open here. */
export async function openInLibrary({ library }: Program, { fitId }: ParsedInput<'library.open'>): State {
  await library.open(fitId);
  return done(library.state());
}
