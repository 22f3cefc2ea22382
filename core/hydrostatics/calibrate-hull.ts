import type { FloatCheck, HullCorrection } from '../document/hull-kinds-schema.ts';
import { correctHull } from '../hull/correct-hull.ts';
import type { Hull } from '../hull/hull.ts';
import { sheerHeight } from '../hull/section-at.ts';
import { floatAtRest } from './float-at-rest.ts';
import { heightAboveWater } from './water-plane.ts';

/** The bare boat (kilograms, metres, boat frame) and the water (kg/m³) of a float check. */
export interface CheckedBoat {
  /** Kilograms. */
  readonly boatMass: number;
  /** Centre of mass of the bare boat, metres. */
  readonly boatCentre: { readonly x: number; readonly z: number };
  /** Kilograms per cubic metre. */
  readonly waterDensity: number;
}

/** Freeboards at the two marks, alone and loaded, metres. */
export interface CheckFreeboards {
  /** The bare boat. */
  readonly alone: { readonly bow: number; readonly stern: number };
  /** With the known mass aboard. */
  readonly loaded: { readonly bow: number; readonly stern: number };
}

/** Why a float check gives no correction. */
export type NotCalibrated =
  | {
      readonly kind: 'not-calibrated';
      readonly reason: 'marks-too-close' | 'load-lifts-boat' | 'does-not-float';
    }
  | {
      readonly kind: 'not-calibrated';
      /** The best correction still misses by more than readings can, or is larger than a hull's data can be wrong. */
      readonly reason: 'does-not-fit';
      readonly residualM: number;
    };

/** Result of a float check: the correction to store, its residual, and the hull that floats as measured. */
export interface Calibrated {
  readonly kind: 'calibrated';
  readonly correction: HullCorrection;
  /** Root mean square of the four misses after the correction, metres. */
  readonly residualM: number;
  /** Computed less read, metres: before and after. */
  readonly before: CheckFreeboards;
  readonly after: CheckFreeboards;
  readonly hull: Hull;
}

/** Marks nearer than this, metres, say nothing about the fore-and-aft part. */
const LEAST_MARKS_APART = 0.5;

/** Assumed height of the known mass above the keel, metres: it lies on the floorboard. 10 cm here is 0.2 mm of trim. */
const LOAD_HEIGHT = 0.15;

/** Largest residual, metres, that reading errors explain (estimate). */
const MOST_RESIDUAL = 0.03;

/** Largest correction, as the boat document holds it. */
const MOST_CORRECTION = 0.5;

/** Step of the two parameters for the slopes of the misses; no unit. */
const PROBE = 1e-3;
/** A pass that changes both parameters by less than this is the last. */
const SETTLED = 1e-7;
/** After this many passes the search ends with what it has. */
const MOST_PASSES = 12;

/**
 * Fits a hull's two corrections (fullness, fore-and-aft fullness; see `correctHull`) to a float check by least squares
 * over its four freeboards (Gauss–Newton). Give the hull without an earlier correction. The freeboards are read plumb from
 * the water to the sheer on the centreline's plane at the marks. Metres, kilograms; boat frame.
 */
export function calibrateHull(hull: Hull, check: FloatCheck, boat: CheckedBoat): Calibrated | NotCalibrated {
  const flaw = flawOf(check);
  if (flaw) return { kind: 'not-calibrated', reason: flaw };
  const missAt = (p: Parameters): number[] | null => misses(correctedBy(hull, p), check, boat);
  const before = missAt([0, 0]);
  if (!before) return { kind: 'not-calibrated', reason: 'does-not-float' };
  const found = leastSquares(missAt, before);
  if (!found) return { kind: 'not-calibrated', reason: 'does-not-float' };
  const residualM = Math.sqrt(sumOfSquares(found.miss) / found.miss.length);
  const [fullness, foreAftFullness] = found.at;
  if (residualM > MOST_RESIDUAL || found.bound) {
    return { kind: 'not-calibrated', reason: 'does-not-fit', residualM };
  }
  return {
    kind: 'calibrated',
    correction: { fullness, foreAftFullness, residualM },
    residualM,
    before: freeboardsOf(before),
    after: freeboardsOf(found.miss),
    hull: correctedBy(hull, found.at),
  };
}

/** The two corrections: fullness of the whole hull, and of its fore part against its aft part. */
type Parameters = readonly [fullness: number, foreAftFullness: number];

/** The hull with both corrections made. */
const correctedBy = (hull: Hull, [fullness, foreAftFullness]: Parameters) =>
  correctHull(hull, { fullness, foreAftFullness });

