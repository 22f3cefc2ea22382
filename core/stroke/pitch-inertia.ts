import type { Hull } from '../hull/hull.ts';

/**
 * Pitch inertia of a bare hull about its own centre, kg·m²: its mass spread evenly over its shell along the boat, heights
 * left out (they add under 1 %). A tube of length L gives m·L²/12.
 */
export function shellPitchInertia(hull: Hull, massKg: number): number {
  const { rows } = hull;
  const girth = (row: number) => rows.shell[(row + 1) * rows.points - 1]!;
  const area = alongHull(hull, girth);
  if (!(area > 0)) return 0;
  const centre = alongHull(hull, (row) => girth(row) * rows.x[row]!) / area;
  return (massKg * alongHull(hull, (row) => girth(row) * (rows.x[row]! - centre) ** 2)) / area;
}

/** ∫ f dx over the hull by Simpson's rule on each station interval and the section midway in it. */
function alongHull({ rows }: Hull, at: (row: number) => number): number {
  let sum = 0;
  for (let row = 0; row + 2 < rows.count; row += 2) {
    const sixth = (rows.x[row + 2]! - rows.x[row]!) / 6;
    sum += sixth * (at(row) + 4 * at(row + 1) + at(row + 2));
  }
  return sum;
}
