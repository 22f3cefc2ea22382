import { floatAtRest } from '../../core/float/float-at-rest.ts';
import { immersedProperties } from '../../core/float/immersed-properties.ts';
import type { Hull } from '../../core/hull/hull.ts';
import { hullFromOffsets } from '../../core/hull/hull-from-offsets.ts';
import { sectionAt } from '../../core/hull/section-at.ts';
import { sampleHull } from '../reference/hydro-sample-hulls.ts';
import { solidGeometry, solidOf, solidUnder } from '../reference/hydro-solid.ts';

/** One thing timed: microseconds a call, and what it is held against. */
export interface FloatRow {
  readonly what: string;
  readonly medianUs: number;
  readonly p95Us: number;
  /** How many times slower than the row it is compared with, in the same run; null where it stands alone. */
  readonly timesSlower: { readonly than: string; readonly ratio: number } | null;
}

/** What the bench found. `growth` is the fitted exponent of cost against a count. */
export interface FloatBench {
  readonly rows: readonly FloatRow[];
  readonly growth: { readonly stations: number; readonly sectionPoints: number };
  readonly bytesPerCall: { readonly properties: number; readonly equilibrium: number };
  /** Both answers for the cut that is timed: relative volume and centroid distance, so that equal work is compared. */
  readonly agreement: { readonly volume: number; readonly centroidMm: number };
}

const ROUNDS = 2001;
const SLOW_ROUNDS = 61;
const CUT = { draft: 0.1, trim: 0.004, heel: 0.06 };
const WATER = 999.1;

interface Times {
  readonly medianUs: number;
  readonly p95Us: number;
}

/** Times immersed properties and equilibrium of the sample single, beside a general solid-geometry library and the floor. */
export async function floatBench(): Promise<FloatBench> {
  const hull = sampleHull('single');
  const solid = solidOf(
    await solidGeometry(),
    hull.stations.map(({ x }) => sectionAt(hull, x)),
  );
  const plane = {
    draft: CUT.draft,
    alongSlope: Math.tan(CUT.trim),
    acrossSlope: Math.tan(CUT.heel),
  };
  const nudged = (i: number) => ({ ...CUT, draft: CUT.draft + 1e-7 * (i % 100) });
  const upright = timed((i) => immersedProperties(hull, { ...nudged(i), heel: 0 }));
  const inclined = timed((i) => immersedProperties(hull, nudged(i)));
  const cold = timed((i) => floatAtRest(hull, { masses: masses(i), waterDensity: WATER }));
  const warm = warmTimes(hull);
  const cut = timed((i) => solidUnder(solid, { ...plane, draft: nudged(i).draft }), SLOW_ROUNDS);
  const volumeOnly = timed((i) => {
    const under = solid.trimByPlane(downward(plane), (-plane.draft - 1e-7 * i) * downwardLength(plane));
    under.volume();
    under.delete();
  }, SLOW_ROUNDS);
  const floor = timed(() => onePass(hull));
  const against = (than: string, a: Times, b: Times) => ({ than, ratio: a.medianUs / b.medianUs });
  return {
    rows: [
      { what: 'immersed properties, 41 stations, upright', ...upright, timesSlower: null },
      {
        what: 'immersed properties, 41 stations, trimmed and heeled',
        ...inclined,
        timesSlower: against('one pass over the points', inclined, floor),
      },
      { what: 'equilibrium from cold', ...cold, timesSlower: null },
      { what: 'equilibrium from the last one, a millimetre away', ...warm, timesSlower: null },
      { what: 'one pass over the points', ...floor, timesSlower: null },
      {
        what: 'manifold-3d: the same cut, volume and centroid',
        ...cut,
        timesSlower: against('immersed properties', cut, inclined),
      },
      {
        what: 'manifold-3d: the same cut, volume alone',
        ...volumeOnly,
        timesSlower: against('immersed properties', volumeOnly, inclined),
      },
    ],
    growth: {
      stations: exponent([21, 41, 81, 161, 321, 641], (count) => refined(hull, count, 25)),
      sectionPoints: exponent([13, 25, 49, 97, 193], (count) => refined(hull, 41, count)),
    },
    bytesPerCall: {
      properties: bytes((i) => immersedProperties(hull, nudged(i))),
      equilibrium: bytes((i) => floatAtRest(hull, { masses: masses(i), waterDensity: WATER })),
    },
    agreement: agreement(hull, solidUnder(solid, plane)),
  };
}

const masses = (i: number) => [
  { mass: 14, x: 0, y: 0, z: 0.13 },
  { mass: 83, x: -0.05 + 1e-5 * (i % 100), y: 0, z: 0.6 },
];

