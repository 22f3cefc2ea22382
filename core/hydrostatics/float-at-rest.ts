import type { Hull } from '../hull/hull.ts';
import { immersedSums } from '../hull/immersed-sums.ts';
import { SUM } from '../hull/section-rows.ts';
import type { WaterPlane } from '../hull/water-plane.ts';
import type { Radians } from '../units/angle.ts';
import { GRAVITY } from '../units/gravity.ts';
import type { Afloat, Attitude, FloatResult, NoEquilibrium, NotAfloat, PointMass } from './afloat.ts';
import { combinedMass } from './combined-mass.ts';
import { type Found, type Start, searchEquilibrium } from './equilibrium-search.ts';
import { endFreeboards, lowestSheer, openFreeboard } from './freeboard.ts';
import { propertiesAt } from './immersed-properties.ts';
import { STEEPEST } from './water-plane.ts';

/** What floats: masses aboard (the hull's own too) in kilograms and metres, kg/m³, radians. */
export interface Load {
  readonly masses: readonly PointMass[];
  /** 1000 in fresh water, about 1025 in the sea. */
  readonly waterDensity: number;
  /** Heel the boat is held at, positive starboard down; 0 unless given. */
  readonly heel?: Radians;
  /** An attitude near the answer: it saves iterations and changes nothing else. */
  readonly start?: Pick<Attitude, 'draft' | 'trim'> | null;
  /**
   * How the waterplane's ends are integrated (`immersedSums`): fine (the default) for values that are shown, steady for
   * differences.
   */
  readonly ends?: 'steady' | 'fine';
}

/**
 * Where a boat lies at rest at a given heel: draft and trim to 1e-9 m and 1e-10 rad, by Newton's method from a cold
 * start. Three to five steps as a rule. The most found over thousands of random loads, from a boat hardly afloat to one
 * hardly dry: 8 in the sample hulls under crews, 10 in canoes held within 15° of upright, 13 up to 57°. Closed bodies,
 * and flat-bottomed ones with their sheer at the water, have taken 30; at 40 the search gives up. Boat frame, SI.
 *
 * `overloaded`: the masses weigh more than the hull displaces with its lowest open sheer at the water. `swamped`: it
 * could carry them, but where they lie the sheer goes under, at `atX`. `no-equilibrium`: no place was found, or the
 * input is no load at all. Finite input never gives NaN.
 *
 * A box 5 × 0.5 × 0.4 m of 375 kg, with its centre 53.33 mm ahead of mid-length and 0.12 m up, in water of
 * 1000 kg/m³ lies 19.26 mm down by the bow.
 */
export function floatAtRest(hull: Hull, load: Load): FloatResult {
  const centre = combinedMass(load.masses);
  const found = planeAtRest(hull, load, centre);
  return 'kind' in found ? found : toldAtRest(hull, { found, centre, load });
}

/** A water plane that was found, and the load that it was found for. */
interface Rest {
  readonly found: Found;
  /** Mass and centre of the whole load. */
  readonly centre: PointMass;
  readonly load: Load;
}

/** All properties of the boat there, or that it would pitch over. */
function toldAtRest(hull: Hull, rest: Rest): FloatResult {
  const told = atRest(hull, rest);
  return told.longitudinalGm > 0 ? told : { kind: 'no-equilibrium', reason: PITCHES_OVER };
}

/** The water plane of a boat at rest, and the rest of the answer on request: see `lazyFloatAtRest`. */
export interface LazyFloat {
  readonly plane: WaterPlane;
  /** The whole answer, as `floatAtRest` gives it. */
  tell(): FloatResult;
}

/**
 * The water plane of a boat at rest, or why there is none, as `floatAtRest` finds it. The properties there cost three times as
 * much and are computed only on request.
 */
export function lazyFloatAtRest(hull: Hull, load: Load): LazyFloat | NotAfloat {
  const centre = combinedMass(load.masses);
  const found = planeAtRest(hull, load, centre);
  if ('kind' in found) return found;
  const rest = { found, centre, load };
  if (!holdsTrim(hull, found.plane, centre)) {
    const told = toldAtRest(hull, rest);
    return told.kind === 'afloat' ? { plane: found.plane, tell: () => told } : told;
  }
  return { plane: found.plane, tell: () => toldAtRest(hull, rest) };
}

/**
 * Whether the waterplane's steady sums alone show that a boat does not pitch over. They differ from the fine ones by a few per
 * cent, and this test asks for twice the stiffness that the weight's height over the keel needs. Canoes have 20 times.
 */
function holdsTrim(hull: Hull, plane: WaterPlane, { x, y, z }: PointMass): boolean {
  const sums = immersedSums(hull, plane);
  const area = sums[SUM.plane]!;
  const stiffness = sums[SUM.planeXx]! - sums[SUM.planeX]! ** 2 / area;
  const overKeel = z - hull.lowestZ + Math.abs(plane.alongSlope * x) + Math.abs(plane.acrossSlope * y);
  return area > 0 && stiffness > 2 * sums[SUM.volume]! * overKeel;
}

/**
 * The water plane alone, at a fraction of the cost: for searches that need draft, trim and freeboard only. It does not check
 * whether the boat would pitch over. `centre` is that of the load's masses.
 */
