import { cross, dot, norm, subtract, type Vec3 } from '../frame/vec3.ts';
import { addTimes, blank, crossTo, type MutableVec3, scaleTo } from '../frame/vec3-in-place.ts';
import type { Radians } from '../units/angle.ts';

/*
 * The angles a coach reads, as the figure gives them. Joints are joint centres.
 *
 * frontKnee, kneelingKnee   `cornerAngle` hip–knee–ankle: 180° is a straight leg.
 * kneelingHip, frontHip     `hipAngle` trunk–hip–thigh in the plane square to the line of the hips: 180° is a straight
 *                           line, less is flexion, more is extension.
 * rearAnkle, frontAnkle     `cornerAngle` knee–ankle–forefoot, the forefoot's way being that from ankle to ball (rear) or
 *                           along the sole (front): 90° is square, less has the toes drawn up.
 * trunkPitch, thighPitch    lean from the vertical in the side view, forward positive.
 * trunkRoll, thighRoll      lean from the vertical seen from behind; the trunk's is positive toward the paddling side,
 *                           the thigh's toward the kneeling side.
 * pelvisYaw                 turn of the line of the hips about the vertical, off-side hip forward positive.
 */

/** Included angle at `corner` between the directions to `from` and to `to`, radians, 0 to π: π is straight. */
export function cornerAngle(from: Vec3, corner: Vec3, to: Vec3): Radians {
  const u = subtract(from, corner);
  const w = subtract(to, corner);
  return Math.atan2(norm(cross(u, w)), dot(u, w));
}

/** The three directions of a hip angle: trunk, line of the hips, thigh. */
export interface HipWays {
  /** Unit vector from the hips to the shoulders. */
  readonly up: Vec3;
  /** Unit vector from the kneeling to the front hip. */
  readonly across: Vec3;
  /** From hip to knee, any length. */
  readonly thigh: Vec3;
}

/** Keeps a division finite where both vectors vanish, square metres. */
const LEAST = 1e-15;

/**
 * Angle trunk–hip–thigh in the plane square to the line of the hips, radians: π is a straight line, less is flexion, more
 * is extension. Smooth through π, where an unsigned angle would have a corner.
 */
export function hipAngle({ up, across, thigh }: HipWays): Radians {
  return Math.PI - Math.atan2(-dot(cross(up, thigh), across), -dot(up, thigh));
}

/** How `hipAngle` changes while its three directions change by `change`. */
export function hipAngleSlope(ways: HipWays, change: HipWays): number {
  const { up, across, thigh } = hipGradientTo({ up: blank(), across: blank(), thigh: blank() }, ways);
  return dot(up, change.up) + dot(across, change.across) + dot(thigh, change.thigh);
}

/** Gradient of a hip angle by its three directions, to be overwritten. */
export type HipGradient = Readonly<Record<keyof HipWays, MutableVec3>>;

/** The gradient of `hipAngle` by its three directions: the slope by each unknown is then three scalar products. */
export function hipGradientTo(into: HipGradient, { up, across, thigh }: HipWays): HipGradient {
  crossTo(into.across, up, thigh);
  const sine = -dot(into.across, across);
  const cosine = -dot(up, thigh);
  const share = 1 / (sine * sine + cosine * cosine + LEAST);
  scaleTo(into.across, into.across, cosine * share);
  scaleTo(crossTo(into.up, thigh, across), into.up, cosine * share);
  scaleTo(crossTo(into.thigh, across, up), into.thigh, cosine * share);
  addTimes(into.up, -sine * share, thigh);
  addTimes(into.thigh, -sine * share, up);
  return into;
}

/** Distance of the ends of two links whose included angle is `angle`, and how it grows per radian. Law of cosines. */
export function spanAtAngle(angle: Radians, first: number, second: number): { span: number; slope: number } {
  const span = Math.sqrt(Math.max(LEAST, first ** 2 + second ** 2 - 2 * first * second * Math.cos(angle)));
  return { span, slope: (first * second * Math.sin(angle)) / span };
}
