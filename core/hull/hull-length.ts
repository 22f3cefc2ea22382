import type { HullSource } from '../document/hull-kinds-schema.ts';

/** Length of a hull by its document, metres: the length given, or from the first to the last station of a table of offsets. */
export function hullLengthOf(hull: HullSource): number {
  if (hull.kind !== 'offsets') return hull.lengthM;
  const xs = hull.stations.map(({ xM }) => xM);
  return Math.max(...xs) - Math.min(...xs);
}
