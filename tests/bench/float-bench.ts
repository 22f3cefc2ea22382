import { floatAtRest } from '../../core/float/float-at-rest.ts';
import { immersedProperties } from '../../core/float/immersed-properties.ts';
import type { Hull } from '../../core/hull/hull.ts';
import { hullFromOffsets } from '../../core/hull/hull-from-offsets.ts';
import { sectionAt } from '../../core/hull/section-at.ts';
import { sampleHull } from '../reference/hydro-sample-hulls.ts';
import { solidGeometry, solidOf, solidUnder } from '../reference/hydro-solid.ts';
import { bytesPerCall, growthExponent, ratioOf, sideBySide } from './measure.ts';
import type { Fact, Found, Row, Times } from './row.ts';

const CUT = { draft: 0.1, trim: 0.004, heel: 0.06 };
const WATER = 999.1;
const STATIONS = [21, 41, 81, 161, 321, 641];
const SECTION_POINTS = [13, 25, 49, 97, 193];

const UPRIGHT = 'immersed properties, upright';
const INCLINED = 'immersed properties, trimmed and heeled';
const COLD = 'equilibrium, from cold';
const WARM = 'equilibrium, from the last one, a millimetre away';
const FLOOR = 'one pass over the hull’s points, nothing solved';
const SOLID = 'manifold-3d: the same cut, volume and centroid';
const SOLID_VOLUME = 'manifold-3d: the same cut, volume alone';

/** A draft a hair apart from the last, so that nothing can be carried over from it. */
const nudged = (call: number) => ({ ...CUT, draft: CUT.draft + 1e-7 * (call % 100) });

/** Times immersed properties and equilibrium of the sample single beside a general solid-geometry library and the floor. */
export async function floatBench(): Promise<Found> {
  const hull = sampleHull('single');
  const sections = hull.stations.map(({ x }) => sectionAt(hull, x));
  const solid = solidOf(await solidGeometry(), sections);
  const plane = { draft: CUT.draft, alongSlope: Math.tan(CUT.trim), acrossSlope: Math.tan(CUT.heel) };
  const cold = (call: number) => floatAtRest(hull, { masses: masses(call), waterDensity: WATER });
  const times = sideBySide({
    [FLOOR]: () => onePass(hull),
    [UPRIGHT]: (call) => immersedProperties(hull, { ...nudged(call), heel: 0 }),
    [INCLINED]: (call) => immersedProperties(hull, nudged(call)),
    [COLD]: cold,
    [WARM]: moving(hull),
    [SOLID]: (call) => solidUnder(solid, { ...plane, draft: nudged(call).draft }),
    [SOLID_VOLUME]: (call) => {
      const under = solid.trimByPlane(downward(plane), -nudged(call).draft * downwardLength(plane));
      under.volume();
      under.delete();
    },
  });
  return {
    rows: rowsOf(times),
    facts: [
      ...agreement(hull, solidUnder(solid, plane)),
      growth('stations, 21 to 641', STATIONS, (count) => refined(hull, count, 25)),
      growth('section points, 13 to 193', SECTION_POINTS, (count) => refined(hull, 41, count)),
      bytes('one set of immersed properties', (call) => immersedProperties(hull, nudged(call))),
      bytes('one equilibrium', cold),
    ],
  };
}

function rowsOf(times: Record<string, Times>): Row[] {
  const against: Readonly<Record<string, string>> = {
    [INCLINED]: FLOOR,
    [COLD]: FLOOR,
    [SOLID]: INCLINED,
    [SOLID_VOLUME]: INCLINED,
  };
  return Object.entries(times).map(([name, taken]) => {
    const to = against[name];
    return { group: 'core', name, ...taken, ratio: to ? { to, times: ratioOf(taken, times[to]!) } : null };
  });
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

function growth(what: string, counts: readonly number[], make: (count: number) => Hull): Fact {
  const hulls = counts.map((count) => [String(count), make(count)] as const);
  const work = Object.fromEntries(
    hulls.map(([count, hull]) => [count, (call: number) => immersedProperties(hull, nudged(call))]),
  );
  const times = sideBySide(work, { rounds: 30 });
  const value = growthExponent(counts.map((count) => [count, times[String(count)]!.medianUs] as const));
  return { group: 'core', name: `hydrostatics grow with ${what}, to the power of`, value, unit: '' };
}

function bytes(what: string, run: (call: number) => unknown): Fact {
  return { group: 'core', name: `heap taken by ${what}`, value: bytesPerCall(run), unit: 'bytes' };
}

/** How far both answers for the timed cut lie apart, so that equal work is compared. */
function agreement(hull: Hull, theirs: ReturnType<typeof solidUnder>): Fact[] {
  const ours = immersedProperties(hull, CUT);
  const [x, y, z] = theirs.centroid;
  const apart = Math.hypot(ours.centroid.x - x, ours.centroid.y - y, ours.centroid.z - z);
  const fact = (name: string, value: number, unit: string): Fact => ({ group: 'core', name, value, unit });
  return [
    fact(
      'manifold-3d’s volume differs by',
      1e6 * Math.abs(ours.volume / theirs.volume - 1),
      'parts per million',
    ),
    fact('manifold-3d’s centroid differs by', 1e6 * apart, 'µm'),
  ];
}

const downwardLength = (p: { alongSlope: number; acrossSlope: number }) =>
  1 / Math.hypot(1, p.alongSlope, p.acrossSlope);

function downward(p: { alongSlope: number; acrossSlope: number }): [number, number, number] {
  const per = downwardLength(p);
  return [-p.alongSlope * per, -p.acrossSlope * per, -per];
}
