import { rmSync } from 'node:fs';
import { join } from 'node:path';
import type { CallOutput } from '../contract/contract.ts';
import { type Library, type LibraryAddress, openLibrary } from '../library/address.ts';
import { type Caller, contactLibrary } from '../library/contact.ts';
import { LIBRARY_FILE, type LocalState, openLocalState } from '../library/local-state.ts';
import { forgetLogin, keepLogin, readLogin } from '../library/login-file.ts';
import { problemOf } from '../library/problem.ts';
import { faultForLog } from '../shell/log-file.ts';
import { erasedButHere } from '../store/erased-people.ts';
import type { RecordRef } from '../store/record-versions.ts';
import { now } from '../store/store.ts';
import type { Program } from './program.ts';
import { eraseEntry } from './safekeeping.ts';

type State = CallOutput<'library.state'>;

/** What this computer shares with its club. Without a library it does nothing at all. */
export interface LibraryLink {
  state(): State;
  start(program: Program): void;
  /** Shares from now on with the library at this address. */
  join(address: LibraryAddress): Promise<void>;
  /** Calls now; a call that is under way is waited for. */
  callNow(): Promise<void>;
  /** Ends the sharing. Gives what came from others: it is here still. */
  leave(): Promise<readonly RecordRef[]>;
  /** Asks the library something with this computer's login; null where nothing is shared. */
  ask<T>(question: (sql: Library) => Promise<T>): Promise<T | null>;
  /** Notes that data of athletes went into a file: the library's audit hears of it with the next call. */
  exported(athleteIds: readonly string[]): void;
  /** Which fit is open here. */
  open(fitId: string | null): Promise<void>;
  stop(): void;
}

/** Time between two looks at whether something waits to be sent, milliseconds. */
const LOOK_MS = 10_000;
/** Longest time between two calls, milliseconds. */
const CALL_AT_LEAST_MS = 120_000;
/** Delay of a call that others' changes cause, milliseconds: changes often come several at once. */
const SOON_MS = 300;

const NOBODY: State = {
  joined: null,
  waiting: 0,
  sharedAt: null,
  isCalling: false,
  problem: null,
  arrivals: 0,
  present: [],
  held: [],
  kept: [],
};

/** Everything that is open while this computer shares. */
interface Link {
  readonly program: Program;
  readonly address: LibraryAddress;
  sql: Library;
  /** A connection that only hears of news. */
  ears: Library | null;
  heardSince: number;
  readonly local: LocalState;
  caller: Caller | null;
  isCalling: boolean;
  problem: State['problem'];
  arrivals: number;
  present: State['present'];
  openFit: string | null;
  lastCall: number;
  /** This computer shares no more, or the program ends. */
  isOver: boolean;
  under: Promise<void>;
}

export function createLibraryLink(): LibraryLink {
  let program: Program | null = null;
  let link: Link | null = null;
  let looking: NodeJS.Timeout | null = null;

  const begin = (address: LibraryAddress) => {
    link = openLink(program!, address);
    const current = link;
    looking = setInterval(() => void look(current), LOOK_MS);
    looking.unref();
    void queue(current);
  };
  const end = async () => {
    if (looking) clearInterval(looking);
    const ended = link;
    link = null;
    if (!ended) return;
    await closeLink(ended);
  };
  return {
    state: () => (link ? stateOf(link) : NOBODY),
    start(opened) {
      program = opened;
      const address = readLogin(opened.store.folder, opened.shell.secrets);
      if (address) begin(address);
    },
    async join(address) {
      await end();
      keepLogin(program!.store.folder, address, program!.shell.secrets);
      begin(address);
      await link!.under;
    },
    async callNow() {
      if (link) await queue(link);
    },
    async leave() {
      const came = link?.local.listCame() ?? [];
      await end();
      forgetLibrary(program!.store.folder);
      return came;
    },
    async ask(question) {
      return link && askOnce(link.address, question);
    },
    exported(athleteIds) {
      if (link && athleteIds.length > 0) noteExport(link.local, athleteIds);
    },
    async open(fitId) {
      if (!link || link.openFit === fitId) return;
      const closed = link.openFit;
      link.openFit = fitId;
      const current = link;
      if (closed && link.local.wanted('fit').includes(closed)) void queue(link);
      current.under = current.under.then(() => tellOpening(current).catch(() => {}));
    },
    stop() {
      void end();
    },
  };
}

