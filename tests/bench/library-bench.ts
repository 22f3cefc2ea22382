import { chmodSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Library, type LibraryAddress, openLibrary } from '../../app/library/address.ts';
import { initLibrary, invite, putInGroup } from '../../app/library/club.ts';
import { accept } from '../../app/library/invitation.ts';
import { type LocalServer, startLocalServer } from '../../app/library/local-server.ts';
import { openFit, saveDraft } from '../../app/store/fits.ts';
import { closeStore, openStore } from '../../app/store/open-store.ts';
import { saveRevision } from '../../app/store/revisions.ts';
import type { Store } from '../../app/store/store.ts';
import { callOnce } from '../soak/library-laptop.ts';
import { fill } from './filled-store.ts';
import type { Fact, Found } from './row.ts';

/** A club of 120 athletes with two fits each and 42 revisions to each fit. */
const ATHLETES = 120;
const EACH = { fits: 2, revisions: 42 };
/** A day of one coach: fits that are edited, and of these how many get a revision. */
const DAY = { edited: 40, revised: 8 };
const COACHES = [2, 8, 32, 64];
/** A server on a small computer takes so many connections at once. */
const AT_ONCE = 16;
/** Groups of four athletes each. */
const GROUPS = 30;
const DAY_EACH = { edited: 3, revised: 1 };

interface Club {
  readonly root: string;
  readonly server: LocalServer;
  readonly owner: Library;
}

/** A club's library on this machine: the first push and pull, a day's, and what more coaches add. */
export async function clubBench(): Promise<Found> {
  const root = mkdtempSync(join(tmpdir(), 'kneelwright-library-bench-'));
  chmodSync(root, 0o711);
  const server = await startLocalServer(join(root, 'server'));
  const owner = openLibrary(server.address);
  try {
    await initLibrary(owner, 'Measured club');
    return { rows: [], facts: await measured({ root, server, owner }) };
  } finally {
    await owner.end({ timeout: 0 });
    await server.stop();
    rmSync(root, { recursive: true, force: true });
  }
}

async function measured(club: Club): Promise<Fact[]> {
  const facts: Fact[] = [];
  const timed = async (name: string, work: () => Promise<unknown>) => {
    const began = performance.now();
    await work();
    facts.push(fact(name, (performance.now() - began) / 1000, 's'));
  };
  const revisions = ATHLETES * EACH.fits * EACH.revisions;
  const head = opened(join(club.root, 'head'));
  fill(head, { from: 0, to: revisions, each: EACH });
  const [first, second] = [await member(club, 'First'), await member(club, 'Second')];
  await timed(`first push of ${ATHLETES} athletes, ${revisions} revisions`, () => callOnce(head, first));
  const other = opened(join(club.root, 'other'));
  await timed('first pull of them', () => callOnce(other, second));
  await timed('a call with nothing new', () => callOnce(other, second));
  workADay(head, DAY);
  await timed(`push of a day: ${DAY.edited} fits edited, ${DAY.revised} revised`, () =>
    callOnce(head, first),
  );
  await timed('pull of that day', () => callOnce(other, second));
  facts.push(fact('size of the database', (await sizeOf(club.owner)) / 1e6, 'MB'));
  closeStore(head);
  closeStore(other);
  await makeGroups(club);
  for (const coaches of COACHES) facts.push(...(await withCoaches(club, coaches)));
  return facts;
}

/** Puts the athletes into groups of a few. */
async function makeGroups({ owner }: Club): Promise<void> {
  const known = await owner<
    { id: string }[]
  >`SELECT id FROM kneelwright.records WHERE kind = 'athlete' ORDER BY id`;
  for (let i = 0; i < GROUPS; i++)
    await putInGroup(
      owner,
      `Group ${i}`,
      known.filter((_, k) => k % GROUPS === i).map(({ id }) => id),
    );
}

/**
 * So many coaches, each of one group, edit and call, one after the other; then all call again and fetch what the others of the group
 * did. At last all edit and call, a few at the same time, from this one machine: how many calls the server carries.
 */
async function withCoaches(club: Club, coaches: number): Promise<Fact[]> {
  const laptops: { store: Store; address: LibraryAddress }[] = [];
  const joined: number[] = [];
  for (let i = 0; i < coaches; i++) {
    const store = opened(join(club.root, `coach-${coaches}-${i}`));
    const address = await member(club, `Coach ${i} of ${coaches}`, `Group ${i % GROUPS}`);
    joined.push(await timeOfCalls([{ store, address }]));
    laptops.push({ store, address });
  }
  for (const { store } of laptops) workADay(store, DAY_EACH);
  const sent = await timeOfCalls(laptops);
  const fetched = await timeOfCalls(laptops);
  for (const { store } of laptops) workADay(store, DAY_EACH);
  const began = performance.now();
  await timeOfCalls(laptops, AT_ONCE);
  const apart = (performance.now() - began) / 1000 / coaches;
  for (const { store } of laptops) {
    closeStore(store);
    rmSync(store.folder, { recursive: true });
  }
  return [
    fact(`${coaches} coaches: first call of one with a group, middle one`, middle(joined), 's'),
    fact(`${coaches} coaches: a call that sends, middle one`, sent, 's'),
    fact(`${coaches} coaches: the call after it, middle one`, fetched, 's'),
    fact(`${coaches} coaches: all send at the same time, ${AT_ONCE} at most; time for each`, apart, 's'),
  ];
}

function middle(values: readonly number[]): number {
  return [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)]!;
}

/** Every laptop calls once, so many at the same time; gives how long the middle call took, seconds. */
async function timeOfCalls(
  laptops: readonly { store: Store; address: LibraryAddress }[],
  atOnce = 1,
): Promise<number> {
  const took: number[] = [];
  for (let at = 0; at < laptops.length; at += atOnce)
    await Promise.all(
      laptops.slice(at, at + atOnce).map(async ({ store, address }) => {
        const began = performance.now();
        await callOnce(store, address);
        took.push((performance.now() - began) / 1000);
      }),
    );
  return middle(took);
}

/** Edits so far: no two write the same. */
let edits = 0;

function workADay(store: Store, { edited, revised }: typeof DAY): void {
  const ids = store.db.prepare('SELECT id FROM fits ORDER BY id LIMIT ?').pluck().all(edited) as string[];
  for (const [i, id] of ids.entries()) {
    const open = openFit(store, id);
    if (typeof open === 'string') throw new Error(open);
    edits += 1;
    const fit = { ...open.fit, notes: `edit ${edits} in ${store.folder}` };
    saveDraft(store, { id, fit });
    if (i < revised) saveRevision(store, { fitId: id, fit, name: `day ${i}`, reason: 'because' });
  }
}

function opened(folder: string): Store {
  const opening = openStore(folder);
  if (opening.kind === 'refused') throw new Error(opening.refusal.code);
  return opening.store;
}

async function member({ owner, server }: Club, name: string, group = 'Everyone'): Promise<LibraryAddress> {
  const guest = { name, role: 'coach', groups: [group] } as const;
  return accept((await invite(owner, server.address, guest)).address);
}

async function sizeOf(owner: Library): Promise<number> {
  const [size] = await owner<{ bytes: string }[]>`SELECT pg_database_size(current_database()) AS bytes`;
  return Number(size!.bytes);
}

function fact(name: string, value: number, unit: string): Fact {
  return { group: 'library', name, value, unit };
}
