import type { Hull } from '../hull/hull.ts';
import type { Radians } from '../units/angle.ts';
import { GRAVITY } from '../units/gravity.ts';
import type { Afloat, Attitude, FloatResult, PointMass } from './afloat.ts';
import { leastFreeboard, propertiesOf } from './immersed-properties.ts';
import { type ImmersedSums, immersedSums } from './immersed-sums.ts';

/** Equilibrium is found to these: metres of draft and radians of trim of the last step. */
export const DRAFT_TOLERANCE = 1e-9;
export const TRIM_TOLERANCE = 1e-10;

const MOST_ITERATIONS = 40;

/** No step sinks or lifts the boat by more than this, metres, nor trims it by more than this slope. */
const MOST_STEP = { draft: 0.08, slope: 0.03 };

/** Mass and centre of a list of point masses; kilograms and metres, boat frame. */
export function combined(masses: readonly PointMass[]): PointMass {
  let mass = 0;
  let x = 0;
  let y = 0;
  let z = 0;
  for (const m of masses) {
    mass += m.mass;
    x += m.mass * m.x;
    y += m.mass * m.y;
    z += m.mass * m.z;
  }
  const per = mass > 0 ? 1 / mass : 0;
  return { mass, x: x * per, y: y * per, z: z * per };
}

/**
 * Where a boat floats at rest under a list of masses, at a heel that is given (0 unless said): draft and trim by
 * Newton's method with the waterplane's own derivatives. Kilograms, metres, kg/m³, radians; boat frame. `start` only
 * saves iterations. A boat that takes in water over its sheer is `swamped`, one that cannot carry the mass
 * `overloaded`; never NaN for finite input.
 */
export function floatAtRest(
  hull: Hull,
  load: {
    masses: readonly PointMass[];
    waterDensity: number;
    heel?: Radians;
    start?: Pick<Attitude, 'draft' | 'trim'>;
  },
): FloatResult {
  const centre = combined(load.masses);
  const heel = load.heel ?? 0;
  const wanted = centre.mass / load.waterDensity;
  const most = hullCapacity(hull);
  if (!(centre.mass > 0) || !Number.isFinite(centre.x + centre.y + centre.z)) {
    return { kind: 'no-equilibrium', reason: 'there is no mass aboard, or one has no place' };
  }
  if (wanted >= most) return { kind: 'overloaded', massKg: centre.mass, mostKg: most * load.waterDensity };
  let draft = load.start?.draft ?? firstDraft(hull, wanted, heel);
  let slope = Math.tan(load.start?.trim ?? 0);
  for (let iterations = 1; iterations <= MOST_ITERATIONS; iterations++) {
    const attitude = { draft, trim: Math.atan(slope), heel };
    const sums = immersedSums(hull, attitude);
    const step = newtonStep(sums, { draft, slope, heel, wanted, centre });
    if (!step) break;
    draft += step.draft;
    slope += step.slope;
    if (Math.abs(step.draft) < DRAFT_TOLERANCE && Math.abs(step.slope) < TRIM_TOLERANCE) {
      return settled(hull, { draft, trim: Math.atan(slope), heel }, { iterations, centre, load });
    }
  }
  return { kind: 'no-equilibrium', reason: 'the search for draft and trim did not settle' };
}

/** Volume of the whole hull up to its sheer line, m³. */
function hullCapacity(hull: Hull): number {
  return immersedSums(hull, { draft: 1e3, trim: 0, heel: 0 }).volume;
}

/** A level draft that displaces about the wanted volume: bisection, coarse. */
function firstDraft(hull: Hull, wanted: number, heel: number): number {
  let low = 0;
  let high = Math.max(...hull.stations.map(({ z }) => z.at(-1)!));
  for (let i = 0; i < 5; i++) {
    const middle = (low + high) / 2;
    if (immersedSums(hull, { draft: middle, trim: 0, heel }).volume < wanted) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** One Newton step for volume and fore-and-aft balance (buoyancy on the normal of the water plane through the centre). */
function newtonStep(
  sums: ImmersedSums,
  at: { draft: number; slope: number; heel: number; wanted: number; centre: PointMass },
): { draft: number; slope: number } | null {
  const { volume, momentX, momentZ, area, areaX, areaY, areaXX, areaXY } = sums;
  const { slope: t, draft, wanted, centre } = at;
  const s = Math.tan(at.heel);
  const planeZ = draft * area - t * areaX - s * areaY;
  const planeXZ = draft * areaX - t * areaXX - s * areaXY;
  const arm = momentZ - volume * centre.z;
  const balance = momentX - volume * centre.x - t * arm;
  const sink = wanted - volume;
  const a = area;
  const b = -areaX;
  const c = areaX - area * centre.x - t * (planeZ - area * centre.z);
  const d = -areaXX + areaX * centre.x - arm - t * (-planeXZ + areaX * centre.z);
  const det = a * d - b * c;
  if (!(Math.abs(det) > 0)) return null;
  const dd = (sink * d + balance * b) / det;
  const dt = (-balance * a - c * sink) / det;
  const limit = Math.max(1, Math.abs(dd) / MOST_STEP.draft, Math.abs(dt) / MOST_STEP.slope);
  return { draft: dd / limit, slope: dt / limit };
}

function settled(
  hull: Hull,
  attitude: Attitude,
  { iterations, centre, load }: { iterations: number; centre: PointMass; load: { waterDensity: number } },
): FloatResult {
  const freeboard = leastFreeboard(hull, attitude);
  if (freeboard.value < 0) return { kind: 'swamped', atX: freeboard.x };
  const properties = propertiesOf(hull, attitude, immersedSums(hull, attitude));
  return {
    ...properties,
    ...attitude,
    ...restFigures(hull, attitude, { properties, centre, load }),
    iterations,
  };
}

function restFigures(
  hull: Hull,
  attitude: Attitude,
  {
    properties,
    centre,
    load,
  }: { properties: ReturnType<typeof propertiesOf>; centre: PointMass; load: { waterDensity: number } },
): Omit<Afloat, keyof ReturnType<typeof propertiesOf> | keyof Attitude | 'iterations'> {
  const { waterplane, centroid } = properties;
  const t = Math.tan(attitude.trim);
  const freeboardAt = (i: number) => {
    const { x, z } = hull.stations.at(i)!;
    return z.at(-1)! - (attitude.draft - x * t);
  };
  const longitudinalGm = centroid.z + waterplane.longitudinalBm - centre.z;
  return {
    kind: 'afloat',
    massKg: centre.mass,
    centreOfMass: { x: centre.x, y: centre.y, z: centre.z },
    freeboardBow: freeboardAt(-1),
    freeboardStern: freeboardAt(0),
    bowOverStern: hull.length * t,
    transverseGm: centroid.z + waterplane.transverseBm - centre.z,
    longitudinalGm,
    massPerCentimetre: load.waterDensity * waterplane.area * 0.01,
    momentPerCentimetreTrim: (centre.mass * GRAVITY * longitudinalGm * 0.01) / hull.length,
  };
}
