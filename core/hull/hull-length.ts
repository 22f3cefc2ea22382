import type { HullSource } from '../document/hull-kinds-schema.ts';

/** Length of a hull as its document says it, metres: the tape's or the usual hull's, or from the first to the last station of the offsets. */
export function hullLengthOf(hull: HullSource): number {
  if (hull.kind !== 'offsets') return hull.lengthM;
  const xs = hull.stations.map(({ xM }) => xM);
  return Math.max(...xs) - Math.min(...xs);
}
