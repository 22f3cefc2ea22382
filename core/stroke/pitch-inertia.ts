import type { Hull } from '../hull/hull.ts';
import { immersedSums } from '../hull/immersed-sums.ts';
import { ROW, VALUES_PER_ROW } from '../hull/section-rows.ts';
import type { Attitude, PointMass } from '../hydrostatics/afloat.ts';
import { combinedMass } from '../hydrostatics/combined-mass.ts';
import { waterPlane } from '../hydrostatics/water-plane.ts';

/**
 * Pitch inertia of masses about the athwartships axis through their common centre, kg·m²: Σ m·(x² + z²). `spread` adds
 * what the masses have about their own centres, as a hull of some length does.
 */
export function rigidPitchInertia(masses: readonly PointMass[], spread = 0): number {
  const centre = combinedMass(masses);
  return masses.reduce(
    (sum, m) => sum + m.mass * ((m.x - centre.x) ** 2 + (m.z - centre.z) ** 2),
    Math.max(0, spread),
  );
}

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

/**
 * Added pitch inertia of the water by strip theory, kg·m²: each metre of waterline of beam b carries ρπ/8·b² of water,
 * as half a flat plate does (Lewis 1929 with a section coefficient of 1), about the place `aboutX`. A box of beam B and length L about its middle has ρπ/8·B²·L³/12.
 */
export function addedPitchInertia(
  hull: Hull,
  attitude: Attitude,
  { waterDensity, aboutX }: { waterDensity: number; aboutX: number },
): number {
  immersedSums(hull, waterPlane(attitude));
  const { values } = hull.scratch;
  const perMetre = (waterDensity * Math.PI) / 8;
  return alongHull(hull, (row) => {
    const beam = values[row * VALUES_PER_ROW + ROW.breadth]!;
    return perMetre * beam ** 2 * (hull.rows.x[row]! - aboutX) ** 2;
  });
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