/** Each solve starts from the one before it, as under a moving hand. */
function warmTimes(hull: Hull): Times {
  let last = floatAtRest(hull, { masses: masses(0), waterDensity: WATER });
  return timed((i) => {
    const list = masses(0);
    list[1]!.x += 0.001 * (i % 2);
    last = floatAtRest(hull, {
      masses: list,
      waterDensity: WATER,
      start: last.kind === 'afloat' ? last : null,
    });
  });
}

function timed(work: (i: number) => unknown, rounds = ROUNDS): Times {
  for (let i = 0; i < rounds / 2; i++) work(i);
  const times: number[] = [];
  for (let i = 0; i < rounds; i++) {
    const from = performance.now();
    work(i);
    times.push((performance.now() - from) * 1000);
  }
  times.sort((a, b) => a - b);
  return { medianUs: times[rounds >> 1]!, p95Us: times[Math.floor(rounds * 0.95)]! };
}

/** The floor: reading every point of both sides once, deciding wet or dry, no integrals. */
function onePass({ rows, lowestZ }: Hull): number {
  let wet = 0;
  for (let row = 0; row < rows.count; row++) {
    for (let k = row * rows.points; k < (row + 1) * rows.points; k++) {
      if (rows.z[k]! + 0.06 * rows.y[k]! < lowestZ + 0.1) wet++;
      if (rows.z[k]! - 0.06 * rows.y[k]! < lowestZ + 0.1) wet++;
    }
  }
  return wet;
}

/** The hull through other counts of stations and points, lofted and sampled anew. */
function refined(hull: Hull, stations: number, points: number): Hull {
  return hullFromOffsets({
    name: 'refined',
    stations: Array.from({ length: stations }, (_, i) => {
      const x = hull.aftX + (hull.length * i) / (stations - 1);
      const section = sectionAt(hull, x);
      return {
        x,
        section: Array.from({ length: points }, (__, j) => {
          const at = (j / (points - 1)) * (section.length - 1);
          const low = Math.min(section.length - 2, Math.floor(at));
          const [a, b] = [section[low]!, section[low + 1]!];
          return [a.y + (at - low) * (b.y - a.y), a.z + (at - low) * (b.z - a.z)] as const;
        }),
      };
    }),
  });
}

/** Slope of log cost on log count. */
function exponent(counts: readonly number[], make: (count: number) => Hull): number {
  const points = counts.map((count) => {
    const hull = make(count);
    const { medianUs } = timed((i) => immersedProperties(hull, { ...CUT, draft: CUT.draft + 1e-7 * i }), 301);
    return [Math.log(count), Math.log(medianUs)] as const;
  });
  const mean = (k: 0 | 1) => points.reduce((sum, p) => sum + p[k], 0) / points.length;
  const [mx, my] = [mean(0), mean(1)];
  const over = points.reduce((sum, [x, y]) => sum + (x - mx) * (y - my), 0);
  return over / points.reduce((sum, [x]) => sum + (x - mx) ** 2, 0);
}

/** Heap taken a call, from a stretch short enough to run without collection; the least of several. */
function bytes(work: (i: number) => unknown): number {
  const CALLS = 200;
  let least = Number.POSITIVE_INFINITY;
  for (let round = 0; round < 9; round++) {
    const before = process.memoryUsage().heapUsed;
    for (let i = 0; i < CALLS; i++) work(i);
    const taken = (process.memoryUsage().heapUsed - before) / CALLS;
    if (taken > 0) least = Math.min(least, taken);
  }
  return least;
}

function agreement(hull: Hull, theirs: ReturnType<typeof solidUnder>): FloatBench['agreement'] {
  const ours = immersedProperties(hull, CUT);
  const [x, y, z] = theirs.centroid;
  return {
    volume: ours.volume / theirs.volume - 1,
    centroidMm: 1000 * Math.hypot(ours.centroid.x - x, ours.centroid.y - y, ours.centroid.z - z),
  };
}

const downwardLength = (p: { alongSlope: number; acrossSlope: number }) =>
  1 / Math.hypot(1, p.alongSlope, p.acrossSlope);

function downward(p: { alongSlope: number; acrossSlope: number }): [number, number, number] {
  const per = downwardLength(p);
  return [-p.alongSlope * per, -p.acrossSlope * per, -per];
}

if (import.meta.main) {
  const { rows, growth, bytesPerCall, agreement: agrees } = await floatBench();
  console.table(
    rows.map((r) => ({
      what: r.what,
      'median µs': r.medianUs.toFixed(1),
      'p95 µs': r.p95Us.toFixed(1),
      against: r.timesSlower ? `${r.timesSlower.ratio.toFixed(1)} × ${r.timesSlower.than}` : '',
    })),
  );
  console.log(
    'cost grows with stations^',
    growth.stations.toFixed(2),
    'and section points^',
    growth.sectionPoints.toFixed(2),
  );
  console.log('heap bytes a call:', bytesPerCall);
  console.log('the two answers differ by', agrees);
}
