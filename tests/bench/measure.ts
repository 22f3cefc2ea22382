import type { HeapProfiler } from 'node:inspector';
import { Session } from 'node:inspector/promises';
import type { Times } from './row.ts';

/** Fewer timings than this have no 95th percentile: it would be the slowest one. */
const ENOUGH_FOR_P95 = 20;

/** The value below which a share of some numbers lies, by the nearest rank. */
export function quantile(values: readonly number[], share: number): number {
  const sorted = Float64Array.from(values).sort();
  return sorted[Math.min(sorted.length - 1, Math.max(0, Math.ceil(share * sorted.length) - 1))] ?? Number.NaN;
}

/** Median and 95th percentile of timings in milliseconds, given back in microseconds. */
export function timesOf(milliseconds: readonly number[]): Times {
  return {
    medianUs: 1000 * quantile(milliseconds, 0.5),
    p95Us: milliseconds.length < ENOUGH_FOR_P95 ? null : 1000 * quantile(milliseconds, 0.95),
    runs: milliseconds.length,
    ownUs: null,
  };
}

/** The kernel counts a thread's time in ticks of about 4 ms: less than a hundred of them say too little. Microseconds. */
const ENOUGH_OWN_TIME = 400_000;

/** Exponent b of the power law y = a·xᵇ through some points, by least squares on the logarithms. */
export function growthExponent(points: readonly (readonly [x: number, y: number])[]): number {
  const logs = points.map(([x, y]) => [Math.log(x), Math.log(y)] as const);
  const mean = (k: 0 | 1) => logs.reduce((sum, p) => sum + p[k], 0) / logs.length;
  const [mx, my] = [mean(0), mean(1)];
  const top = logs.reduce((sum, [x, y]) => sum + (x - mx) * (y - my), 0);
  return top / logs.reduce((sum, [x]) => sum + (x - mx) ** 2, 0);
}

/** Work by its name. Each call is told which one it is, so that no two need be alike. */
type Work<Name extends string> = Readonly<Record<Name, (call: number) => unknown>>;

interface Turns {
  readonly rounds: number;
  /** How long one piece of work has its turn in a round: one call at least, as many as fit. Milliseconds. */
  readonly turnMs: number;
  /** How long each piece runs first without counting, so that the compiler has done with it. Milliseconds. */
  readonly warmUpMs: number;
}

/**
 * Times several pieces of work side by side: in each round every piece has one turn, so that a noisy machine disturbs all
 * alike and their ratios mean something. Every call is timed by itself.
 */
export function sideBySide<Name extends string>(
  work: Work<Name>,
  { rounds = 60, turnMs = 2, warmUpMs = 200 }: Partial<Turns> = {},
): Record<Name, Times> {
  const names = Object.keys(work) as Name[];
  for (const name of names) turnOf(work[name], warmUpMs, []);
  const all = names.map((name) => ({ name, taken: [] as number[], ownUs: 0 }));
  for (let round = 0; round < rounds; round++) {
    for (const one of all) {
      const before = ownTime();
      turnOf(work[one.name], turnMs, one.taken);
      one.ownUs += ownTime() - before;
    }
  }
  const times = ({ taken, ownUs }: (typeof all)[number]): Times => ({
    ...timesOf(taken),
    ownUs: ownUs < ENOUGH_OWN_TIME ? null : ownUs / taken.length,
  });
  return Object.fromEntries(all.map((one) => [one.name, times(one)])) as Record<Name, Times>;
}

/** Processor time of this thread so far, microseconds. */
function ownTime(): number {
  const { user, system } = process.threadCpuUsage();
  return user + system;
}

/** Calls until the turn is over, once at least, and notes what each call took. Milliseconds. */
function turnOf(run: (call: number) => unknown, ms: number, taken: number[]): void {
  const end = performance.now() + ms;
  let now: number;
  do {
    const before = performance.now();
    run(taken.length);
    now = performance.now();
    taken.push(now - before);
  } while (now < end);
}

/** How many times the first takes as long as the second, each by its own time where it has one. */
export function ratioOf(a: Times, b: Times): number {
  return (a.ownUs ?? a.medianUs) / (b.ownUs ?? b.medianUs);
}

/** One sample of the heap stands for so much of it on average, bytes. */
const SAMPLED = 1024;

/** Calls before allocation is measured, so that the compiler has done with them, and calls that are measured. */
const CALLS = { before: 2000, measured: 500 } as const;

/**
 * Heap that one call takes, bytes, by the engine's own sampling of allocations, whether or not the collector takes them again.
 * True to 2 % for a kilobyte and more. Two looks at the heap's size are not: they count what the collector has left half full.
 */
export async function bytesPerCall(run: (call: number) => unknown): Promise<number> {
  for (let call = 0; call < CALLS.before; call++) run(call);
  const session = new Session();
  session.connect();
  await session.post('HeapProfiler.startSampling', {
    samplingInterval: SAMPLED,
    includeObjectsCollectedByMajorGC: true,
    includeObjectsCollectedByMinorGC: true,
  });
  for (let call = 0; call < CALLS.measured; call++) run(call);
  const { profile } = await session.post('HeapProfiler.stopSampling');
  session.disconnect();
  return allocated(profile.head) / CALLS.measured;
}

/** Bytes of a call tree's root and of all that it called. */
function allocated({ selfSize, children }: HeapProfiler.SamplingHeapProfileNode): number {
  return children.reduce((sum, child) => sum + allocated(child), selfSize);
}

/** Share of the time of some calls that the garbage collector takes, and its longest single pause, milliseconds. */
export async function collectorShare(
  run: (call: number) => unknown,
  calls: number,
): Promise<{ share: number; longestMs: number }> {
  const pauses: number[] = [];
  const observer = new PerformanceObserver((list) => {
    for (const { duration } of list.getEntries()) pauses.push(duration);
  });
  for (let call = 0; call < 500; call++) run(call);
  observer.observe({ entryTypes: ['gc'] });
  const began = performance.now();
  for (let call = 0; call < calls; call++) run(call);
  const took = performance.now() - began;
  // The observer is told later, between turns of the event loop.
  await new Promise((done) => setTimeout(done, 100));
  observer.disconnect();
  return { share: pauses.reduce((sum, ms) => sum + ms, 0) / took, longestMs: Math.max(0, ...pauses) };
}
