import type { BoatPoint } from '../frame/vec3.ts';
import type { Hull } from '../hull/hull.ts';
import type { Attitude } from '../hydrostatics/afloat.ts';

/** Height of the water plane over a place in plan, metres, boat frame: z = draft − x·tan(trim) − y·tan(heel). */
export function waterZAt({ draft, trim, heel }: Attitude, { x, y }: Pick<BoatPoint, 'x' | 'y'>): number {
  return draft - x * Math.tan(trim) - y * Math.tan(heel);
}

/** Height of the sheer at x, metres, boat frame: straight between the sections; past an end, that of the end. */
export function sheerZAt({ rows }: Hull, x: number): number {
  const sheer = (row: number) => rows.z[(row + 1) * rows.points - 1]!;
  let row = 1;
  while (row < rows.count - 1 && rows.x[row]! < x) row++;
  const from = rows.x[row - 1]!;
  const share = Math.min(1, Math.max(0, (x - from) / (rows.x[row]! - from)));
  return sheer(row - 1) + share * (sheer(row) - sheer(row - 1));
}
