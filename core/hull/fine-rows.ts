import type { Hull, SectionRows } from './hull.ts';
import { loftedInto } from './section-at.ts';

/** Rows of points as lines are cut from them. */
export type LineRows = Pick<SectionRows, 'count' | 'points' | 'x' | 'y' | 'z'>;

/**
 * Lofted rows at every station and `perInterval` rows to each interval: lines cut from them look fair, where rows at the
 * stations alone would make corners. Metres, boat frame. 5 stations with 8 to an interval make 33 rows.
 */
export function fineRows(hull: Hull, perInterval: number): LineRows {
  const { points } = hull.loft;
  const xs = hull.stations.flatMap(({ x }, i) => {
    const next = hull.stations[i + 1];
    if (!next) return [x];
    return Array.from({ length: perInterval }, (_, k) => x + ((next.x - x) * k) / perInterval);
  });
  const [y, z] = [new Float64Array(xs.length * points), new Float64Array(xs.length * points)];
  for (const [row, x] of xs.entries()) {
    const [from, to] = [row * points, (row + 1) * points];
    loftedInto(hull, x, { y: y.subarray(from, to), z: z.subarray(from, to) });
  }
  return { count: xs.length, points, x: Float64Array.from(xs), y, z };
}
