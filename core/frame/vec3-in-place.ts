import type { Mutable } from '../units/mutable.ts';
import type { Vec3 } from './vec3.ts';

/*
 * Vectors that are overwritten. A stance is solved sixty times a second during a drag, and each solve would leave
 * thousands of short-lived vectors behind if every sum made a new one. The search keeps its vectors and writes into them. Everywhere else use the plainer `vec3.ts`.
 */

/** A vector that its owner overwrites. */
export type MutableVec3 = Mutable<Vec3>;

/**
 * A class, because the engine lays out all literals with the same names alike: where any library keeps something else than a
 * number in its own `{ x, y, z }`, each write to ours would allocate. A stance then took 2.5 times as long.
 */
class Overwritten implements MutableVec3 {
  x = 0;
  y = 0;
  z = 0;
}

/** A new vector to write into. */
export function blank(): MutableVec3 {
  return new Overwritten();
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

/** into = a × b; `into` must be neither a nor b. */
export function crossTo(into: MutableVec3, a: Vec3, b: Vec3): MutableVec3 {
  into.x = a.y * b.z - a.z * b.y;
  into.y = a.z * b.x - a.x * b.z;
  into.z = a.x * b.y - a.y * b.x;
  return into;
}
