import { dot, type Vec3 } from '../frame/vec3.ts';
import { addTimes, blank, type MutableVec3, scaleTo } from '../frame/vec3-in-place.ts';

/** A unit vector that leans, and how it changes with its pitch and with its roll (per radian). */
export interface Leaning {
  /** Length 1. */
  readonly up: Vec3;
  /** Slope as it leans forward. */
  readonly byPitch: Vec3;
  /** Slope as it leans to the side. */
  readonly byRoll: Vec3;
}

/** Keeps the division finite for a direction that leans by 90° both ways. */
const LEAST = 1e-12;

/**
 * The unit vector whose side view leans forward by `pitch` and whose view from behind leans toward +y by `roll`, radians: (tan
 * pitch, tan roll, 1) made a unit vector, in a form that holds beyond 90° too. (0, 0) is straight up.
 */
export function leaning(pitch: number, roll: number): Leaning {
  return leanTo(blankLeaning(), pitch, roll);
}

/** A leaning to be written over. */
export interface MutableLeaning {
  readonly up: MutableVec3;
  readonly byPitch: MutableVec3;
  readonly byRoll: MutableVec3;
}

/** One still to be written. */
export function blankLeaning(): MutableLeaning {
  return { up: blank(), byPitch: blank(), byRoll: blank() };
}

/** The same, written into `into`. */
export function leanTo(into: MutableLeaning, pitch: number, roll: number): MutableLeaning {
  const { up, byPitch, byRoll } = into;
  const sinP = Math.sin(pitch);
  const cosP = Math.cos(pitch);
  const sinR = Math.sin(roll);
  const cosR = Math.cos(roll);
  up.x = sinP * cosR;
  up.y = cosP * sinR;
  up.z = cosP * cosR;
  const share = 1 / Math.sqrt(dot(up, up) + LEAST);
  scaleTo(up, up, share);
  byPitch.x = cosP * cosR;
  byPitch.y = -sinP * sinR;
  byPitch.z = -sinP * cosR;
  byRoll.x = -sinP * sinR;
  byRoll.y = cosP * cosR;
  byRoll.z = -cosP * sinR;
  scaleTo(addTimes(byPitch, -dot(up, byPitch), up), byPitch, share);
  scaleTo(addTimes(byRoll, -dot(up, byRoll), up), byRoll, share);
  return into;
}
