import type { Hull } from '../hull/hull.ts';
import { type Radians, toRadians } from '../units/angle.ts';
import type { PointMass } from './afloat.ts';
import { floatAtRest } from './float-at-rest.ts';
import { rightingArm } from './righting-arm.ts';

/** Righting arm at one heel, the boat free to trim. Metres and radians. */
export interface GzPoint {
  readonly heel: Radians;
  /** Positive turns the boat back from a heel to starboard. */
  readonly gz: number;
  readonly trim: Radians;
  /** Sheer over water where it is least; negative where water comes in. */
  readonly leastFreeboard: number;
}

/** A GZ curve: its points up to the heel where water comes in, and the first heel that has no position of rest. */
export interface GzCurve {
  /** In the order of the heels asked for. */
  readonly points: readonly GzPoint[];
  /** Null where water comes in at none of them. */
  readonly endsAt: Radians | null;
}

/** Heels asked for unless others are given: 0 to 60° by 2.5°. */
const HEELS = Array.from({ length: 25 }, (_, i) => toRadians(2.5 * i));

/**
 * The curve of righting arms under fixed masses: at each heel (radians, starboard positive, rising) the boat sinks and
 * trims to rest. SI, boat frame. It stops where the sheer goes under. With a kneeling paddler in a racing canoe every
 * arm is negative; the masses do not move with the heel, as a paddler's do.
 */
export function gzCurve(
  hull: Hull,
  load: { masses: readonly PointMass[]; waterDensity: number },
  heels: readonly Radians[] = HEELS,
): GzCurve {
  const points: GzPoint[] = [];
  let start: { draft: number; trim: number } | null = null;
  for (const heel of heels) {
    const afloat = floatAtRest(hull, { ...load, heel, start });
    if (afloat.kind !== 'afloat') return { points, endsAt: heel };
    start = afloat;
    points.push({
      heel,
      gz: rightingArm(afloat),
      trim: afloat.trim,
      leastFreeboard: afloat.leastFreeboard.value,
    });
  }
  return { points, endsAt: null };
}
