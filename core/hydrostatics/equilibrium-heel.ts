import type { Hull } from '../hull/hull.ts';
import type { Radians } from '../units/angle.ts';
import type { Afloat, PointMass } from './afloat.ts';
import { floatAtRest } from './float-at-rest.ts';
import { rightingArm } from './righting-arm.ts';
import { STEEPEST } from './water-plane.ts';

/** Heel is found to this, radians: under a thousandth of a degree. */
const HEEL_TOLERANCE = 1e-8;

/** Most steps of the search: bisecting a right angle this often would reach the tolerance. */
const MOST_STEPS = 30;

/** One step of heel at most this, radians: the arm bends as the side goes under. */
const MOST_STEP = 0.2;

/**
 * The heel at which a boat with GM above 0 comes to rest under its masses, trim free, by Newton's method on the
 * righting arm, whose slope is GM. Radians, positive starboard down; null when it swamps or finds none.
 */
export function equilibriumHeel(
  hull: Hull,
  from: Afloat,
  load: { masses: readonly PointMass[]; waterDensity: number },
): Radians | null {
  let afloat = from;
  for (let i = 0; i < MOST_STEPS; i++) {
    if (afloat.transverseGm <= 0) return null;
    const step = -rightingArm(afloat) / afloat.transverseGm;
    const heel = afloat.heel + Math.max(-MOST_STEP, Math.min(MOST_STEP, step));
    if (Math.abs(heel) > STEEPEST) return null;
    const next = floatAtRest(hull, { ...load, heel, start: afloat });
    if (next.kind !== 'afloat') return null;
    afloat = next;
    if (Math.abs(step) < HEEL_TOLERANCE) return afloat.heel;
  }
  return null;
}
