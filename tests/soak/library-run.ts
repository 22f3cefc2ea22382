import { chmodSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Library, type LibraryAddress, openLibrary } from '../../app/library/address.ts';
import { initLibrary, invite, type PersonRole, putInGroup } from '../../app/library/club.ts';
import { accept } from '../../app/library/invitation.ts';
import { type LocalServer, startLocalServer } from '../../app/library/local-server.ts';
import { migrateLibrary } from '../../app/library/migrate-library.ts';
import { eraseEverywhere } from '../../app/store/erase-everywhere.ts';
import { closeStore, openStore } from '../../app/store/open-store.ts';
import { athletes } from '../../app/store/roster.ts';
import type { Store } from '../../app/store/store.ts';
import { contentOf } from '../app/exchange.ts';
import { putNewServer } from '../app/library/new-server.ts';
import { random32 } from '../random32.ts';
import { killedCall } from './library-kill.ts';
import { callOnce } from './library-laptop.ts';
import { wrongReaders } from './library-readers.ts';
import { decideOne, editOne, waitingValues } from './merges.ts';
import { onlooker } from './onlooker.ts';
import { type ShakyNetwork, shakyNetwork } from './shaky-network.ts';

/** What a run found. */
export interface LibraryResult {
  readonly stores: number;
  readonly changes: number;
  readonly calls: number;
  /** Calls that ended before their end: the network cut, the laptop killed, the server killed. */
  readonly cutCalls: number;
  readonly killedLaptops: number;
  readonly killedServers: number;
  readonly erased: number;
  /** Acknowledged field edits that no later one replaced, and that neither stand nor are shown as a conflict. */
  readonly lostFields: number;
  /** Stores that may see everything, and whose content differs from the first one's at the end. */
  readonly unequalStores: number;
  /** Rows that somebody could read, or has on a laptop, without the right to. */
  readonly wrongReaders: number;
  /** From the last edit until nobody had anything to send or to fetch. */
  readonly secondsToConverge: number;
}

export interface LibraryRun {
  readonly stores: number;
  readonly changes: number;
  readonly seed: number;
  readonly cuts: number;
  readonly laptopKills: number;
  readonly serverKills: number;
  readonly erasures: number;
  readonly report?: (line: string) => void;
}

/** The version that a library has at first. */
const OLDER = 4;
const DAY_MS = 86_400_000;
/** How far a laptop's clock may be off, days either way. */
const CLOCK_OFF_DAYS = 40;

/** A laptop: its store, whose it is, and whether it sees everything. */
export interface Laptop {
  store: Store;
  readonly folder: string;
  readonly address: LibraryAddress;
  readonly role: PersonRole;
  readonly seesAll: boolean;
}

/** The first sees everything; every fourth is a boatbuilder's, a viewer's or that of a coach with one group. */
function guestOf(i: number): { role: PersonRole; groups: string[] } {
  if (i === 0) return { role: 'head-coach', groups: [] };
  if (i % 4 === 1) return { role: 'coach', groups: ['Juniors'] };
  if (i % 8 === 6) return { role: 'boatbuilder', groups: [] };
  if (i % 8 === 4) return { role: 'viewer', groups: ['Juniors'] };
  return { role: 'coach', groups: ['Everyone'] };
}

/** Edits laptops at random, lets them call now and then, cuts and kills, and holds what they know in the end against an onlooker's notes. */
export async function libraryAtRandom(run: LibraryRun): Promise<LibraryResult> {
  const root = mkdtempSync(join(tmpdir(), 'kneelwright-library-'));
  chmodSync(root, 0o711);
  await putNewServer(join(root, 'server'));
  const server = await startLocalServer(join(root, 'server'), { safe: false });
  const network = await shakyNetwork(server.address.port);
  const owner = openLibrary(server.address);
  const laptops: Laptop[] = [];
  try {
    // As an older program made it; it is brought up to date while laptops go on.
    await migrateLibrary(owner, OLDER);
    await owner`INSERT INTO kneelwright.club (name) VALUES ('Club at random')`;
    await owner`INSERT INTO kneelwright.groups (name, everyone) VALUES ('Everyone', true)`;
    for (let i = 0; i < run.stores; i++)
      laptops.push(await newLaptop(i, { root, owner, server, network, run }));
    return await worked(run, { laptops, server, network, owner });
  } finally {
    for (const { store } of laptops) closeStore(store);
    await owner.end({ timeout: 0 });
    await network.close();
    await server.stop();
    rmSync(root, { recursive: true, force: true });
  }
}