export function planeAtRest(
  hull: Hull,
  load: Load,
  centre: PointMass = combinedMass(load.masses),
): Found | NotAfloat {
  const heel = load.heel ?? 0;
  const flaw = loadFlaw(centre, load, heel);
  if (flaw) return { kind: 'no-equilibrium', reason: flaw };
  const volume = centre.mass / load.waterDensity;
  if (volume >= hull.levelVolumes[hull.levelVolumes.length - 1]!) return overloaded(hull, load, centre.mass);
  const sought = { volume, centre, acrossSlope: Math.tan(heel) };
  const cold = levelStart(hull, volume);
  let found = searchEquilibrium(hull, sought, givenStart(load.start) ?? cold);
  if (load.start && !staysDry(hull, found)) found = searchEquilibrium(hull, sought, cold);
  if (staysDry(hull, found)) return found;
  const full = overloaded(hull, load, centre.mass);
  if (centre.mass > full.mostKg) return full;
  const reason = found.settled ? null : beyondEnds(hull, centre);
  if (reason) return { kind: 'no-equilibrium', reason };
  const open = openFreeboard(hull, found.plane);
  return open && open.value < 0
    ? { kind: 'swamped', atX: open.x }
    : { kind: 'no-equilibrium', reason: NOT_SETTLED };
}

/** At rest with no open sheer under water. */
function staysDry(hull: Hull, { settled, plane }: Found): boolean {
  return settled && (openFreeboard(hull, plane)?.value ?? 0) >= 0;
}

/** What the hull carries with a level water plane at its lowest open sheer (a closed body: wholly under), beside its load. */
function overloaded(hull: Hull, { waterDensity }: Load, massKg: number) {
  const sums = immersedSums(hull, { draft: lowestSheer(hull), alongSlope: 0, acrossSlope: 0 });
  return { kind: 'overloaded', massKg, mostKg: sums[SUM.volume]! * waterDensity } as const;
}

const PITCHES_OVER = 'pitches-over';
const NOT_SETTLED = 'not-settled';

/** Why a load is none at all; null when it can be floated. */
function loadFlaw(centre: PointMass, { waterDensity }: Load, heel: number): NoEquilibrium | null {
  if (!Number.isFinite(centre.mass + centre.x + centre.y + centre.z)) return 'no-number';
  if (!(centre.mass > 0)) return 'no-weight';
  if (!(waterDensity > 0 && Number.isFinite(waterDensity))) return 'density';
  if (!(Math.abs(heel) <= STEEPEST)) return 'on-side';
  return null;
}

/** The plainest reason for finding no position: no part of the hull lies under the weight. */
function beyondEnds(hull: Hull, { x }: PointMass): NoEquilibrium | null {
  if (x > hull.foreX) return 'ahead-of-bow';
  if (x < hull.aftX) return 'behind-stern';
  return null;
}

/** A start as it was given; null when none was, or it is no attitude. */
function givenStart(start: Load['start']): Start | null {
  if (!start || !Number.isFinite(start.draft) || !(Math.abs(start.trim) <= STEEPEST)) return null;
  return { draft: start.draft, alongSlope: Math.tan(start.trim) };
}

/** The level draft of a volume, read off the volumes that the hull keeps. */
function levelStart({ levelVolumes, lowestZ, highestZ }: Hull, volume: number): Start {
  const step = (highestZ - lowestZ) / (levelVolumes.length - 1);
  const above = Math.max(
    1,
    levelVolumes.findIndex((v) => v >= volume),
  );
  const under = levelVolumes[above - 1]!;
  const share = (volume - under) / (levelVolumes[above]! - under);
  return { draft: lowestZ + (above - 1 + share) * step, alongSlope: 0 };
}

/**
 * All properties of a boat at rest. Both GM are slopes of the righting arms there: BM less the height of the centre of mass
 * over the centre of buoyancy, measured plumb.
 */
function atRest(hull: Hull, { found: { plane, steps }, centre, load }: Rest): Afloat {
  const properties = propertiesAt(hull, plane, load.ends);
  const { waterplane, centroid } = properties;
  const { alongSlope: k, acrossSlope: t } = plane;
  const rise =
    (centroid.z - centre.z + k * (centroid.x - centre.x) + t * (centroid.y - centre.y)) / Math.hypot(1, k, t);
  const longitudinalGm = waterplane.longitudinalBm + rise;
  const freeboards = endFreeboards(hull, plane);
  return {
    ...properties,
    kind: 'afloat',
    draft: plane.draft,
    trim: Math.atan(k),
    heel: load.heel ?? 0,
    iterations: steps,
    massKg: centre.mass,
    centreOfMass: { x: centre.x, y: centre.y, z: centre.z },
    freeboardBow: freeboards.bow,
    freeboardStern: freeboards.stern,
    bowOverStern: hull.length * k,
    transverseGm: waterplane.transverseBm + rise,
    longitudinalGm,
    massPerCentimetre: load.waterDensity * waterplane.area * 0.01,
    momentPerCentimetreTrim: (centre.mass * GRAVITY * longitudinalGm * 0.01) / hull.length,
  };
}
