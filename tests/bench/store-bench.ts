import { mkdtempSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { CallOutput } from '../../app/contract/contract.ts';
import { createLoopbackShell } from '../../app/loopback/loopback-shell.ts';
import { dispatch } from '../../app/services/dispatch.ts';
import { openProgram } from '../../app/services/open-program.ts';
import type { Program } from '../../app/services/program.ts';
import type { Fit } from '../../core/document/fit-schema.ts';
import { bundleBench } from './bundle-bench.ts';
import { type Filled, fill } from './filled-store.ts';
import { longWorkBench } from './long-work-bench.ts';
import { growthExponent, ratioOf, timesOf } from './measure.ts';
import { type Fact, type Found, type Row, rowOf, type Times, together } from './row.ts';

/** Revisions in the store at each measuring: one store that grows. */
const SIZES = [100, 1000, 10_000, 100_000];
/** At this many a bundle is written and read. */
const BUNDLED = 10_000;
const OPEN = 'program and store: open';
const ROUNDS = 41;
const OPENINGS = 7;
const ROOT = join(import.meta.dirname, '../..');

/** What a person waits for at each size, by what it is called: through the contract, as a page calls it. */
type AtSize = Readonly<Record<string, Times>>;

/** Opens, lists, searches and saves in a store of 10² to 10⁵ revisions; a bundle out and in. */
export async function storeBench(): Promise<Found> {
  const folder = mkdtempSync(join(tmpdir(), 'kneelwright-bench-'));
  try {
    const sizes: AtSize[] = [];
    let bundles: Found = { rows: [], facts: [] };
    let longWork: Found = { rows: [], facts: [] };
    for (const [i, size] of SIZES.entries()) {
      const filled = grown(folder, { from: SIZES[i - 1] ?? 0, to: size });
      sizes.push({ [OPEN]: openings(folder), ...(await callTimes(folder, filled)) });
      if (size !== BUNDLED) continue;
      bundles = inStore(folder, ({ store }) => bundleBench(store));
      longWork = await longWorkBench(folder, filled);
    }
    return together([
      { rows: sizes.flatMap(rowsAt(sizes[0]!)), facts: facts(folder, sizes) },
      bundles,
      longWork,
    ]);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function opened(folder: string) {
  const program = openProgram({ root: ROOT, folder, shell: createLoopbackShell(() => {}) });
  if (program.kind === 'refused') throw new Error(program.sentence);
  return program;
}

function inStore<T>(folder: string, work: (program: Program) => T): T {
  const { program, close } = opened(folder);
  try {
    return work(program);
  } finally {
    close();
  }
}

function grown(folder: string, { from, to }: { from: number; to: number }): Filled {
  return inStore(folder, ({ store }) => fill(store, { from, to }));
}

function openings(folder: string): Times {
  return timesOf(
    Array.from({ length: OPENINGS }, () => {
      const began = performance.now();
      const { close } = opened(folder);
      const took = performance.now() - began;
      close();
      return took;
    }),
  );
}

function calls({ fitId, revisionId, athleteId }: Filled, fit: Fit) {
  const page = { limit: 200 };
  return [
    ['athletes: first page', 'athletes.list', page],
    ['athletes: search a name', 'athletes.list', { ...page, search: 'ada alder' }],
    ['fits: first page', 'fits.list', page],
    ['find: a word of a name', 'things.find', { text: 'celebin' }],
    ['find: a word of a revision', 'things.find', { text: 'revision 7' }],
    ['find: nothing', 'things.find', { text: 'zzzz' }],
    ['recent work', 'things.find', { text: '' }],
    ['fits: search a name', 'fits.list', { ...page, search: 'celebin' }],
    ['fits: search that finds nothing', 'fits.list', { ...page, search: 'zzzz' }],
    ['fit: open', 'fits.open', { id: fitId }],
    ['revision: open', 'revisions.open', { id: revisionId }],
    ['athlete: timeline', 'athletes.timeline', { id: athleteId }],
    ['athlete: fits', 'athletes.fits', { id: athleteId }],
    ['draft: save', 'drafts.save', { id: fitId, fit }],
    ['revision: save', 'revisions.save', { fitId, fit, name: 'Saved', reason: '' }],
  ] as const;
}

async function callTimes(folder: string, filled: Filled): Promise<AtSize> {
  const { program, close } = opened(folder);
  const times: Record<string, Times> = {};
  const found = await dispatch(program, 'fits.open', { id: filled.fitId });
  if (!found.ok) throw new Error(found.error.message);
  const { fit } = found.value as CallOutput<'fits.open'>;
  for (const [what, name, input] of calls(filled, fit)) times[what] = await timesOfCall(program, name, input);
  close();
  return times;
}

async function timesOfCall(program: Program, name: string, input: unknown): Promise<Times> {
  const taken: number[] = [];
  for (let round = -5; round < ROUNDS; round++) {
    const began = performance.now();
    const result = await dispatch(program, name, input);
    if (round >= 0) taken.push(performance.now() - began);
    if (!result.ok) throw new Error(`${name}: ${result.error.message}`);
  }
  return timesOf(taken);
}

/** Rows of one size, each beside the same in the least store. */
function rowsAt(least: AtSize): (size: AtSize, i: number) => Row[] {
  return (size, i) =>
    Object.entries(size).map(([what, times]) => {
      const to = `${what} at ${SIZES[0]}`;
      const ratio = i === 0 ? null : { to, times: ratioOf(times, least[what]!) };
      return rowOf('store', `${what}, ${SIZES[i]} revisions`, { times, ratio });
    });
}

function facts(folder: string, sizes: readonly AtSize[]): Fact[] {
  const [least, most] = [sizes[0]!, sizes.at(-1)!];
  const looking = Object.keys(most).filter((what) => what !== OPEN && !what.endsWith(': save'));
  const slower = looking.map((what) => most[what]!.medianUs - least[what]!.medianUs);
  const megabytes = statSync(join(folder, 'kneelwright.db')).size / 1e6;
  const fact = (name: string, value: number, unit: string): Fact => ({ group: 'store', name, value, unit });
  return [
    fact(`size of the store at ${SIZES.at(-1)} revisions`, megabytes, 'MB'),
    fact(
      `most that ${SIZES.at(-1)} revisions add to any list, search or opening`,
      Math.max(...slower) / 1000,
      'ms',
    ),
    growthWithRevisions(sizes),
  ];
}

/** The power with which the steepest of all calls grows with revisions. */
function growthWithRevisions(sizes: readonly AtSize[]): Fact {
  const powers = Object.keys(sizes[0]!).map((what) => ({
    what,
    power: growthExponent(sizes.map((size, i) => [SIZES[i]!, size[what]!.medianUs] as const)),
  }));
  const steepest = powers.reduce((a, b) => (b.power > a.power ? b : a));
  return {
    group: 'store',
    name: `any call grows with revisions, ${SIZES[0]} to ${SIZES.at(-1)}, at most to the power of`,
    value: steepest.power,
    unit: '',
    note: `the steepest is “${steepest.what}”`,
  };
}