async function newLaptop(
  i: number,
  { root, owner, server, network, run }: Omit<Club, 'laptops'> & { root: string; run: LibraryRun },
): Promise<Laptop> {
  const guest = guestOf(i);
  const invited = await invite(owner, server.address, { name: `Person ${i}`, ...guest });
  const address = { ...(await accept(invited.address)), port: network.port };
  const folder = join(root, `laptop-${i}`);
  const seesAll = guest.role === 'head-coach' || guest.groups.includes('Everyone');
  return { store: openedStore(folder, run.seed + i), folder, address, role: guest.role, seesAll };
}

/** Opens a laptop's store with a clock that is wrong and jumps. */
export function openedStore(folder: string, seed: number): Store {
  const random = random32(seed);
  let now = Date.UTC(2026, 2, 2) + (2 * random() - 1) * CLOCK_OFF_DAYS * DAY_MS;
  const opening = openStore(folder, () => {
    now += 1000 + 1e6 * random();
    return Math.round(now);
  });
  if (opening.kind === 'refused') throw new Error(opening.refusal.code);
  opening.store.db.pragma('synchronous = OFF');
  return opening.store;
}

interface Club {
  readonly laptops: Laptop[];
  readonly server: LocalServer;
  readonly network: ShakyNetwork;
  readonly owner: Library;
}

async function worked(run: LibraryRun, club: Club): Promise<LibraryResult> {
  const random = random32(run.seed);
  const { laptops } = club;
  const library = laptops.length;
  const watch = onlooker(laptops.length + 1);
  const gone = new Set<string>();
  const count = { calls: 0, cutCalls: 0, killedLaptops: 0, killedServers: 0, erased: 0 };
  const between = Math.max(1, Math.floor(run.changes / (laptops.length * 6)));
  const dueAt = (times: number, offset: number) =>
    new Set(Array.from({ length: times }, (_, k) => Math.floor(((k + offset) * run.changes) / times)));
  const due = {
    cuts: run.cuts,
    laptopKills: run.laptopKills,
    serverKills: run.serverKills,
    erasures: dueAt(run.erasures, 0.4),
  };
  let erasuresDue = 0;
  const heardAll = (i: number) => {
    watch.met(i, library);
    watch.met(library, i);
  };
  const callNow = async (i: number) => {
    count.calls += 1;
    const trouble = troubleOf(due, random);
    const laptop = laptops[i]!;
    try {
      if (trouble === 'kill') {
        count.killedLaptops += 1;
        if (
          !(await killedCall(laptop, { random, reopen: () => openedStore(laptop.folder, run.seed + 7 * i) }))
        )
          throw new Error('killed');
      } else {
        if (trouble === 'cut') club.network.cutAfter(Math.floor(1500 + 40_000 * random() ** 4));
        const calling = callOnce(laptop.store, laptop.address);
        if (trouble === 'server') {
          count.killedServers += 1;
          await Promise.allSettled([calling, club.server.crash()]);
        }
        await calling;
      }
      heardAll(i);
    } catch (error) {
      if (!trouble) throw error;
      count.cutCalls += 1;
      watch.heard(i, library, has(fieldsOf(laptop.store)));
      watch.heard(library, i, has(await fieldsOfLibrary(club)));
    } finally {
      club.network.cutAfter(null);
    }
  };
  for (let change = 0; change < run.changes; change++) {
    const i = Math.floor(random() * laptops.length);
    const { store, role } = laptops[i]!;
    if (due.erasures.has(change)) erasuresDue += 1;
    const erasedNow = erasuresDue > 0 ? eraseOne(laptops[0]!.store, gone, random) : 0;
    erasuresDue -= erasedNow;
    count.erased += erasedNow;
    if (role === 'viewer' || role === 'boatbuilder') {
      if (change % between === 0) await callNow(i);
      continue;
    }
    if (random() < 0.04) decideOne(store, (field, value) => watch.decided(i, { field, value }), random);
    else editOne(store, (edit) => watch.edited(i, edit), random);
    if (change % between === 0) await callNow(Math.floor(random() * laptops.length));
    if (change === Math.floor(run.changes / 3)) await initLibrary(club.owner, 'Club at random');
    if (change === Math.floor(run.changes / 2)) await fillJuniors(club, random);
    if (change % 250 === 249)
      run.report?.(`${change + 1} changes, ${count.calls} calls, ${count.cutCalls} cut`);
  }
  due.cuts = 0;
  due.laptopKills = 0;
  due.serverKills = 0;
  const from = performance.now();
  await untilQuiet(club);
  const secondsToConverge = Math.round((performance.now() - from) / 100) / 10;
  return {
    stores: laptops.length,
    changes: run.changes,
    ...count,
    ...looked(laptops, watch.newest(), gone),
    wrongReaders: await wrongReaders(club),
    secondsToConverge,
  };
}