/** The quantity that the search minimises. */
const sumOfSquares = (values: readonly number[]) => values.reduce((sum, v) => sum + v * v, 0);

/** The four freeboards in the order in which they are compared. */
const freeboardsOf = ([a, b, c, d]: readonly number[]): CheckFreeboards => ({
  alone: { bow: a!, stern: b! },
  loaded: { bow: c!, stern: d! },
});

/** What makes readings useless before anything is computed; null when they can be used. */
function flawOf({ bowMarkXM, sternMarkXM, alone, loaded }: FloatCheck) {
  if (bowMarkXM - sternMarkXM < LEAST_MARKS_APART) return 'marks-too-close' as const;
  return loaded.bowM + loaded.sternM >= alone.bowM + alone.sternM ? ('load-lifts-boat' as const) : null;
}

/** Computed less read freeboards: alone bow, stern, loaded bow, stern; null when the hull does not float so. */
function misses(hull: Hull, check: FloatCheck, boat: CheckedBoat): number[] | null {
  const own = { mass: boat.boatMass, x: boat.boatCentre.x, y: 0, z: boat.boatCentre.z };
  const load = { mass: check.loaded.massKg, x: check.loaded.atXM, y: 0, z: hull.lowestZ + LOAD_HEIGHT };
  const out: number[] = [];
  for (const { masses, read } of [
    { masses: [own], read: check.alone },
    { masses: [own, load], read: check.loaded },
  ]) {
    const afloat = floatAtRest(hull, { masses, waterDensity: boat.waterDensity });
    if (afloat.kind !== 'afloat') return null;
    const freeboard = (x: number) => heightAboveWater({ x, y: 0, z: sheerHeight(hull, x) }, afloat);
    out.push(freeboard(check.bowMarkXM) - read.bowM, freeboard(check.sternMarkXM) - read.sternM);
  }
  return out;
}

/** Where the search stands. */
interface Fitted {
  readonly at: Parameters;
  /** Computed less measured freeboards, metres. */
  readonly miss: readonly number[];
  /** A parameter was stopped at its limit. */
  readonly bound: boolean;
}

/** Gauss–Newton on two parameters; null when the hull stops floating on the way. */
function leastSquares(missAt: (p: Parameters) => number[] | null, first: readonly number[]): Fitted | null {
  let at: Parameters = [0, 0];
  let miss = first;
  let bound = false;
  for (let pass = 0; pass < MOST_PASSES; pass++) {
    const sides = [missAt([at[0] + PROBE, at[1]]), missAt([at[0], at[1] + PROBE])];
    if (!sides[0] || !sides[1]) return null;
    const [a, b] = sides.map((side) => side!.map((m, i) => (m - miss[i]!) / PROBE));
    const step = normalStep(a!, b!, miss);
    const next = nextPoint(missAt, { at, miss, bound }, step);
    const moved = Math.hypot(next.at[0] - at[0], next.at[1] - at[1]);
    ({ at, miss, bound } = next);
    if (moved < SETTLED) break;
  }
  return { at, miss, bound };
}

/** The first of the whole step, its half, its quarter and so on that does not miss more; `from` when none does. */
function nextPoint(missAt: (p: Parameters) => number[] | null, from: Fitted, step: Parameters): Fitted {
  const hold = (v: number) => Math.max(-MOST_CORRECTION, Math.min(MOST_CORRECTION, v));
  for (let share = 1; share > 1e-3; share /= 2) {
    const free: Parameters = [from.at[0] + share * step[0], from.at[1] + share * step[1]];
    const at: Parameters = [hold(free[0]), hold(free[1])];
    const miss = missAt(at);
    const bound = at[0] !== free[0] || at[1] !== free[1];
    if (miss && sumOfSquares(miss) <= sumOfSquares(from.miss)) return { at, miss, bound };
  }
  return from;
}

/** Least-squares step for two columns of slopes. */
function normalStep(a: readonly number[], b: readonly number[], miss: readonly number[]): Parameters {
  const dot = (p: readonly number[], q: readonly number[]) => p.reduce((sum, v, i) => sum + v * q[i]!, 0);
  const [aa, ab, bb, am, bm] = [dot(a, a), dot(a, b), dot(b, b), dot(a, miss), dot(b, miss)];
  const determinant = aa * bb - ab * ab;
  if (!(determinant > 0)) return [0, 0];
  return [(ab * bm - bb * am) / determinant, (ab * am - aa * bm) / determinant];
}
