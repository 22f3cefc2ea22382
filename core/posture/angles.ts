import { cross, dot, norm, subtract, type Vec3 } from '../frame/vec3.ts';
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

/** Included angle at `corner` between the ways to `from` and to `to`, radians, 0 to π: π is straight. */
export function cornerAngle(from: Vec3, corner: Vec3, to: Vec3): Radians {
  const u = subtract(from, corner);
  const w = subtract(to, corner);
  return Math.atan2(norm(cross(u, w)), dot(u, w));
}

/** What a hip angle is measured between: the trunk's way up, the unit vector from kneeling to front hip, hip to knee. */
export interface HipWays {
  readonly up: Vec3;
  readonly across: Vec3;
  readonly thigh: Vec3;
}

/** Bends an angle of nothing against nothing to a finite one, square metres. */
const LEAST = 1e-15;

/**
 * Angle trunk–hip–thigh in the plane square to the line of the hips, radians: π is a straight line, less is flexion, more
 * is extension. Smooth through π, where an unsigned angle would have a corner.
 */
export function hipAngle({ up, across, thigh }: HipWays): Radians {
  return Math.PI - Math.atan2(-dot(cross(up, thigh), across), -dot(up, thigh));
}

/** How `hipAngle` changes while its three ways change by `change`. */
export function hipAngleSlope({ up, across, thigh }: HipWays, change: HipWays): number {
  const area = cross(up, thigh);
  const sine = -dot(area, across);
  const cosine = -dot(up, thigh);
  const sineSlope =
    -dot(cross(change.up, thigh), across) - dot(cross(up, change.thigh), across) - dot(area, change.across);
  const cosineSlope = -dot(change.up, thigh) - dot(up, change.thigh);
  return (sine * cosineSlope - cosine * sineSlope) / (sine * sine + cosine * cosine + LEAST);
}

/** Distance of the ends of two links whose included angle is `angle`, and how it grows per radian. Law of cosines. */
export function spanAtAngle(angle: Radians, first: number, second: number): { span: number; slope: number } {
  const span = Math.sqrt(Math.max(LEAST, first ** 2 + second ** 2 - 2 * first * second * Math.cos(angle)));
  return { span, slope: (first * second * Math.sin(angle)) / span };
}
