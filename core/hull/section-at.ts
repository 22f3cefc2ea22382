import type { BoatPoint } from '../frame/vec3.ts';
import type { HullFace } from './broader-face.ts';
import type { Hull } from './hull.ts';
import { loftSection } from './loft.ts';

/** A lofted half-section in arrays of its own: metres, keel to sheer. */
export interface LoftedSection {
  /** Half-breadths and heights of the same points. */
  readonly y: Float64Array;
  readonly z: Float64Array;
}

/**
 * The half-section at x in new arrays, lofted between its stations; x beyond an end gives that end's. Metres, boat frame. It is
 * the surface that hydrostatics integrate: what is drawn is what floats.
 */
export function loftedSection(hull: HullFace, x: number): LoftedSection {
  const { points } = hull.loft;
  return loftedInto(hull, x, { y: new Float64Array(points), z: new Float64Array(points) });
}

/** The same, written into given arrays with one value for each point of a section; returns those arrays. */
export function loftedInto(hull: HullFace, x: number, { y, z }: LoftedSection): LoftedSection {
  const { loft, scratch } = hull;
  const at = Math.min(hull.foreX, Math.max(hull.aftX, x));
  let i = 0;
  while (i < loft.count - 2 && loft.x[i + 1]! <= at) i++;
  const share = (at - loft.x[i]!) / (loft.x[i + 1]! - loft.x[i]!);
  loftSection(loft, { interval: i, share }, { y, z, slopeY: scratch.slopeY, slopeZ: scratch.slopeZ, at: 0 });
  return { y, z };
}

/**
 * The half-section at x as points from keel to sheer on the port side (y ≥ 0): the station's own, or lofted
 * between stations, for drawing. Metres, boat frame; x beyond an end gives that end's section.
 */
export function sectionAt(hull: Hull, x: number): BoatPoint[] {
  const { y, z } = loftedSection(hull, x);
  return Array.from(y, (breadth, j) => ({ x, y: breadth, z: z[j]! }));
}

/** Height of the sheer at x, metres, boat frame; beyond an end that end's height. */
export function sheerHeight(hull: Hull, x: number): number {
  const { z } = loftedSection(hull, x);
  return z[z.length - 1]!;
}

/** Half-breadth of the sheer at x, metres; held at the ends. */
export function sheerHalfBreadth(hull: Hull, x: number): number {
  const { y } = loftedSection(hull, x);
  return y[y.length - 1]!;
}

/** Height of the keel line at x, metres, boat frame; held at the ends. */
export function keelHeight(hull: Hull, x: number): number {
  return loftedSection(hull, x).z[0]!;
}

/** Half-breadth of the hull's outer face at a place and height, metres; null below the keel, above the sheer, beyond the ends. */
export function halfBreadth(hull: Hull, x: number, height: number): number | null {
  if (x < hull.aftX || x > hull.foreX) return null;
  const { y, z } = loftedSection(hull, x);
  return breadthAtHeight({ y, z }, height);
}

/** Greatest half-breadth of a section at a height, metres; null where it has none. */
export function breadthAtHeight({ y, z }: LoftedSection, height: number): number | null {
  let breadth = -1;
  for (let j = 1; j < y.length; j++) {
    const low = z[j - 1]!;
    const high = z[j]!;
    if (height < Math.min(low, high) || height > Math.max(low, high)) continue;
    const share = high === low ? 1 : (height - low) / (high - low);
    const here = y[j - 1]! + share * (y[j]! - y[j - 1]!);
    breadth = Math.max(breadth, 0, here, high === low ? y[j - 1]! : 0);
  }
  return breadth < 0 ? null : breadth;
}
