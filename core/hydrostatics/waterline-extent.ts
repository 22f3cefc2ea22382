import { SHEER_TOUCH } from '../hull/clip-row.ts';
import type { Hull } from '../hull/hull.ts';
import { ROW, SUM, VALUES_PER_ROW } from '../hull/section-rows.ts';
import type { WaterPlane } from '../hull/water-plane.ts';

/** Greatest measures of what is under water, metres and square metres. All 0 when nothing is. */
export interface WaterlineExtent {
  /** x of the aft end of the waterline. */
  readonly aftEnd: number;
  /** x of the fore end. */
  readonly foreEnd: number;
  /** Fore end less aft end. */
  readonly length: number;
  /** Greatest breadth of the waterline across the boat, seen from above. */
  readonly beam: number;
  /** Greatest depth of the hull under the water plane, measured along z. */
  readonly depth: number;
  /** Area of the largest section under water. */
  readonly greatestSection: number;
}

/**
 * Reads the extent from the rows that `immersedSums` has just clipped at this plane; call it before anything else uses
 * the hull's scratch. Ends lie where the keel leaves the water or the sheer goes under it, whichever comes first.
 */
export function waterlineExtent(hull: Hull, plane: WaterPlane): WaterlineExtent {
  const { rows, scratch } = hull;
  const { values, sums } = scratch;
  let beam = 0;
  let depth = 0;
  let greatestSection = 0;
  let aft = -1;
  let fore = -1;
  for (let row = 0; row < rows.count; row++) {
    const at = row * VALUES_PER_ROW;
    const height = plane.draft - plane.alongSlope * rows.x[row]!;
    beam = Math.max(beam, values[at + ROW.breadth]!);
    depth = Math.max(depth, height - values[at + ROW.least]!);
    greatestSection = Math.max(greatestSection, values[at + ROW.area]!);
    if (values[at + ROW.least]! <= height && values[at + ROW.most]! >= height - SHEER_TOUCH) {
      if (aft < 0) aft = row;
      fore = row;
    }
  }
  if (aft < 0) return { aftEnd: 0, foreEnd: 0, length: 0, beam, depth, greatestSection };
  const aftEnd = Math.max(sums[SUM.wetAft]!, sheerCrossing(hull, plane, aft, -1));
  const foreEnd = Math.min(sums[SUM.wetFore]!, sheerCrossing(hull, plane, fore, 1));
  return { aftEnd, foreEnd, length: Math.max(0, foreEnd - aftEnd), beam, depth, greatestSection };
}

/** x where the sheer dips under between a row at the waterline and the next one outward; that row's limit when it does not. */
function sheerCrossing(hull: Hull, plane: WaterPlane, row: number, step: 1 | -1): number {
  const { rows, scratch } = hull;
  const next = row + step;
  if (next < 0 || next >= rows.count) return rows.x[row]!;
  const above = (r: number) =>
    scratch.values[r * VALUES_PER_ROW + ROW.most]! - plane.draft + plane.alongSlope * rows.x[r]!;
  const here = above(row);
  const there = above(next);
  const share = there < -SHEER_TOUCH ? here / (here - there) : 1;
  return rows.x[row]! + share * (rows.x[next]! - rows.x[row]!);
}