/** What goes wrong with the next call, as long as something is due to. */
function troubleOf(
  due: { cuts: number; laptopKills: number; serverKills: number },
  random: () => number,
): 'cut' | 'kill' | 'server' | null {
  const chance = random();
  if (chance < 0.4 && due.cuts > 0) {
    due.cuts -= 1;
    return 'cut';
  }
  if (chance < 0.55 && due.laptopKills > 0) {
    due.laptopKills -= 1;
    return 'kill';
  }
  if (chance < 0.7 && due.serverKills > 0) {
    due.serverKills -= 1;
    return 'server';
  }
  return null;
}

type Values = ReadonlyMap<string, readonly (string | null)[]>;

function has(values: Values) {
  return (field: string, value: string | null) => (values.get(field) ?? [null]).includes(value);
}

/** Every field of a store with the values that stand and that wait. */
function fieldsOf(store: Store): Values {
  const stands = contentOf(store, 'as-kept').fields;
  const waiting = waitingValues(store);
  const names = new Set([...Object.keys(stands), ...waiting.keys()]);
  return new Map([...names].map((name) => [name, [stands[name] ?? null, ...(waiting.get(name) ?? [])]]));
}

async function fieldsOfLibrary({ owner }: Club): Promise<Values> {
  const rows = await owner<{ name: string; value: string | null; others: { value: string | null }[] }[]>`
    SELECT kind || ' ' || id || ' ' || path AS name, value, others FROM kneelwright.fields`;
  return new Map(rows.map(({ name, value, others }) => [name, [value, ...others.map((one) => one.value)]]));
}

function eraseOne(store: Store, gone: Set<string>, random: () => number): number {
  const listed = athletes.list(store, { archived: false, search: '', limit: 100, offset: 0 });
  const record = listed[Math.floor(random() * listed.length)];
  if (!record || listed.length < 1) return 0;
  const keys = () =>
    new Set(Object.keys(contentOf(store).fields).map((field) => field.split(' ', 2).join(' ')));
  const before = keys();
  eraseEverywhere(store, { id: record.id, name: record.athlete.name });
  const after = keys();
  for (const key of before) if (!after.has(key)) gone.add(key);
  gone.add(`athlete ${record.id}`);
  return 1;
}

/** Half of the athletes come into the group of the juniors. */
async function fillJuniors({ owner }: Club, random: () => number): Promise<void> {
  const known = await owner<
    { id: string }[]
  >`SELECT id FROM kneelwright.records WHERE kind = 'athlete' ORDER BY id`;
  await putInGroup(
    owner,
    'Juniors',
    known.map(({ id }) => id).filter(() => random() < 0.5),
  );
}

const MOST_ROUNDS = 12;

async function untilQuiet({ laptops }: Club): Promise<void> {
  for (let round = 0; round < MOST_ROUNDS; round++) {
    let moved = 0;
    for (const { store, address } of laptops) {
      const contact = await callOnce(store, address);
      moved += (contact?.fetched ?? 0) + (contact?.sent ?? 0);
    }
    if (moved === 0) return;
  }
  throw new Error(`still something to send or fetch after ${MOST_ROUNDS} rounds`);
}

function looked(
  laptops: readonly Laptop[],
  newest: readonly { field: string; value: string | null }[],
  gone: ReadonlySet<string>,
): Pick<LibraryResult, 'lostFields' | 'unequalStores'> {
  const [first, ...rest] = laptops.filter(({ seesAll }) => seesAll).map(({ store }) => store);
  const content = contentOf(first!);
  const values = fieldsOf(first!);
  const lost = newest.filter(
    ({ field, value }) => !gone.has(field.split(' ', 2).join(' ')) && !has(values)(field, value),
  );
  const unequal = rest.filter((store) => JSON.stringify(contentOf(store)) !== JSON.stringify(content));
  return { lostFields: lost.length, unequalStores: unequal.length };
}
