import type { BoatPoint } from '../frame/vec3.ts';
import type { Hull } from '../hull/hull.ts';
import { innerHalfBreadth } from '../hull/inner-half-breadth.ts';

/**
 * Least distance of an outline's corners (boat frame, metres) to the hull's inner face beside them, each at its own
 * height; negative beyond it. A corner where there is no hull (past its ends, above the sheer, in the bottom) counts as
 * outside by its whole distance from the centreline. `skin` is the hull's thickness, metres.
 */
export function insideHull(outline: readonly BoatPoint[], hull: Hull, skin: number): number {
  let least = Number.POSITIVE_INFINITY;
  for (const corner of outline) {
    const breadth = innerHalfBreadth(hull, corner, skin) ?? 0;
    least = Math.min(least, breadth - Math.abs(corner.y));
  }
  return least;
}
