import type { Mutable } from '../units/mutable.ts';
import type { Vec3 } from './vec3.ts';

/*
 * Vectors that are written over. A stance is solved sixty times a second while a hand is dragging, and each solve would leave
 * thousands of short-lived vectors behind if every sum made a new one; the search keeps its vectors and writes into them.
 * Everywhere else `vec3.ts` is plainer and does as well.
 */

/** A vector that its owner writes over. */
export type MutableVec3 = Mutable<Vec3>;

/** A new vector to write into. */
export function blank(): MutableVec3 {
  return { x: 0, y: 0, z: 0 };
}

/** into = a. */
export function copyTo(into: MutableVec3, a: Vec3): MutableVec3 {
  into.x = a.x;
  into.y = a.y;
  into.z = a.z;
  return into;
}

/** into = k·a. */
export function scaleTo(into: MutableVec3, a: Vec3, k: number): MutableVec3 {
  into.x = a.x * k;
  into.y = a.y * k;
  into.z = a.z * k;
  return into;
}

/** into = a − b. */
export function subtractTo(into: MutableVec3, a: Vec3, b: Vec3): MutableVec3 {
  into.x = a.x - b.x;
  into.y = a.y - b.y;
  into.z = a.z - b.z;
  return into;
}

/** into = into + k·b. */
export function addTimes(into: MutableVec3, k: number, b: Vec3): MutableVec3 {
  into.x += k * b.x;
  into.y += k * b.y;
  into.z += k * b.z;
  return into;
}

/** into = a × b; another vector than both. */
export function crossTo(into: MutableVec3, a: Vec3, b: Vec3): MutableVec3 {
  into.x = a.y * b.z - a.z * b.y;
  into.y = a.z * b.x - a.x * b.z;
  into.z = a.x * b.y - a.y * b.x;
  return into;
}