/** Ends a link: its connections at once, its own files once the call under way is over. */
async function closeLink(link: Link): Promise<void> {
  link.isOver = true;
  await Promise.allSettled([link.sql.end({ timeout: 1 }), link.ears?.end({ timeout: 0 })]);
  await link.under;
  link.local.close();
}

/** Removes from this computer how it shares, and what it knows of its library. */
function forgetLibrary(folder: string): void {
  forgetLogin(folder);
  for (const ending of ['', '-wal', '-shm', '-journal'])
    rmSync(join(folder, LIBRARY_FILE + ending), { force: true });
}

/** Asks one question over a connection of its own. */
async function askOnce<T>(address: LibraryAddress, question: (sql: Library) => Promise<T>): Promise<T> {
  const sql = openLibrary(address);
  try {
    return await question(sql);
  } finally {
    await sql.end({ timeout: 1 });
  }
}

function openLink(program: Program, address: LibraryAddress): Link {
  return {
    program,
    address,
    sql: openLibrary(address),
    ears: null,
    heardSince: 0,
    local: openLocalState(program.store),
    caller: null,
    isCalling: false,
    problem: null,
    arrivals: 0,
    present: [],
    openFit: null,
    lastCall: 0,
    isOver: false,
    under: Promise.resolve(),
  };
}

/** Time after which a listening connection is replaced, milliseconds: a silent loss of connection is not noticed. */
const LISTEN_MS = 600_000;

/** Others' changes are told by the server as soon as they are there. Without that, news comes with the next call. */
function listen(link: Link): void {
  if (link.ears && performance.now() - link.heardSince < LISTEN_MS) return;
  void link.ears?.end({ timeout: 0 });
  // The driver listens again once, and gives up where the server is still away: a call comes soon, and listens anew.
  const lost = () => {
    if (link.ears !== ears) return;
    link.heardSince = Number.NEGATIVE_INFINITY;
    link.lastCall = Number.NEGATIVE_INFINITY;
  };
  const ears = openLibrary(link.address, { hears: true, lost });
  link.ears = ears;
  link.heardSince = performance.now();
  let soon: NodeJS.Timeout | null = null;
  const later = () => {
    if (soon) clearTimeout(soon);
    soon = setTimeout(() => void queue(link), SOON_MS);
    soon.unref();
  };
  const heard = (what: string) => (what === OPENED ? void hearPresence(link).catch(() => {}) : later());
  // News between the last call and now told nobody here: one more call brings it.
  ears.listen('kneelwright', heard, later).catch(() => {
    link.ears = null;
  });
}

async function look(link: Link): Promise<void> {
  if (link.isCalling) return;
  const isDue = performance.now() - link.lastCall > CALL_AT_LEAST_MS;
  if (isDue || (link.problem === null && waitingOf(link) > 0)) await queue(link);
}

/** One call after the other. */
function queue(link: Link): Promise<void> {
  link.under = link.under.then(() => callOnce(link));
  return link.under;
}

async function callOnce(link: Link): Promise<void> {
  const { program, local } = link;
  if (link.isOver) return;
  link.isCalling = true;
  // A connection of its own: whatever became of the last one is no matter.
  const before = link.sql;
  link.sql = openLibrary(link.address);
  void before.end({ timeout: 0 }).catch(() => {});
  link.lastCall = performance.now();
  try {
    const contact = await contactLibrary(link.sql, program.store, {
      state: local,
      isHeld: (id) => id === link.openFit,
      write: (work) => written(program, work),
      took(counts) {
        const { refusedErased: _, erasedHere: __, ...kinds } = counts;
        if (Object.values(kinds).some(({ added, updated, conflicts }) => added + updated + conflicts > 0))
          link.arrivals += 1;
      },
      async eraseErased() {
        for (const entry of erasedButHere(program.store.db))
          await program.turn.alone(() => eraseEntry(program, entry, 'full-names'));
        link.arrivals += 1;
      },
      async takeAway(athlete) {
        await program.turn.alone(() => eraseEntry(program, { ...athlete, takenAway: true }, 'none'));
        link.arrivals += 1;
      },
    });
    link.problem = contact ? null : 'gone';
    if (contact) {
      link.caller = contact;
      local.note(
        'caller',
        JSON.stringify({ club: contact.club, person: contact.person, role: contact.role }),
      );
      local.note('writes', JSON.stringify(contact.writes));
      local.note(KEPT, JSON.stringify(contact.kept));
      local.note('sharedAt', now(program.store));
      await tellExports(link);
      await tellPresence(link);
      listen(link);
    }
  } catch (error) {
    link.problem = problemOf(error);
    if (link.problem === 'failed') program.log.write(`library: ${faultForLog(error)}`);
  } finally {
    link.isCalling = false;
  }
}

