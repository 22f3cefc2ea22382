import type { Manifold, ManifoldToplevel } from 'manifold-3d';
import type { Hull } from '../../core/hull/hull.ts';
import { sectionAt } from '../../core/hull/section-at.ts';
import type { WaterPlane } from '../../core/hull/water-plane.ts';
import { floatAtRest } from '../../core/hydrostatics/float-at-rest.ts';
import { immersedProperties } from '../../core/hydrostatics/immersed-properties.ts';
import { madeHull } from '../core/hull/made-hull.ts';
import { sampleHull } from '../reference/hydro-sample-hulls.ts';
import { loftedSections, solidGeometry, solidOf, solidUnder } from '../reference/hydro-solid.ts';
import { bytesPerCall, growthExponent, ratioOf, sideBySide } from './measure.ts';
import { type Fact, type Found, type Ratio, type Row, rowOf, type Times, together } from './row.ts';

const CUT = { draft: 0.1, trim: 0.004, heel: 0.06 };
const WATER = 999.1;
const STATIONS = [21, 41, 81, 161, 321, 641];
const SECTION_POINTS = [13, 25, 49, 97, 193];

const UPRIGHT = 'immersed properties, upright';
const INCLINED = 'immersed properties, trimmed and heeled';
const COLD = 'equilibrium, from cold';
const WARM = 'equilibrium, from the last one, a millimetre away';
const FLOOR = 'one pass over the hull’s points, nothing solved';
const COARSE = 'manifold-3d: volume and centroid, a section a station';
const FINE = 'manifold-3d: the same, refined until both agree';

/** Both agree when they differ by no more: ten millionths of the volume, a hundredth of a millimetre. */
const AGREE = { volume: 1e-5, centroidM: 1e-5 };

/** A draft a hair apart from the last, so that nothing can be carried over from it. */
const nudged = (call: number) => ({ ...CUT, draft: CUT.draft + 1e-7 * (call % 100) });

/** Times immersed properties and equilibrium of the sample single beside a general solid-geometry library and the floor. */
export async function floatBench(): Promise<Found> {
  const hull = sampleHull('single');
  const geometry = await solidGeometry();
  const cold = (call: number) => floatAtRest(hull, { masses: masses(call), waterDensity: WATER });
  const coarse = solidOf(geometry, loftedSections(hull, 1));
  const fine = fineSolid(geometry, hull);
  const quick = sideBySide({
    [FLOOR]: () => onePass(hull),
    [UPRIGHT]: (call) => immersedProperties(hull, { ...nudged(call), heel: 0 }),
    [INCLINED]: (call) => immersedProperties(hull, nudged(call)),
    [COLD]: cold,
    [WARM]: moving(hull),
    [COARSE]: (call) => solidUnder(coarse, planeAt(nudged(call).draft)),
  });
  const slow = sideBySide(
    {
      [INCLINED]: (call) => immersedProperties(hull, nudged(call)),
      [FINE]: (call) => solidUnder(fine.solid, planeAt(nudged(call).draft)),
    },
    { rounds: 7 },
  );
  const [stations, points] = [
    growth('stations', STATIONS, (count) => refined(hull, count, 25)),
    growth('points in a half-section', SECTION_POINTS, (count) => refined(hull, 41, count)),
  ];
  return together([
    { rows: rowsOf(quick), facts: agreement('coarse', coarse, hull) },
    {
      rows: [rowOf('core', FINE, { times: slow[FINE]!, ratio: against(slow, FINE, INCLINED) })],
      facts: agreement(`${fine.perInterval} sections an interval`, fine.solid, hull),
    },
    stations,
    points,
    {
      rows: [],
      facts: [
        await bytes('one set of immersed properties', (call) => immersedProperties(hull, nudged(call))),
        await bytes('one equilibrium', cold),
      ],
    },
  ]);
}

const planeAt = (draft: number): WaterPlane => ({
  draft,
  alongSlope: Math.tan(CUT.trim),
  acrossSlope: Math.tan(CUT.heel),
});

