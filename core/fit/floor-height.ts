import type { Boat } from './boat-schema.ts';

/**
 * Height of the floorboard's top above the boat frame's origin at `x` (boat frame, both metres): between the points of its
 * profile along straight lines, beyond them as at the nearest one; without a profile the one height that was measured. At a
 * third of the way from a point 3 cm to one 6 cm high it is 4 cm.
 */
export function floorHeightAt({ heightM, profile }: Boat['floorboard'], x: number): number {
  if (!profile || profile.length === 0) return heightM;
  const points = profile.toSorted((a, b) => a.xM - b.xM);
  const after = points.findIndex(({ xM }) => xM >= x);
  const [before, next] = [points[after - 1], points[after]];
  if (!next) return points.at(-1)!.heightM;
  if (!before || next.xM === before.xM) return next.heightM;
  return before.heightM + ((next.heightM - before.heightM) * (x - before.xM)) / (next.xM - before.xM);
}