/** Writes the store like every other call: it waits its turn, and notices a file that was replaced. */
function written<T>({ writeLock, store }: Program, work: () => T): Promise<T> {
  return writeLock.alone(async () => {
    store.safeguard.look();
    const done = work();
    store.safeguard.looked();
    return done;
  });
}

const EXPORTS = 'exports';
/** Athletes whom this person may no longer see, kept for changes that could not be sent. */
const KEPT = 'kept';

function exportsIn(local: LocalState): string[] {
  return JSON.parse(local.noted(EXPORTS) ?? '[]') as string[];
}

function noteExport(local: LocalState, athleteIds: readonly string[]): void {
  local.note(EXPORTS, JSON.stringify([...new Set([...exportsIn(local), ...athleteIds])]));
}

async function tellExports({ sql, local }: Link): Promise<void> {
  const told = exportsIn(local);
  if (told.length === 0) return;
  await sql`INSERT INTO audit (what, athletes) VALUES ('export', ${told}::uuid[])`;
  local.note(EXPORTS, JSON.stringify(exportsIn(local).filter((id) => !told.includes(id))));
}

/** The notification that somebody has opened or left a fit. */
const OPENED = 'opened';

/** Tells the library which fit is open here now, and notifies the other computers. */
async function tellOpening(link: Link): Promise<void> {
  await tellPresence(link);
  await link.sql`SELECT pg_notify('kneelwright', ${OPENED})`;
}

async function tellPresence(link: Link): Promise<void> {
  const { sql, openFit } = link;
  await sql`DELETE FROM presence WHERE login = session_user AND fit_id IS DISTINCT FROM ${openFit}`;
  if (openFit)
    await sql`INSERT INTO presence (fit_id) SELECT ${openFit}::uuid ON CONFLICT (login, fit_id) DO UPDATE SET at = now()`;
  await hearPresence(link);
}

async function hearPresence(link: Link): Promise<void> {
  const others = await link.sql<
    State['present'][number][]
  >`SELECT fit_id AS "fitId", name FROM who_is_there()`;
  link.present = others.map(({ fitId, name }) => ({ fitId, name }));
}

/** Those who are kept, with their names; whoever was removed by hand meanwhile is not. */
function keptHere({ program, local }: Link): State['kept'] {
  const ids = JSON.parse(local.noted(KEPT) ?? '[]') as string[];
  const name = program.store.db.prepare<[string], string>('SELECT name FROM athletes WHERE id = ?').pluck();
  return ids.flatMap((id) => {
    const known = name.get(id);
    return known === undefined ? [] : [{ id, name: known }];
  });
}

function waitingOf({ local, caller }: Link): number {
  const known = local.noted('writes');
  const writes = caller?.writes ?? (known ? (JSON.parse(known) as string[]) : []);
  const { refs, revisions } = local.waiting(writes);
  return refs.size + revisions.length;
}

function stateOf(link: Link): State {
  const { local, address, isCalling, problem, arrivals, present } = link;
  const known = link.caller ?? JSON.parse(local.noted('caller') ?? '{"club":"","person":"","role":"viewer"}');
  return {
    joined: { club: known.club, person: known.person, role: known.role, host: address.host },
    waiting: waitingOf(link),
    sharedAt: local.noted('sharedAt'),
    isCalling,
    problem,
    arrivals,
    present,
    held: local.wanted('fit'),
    kept: keptHere(link),
  };
}