/** The solid through ever more sections of the same surface, the first that agrees with the hull. */
function fineSolid(geometry: ManifoldToplevel, hull: Hull): { solid: Manifold; perInterval: number } {
  for (let perInterval = 2; perInterval <= 64; perInterval *= 2) {
    const solid = solidOf(geometry, loftedSections(hull, perInterval));
    const { volume, centroidM } = apart(hull, solid);
    if (volume <= AGREE.volume && centroidM <= AGREE.centroidM) return { solid, perInterval };
    solid.delete();
  }
  throw new Error('the solid never came to agree with the hull; there is nothing to compare');
}

/** How far both answers for the timed cut lie apart: share of the volume, and metres. */
function apart(hull: Hull, solid: Manifold): { volume: number; centroidM: number } {
  const ours = immersedProperties(hull, CUT);
  const theirs = solidUnder(solid, planeAt(CUT.draft));
  const [x, y, z] = theirs.centroid;
  return {
    volume: Math.abs(ours.volume / theirs.volume - 1),
    centroidM: Math.hypot(ours.centroid.x - x, ours.centroid.y - y, ours.centroid.z - z),
  };
}

function agreement(which: string, solid: Manifold, hull: Hull): Fact[] {
  const { volume, centroidM } = apart(hull, solid);
  const fact = (name: string, value: number, unit: string): Fact => ({ group: 'core', name, value, unit });
  return [
    fact(`manifold-3d’s volume (${which}) differs by`, 1e6 * volume, 'parts per million'),
    fact(`manifold-3d’s centroid (${which}) differs by`, 1e6 * centroidM, 'µm'),
  ];
}

function rowsOf(times: Record<string, Times>): Row[] {
  const beside: Readonly<Record<string, string>> = {
    [UPRIGHT]: FLOOR,
    [INCLINED]: FLOOR,
    [COLD]: FLOOR,
    [COARSE]: INCLINED,
  };
  return Object.entries(times).map(([name, taken]) => {
    const to = beside[name];
    return rowOf('core', name, { times: taken, ratio: to ? against(times, name, to) : null });
  });
}

function against(times: Readonly<Record<string, Times>>, name: string, to: string): Ratio {
  return { to, times: ratioOf(times[name]!, times[to]!) };
}

const masses = (i: number) => [
  { mass: 14, x: 0, y: 0, z: 0.13 },
  { mass: 83, x: -0.05 + 1e-5 * (i % 100), y: 0, z: 0.6 },
];

/** Each solve starts from the one before it, as under a moving hand. */
function moving(hull: Hull): (call: number) => unknown {
  let last = floatAtRest(hull, { masses: masses(0), waterDensity: WATER });
  return (call) => {
    const list = masses(0);
    list[1]!.x += 0.001 * (call % 2);
    const start = last.kind === 'afloat' ? last : null;
    last = floatAtRest(hull, { masses: list, waterDensity: WATER, start });
    return last;
  };
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
  return madeHull({
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

/** The same cut through hulls of more and more parts, and the power with which it grows. */
function growth(what: string, counts: readonly number[], make: (count: number) => Hull): Found {
  const name = (count: number) => `immersed properties, ${count} ${what}`;
  const hulls = counts.map((count) => [name(count), make(count)] as const);
  const times: Record<string, Times> = sideBySide(
    Object.fromEntries(
      hulls.map(([word, hull]) => [word, (call: number) => immersedProperties(hull, nudged(call))]),
    ),
    { rounds: 30 },
  );
  const points = counts.map((count) => [count, times[name(count)]!.medianUs] as const);
  return {
    rows: Object.entries(times).map(([word, taken]) => rowOf('core', word, { times: taken })),
    facts: [
      {
        group: 'core',
        name: `hydrostatics grow with ${what}, ${counts[0]} to ${counts.at(-1)}, to the power of`,
        value: growthExponent(points),
        unit: '',
      },
    ],
  };
}

async function bytes(what: string, run: (call: number) => unknown): Promise<Fact> {
  return { group: 'core', name: `heap taken by ${what}`, value: await bytesPerCall(run), unit: 'bytes' };
}
