import type { PointMass } from './afloat.ts';

/** Total mass and common centre of a list: kilograms and metres, boat frame. The centre is the origin when there is no mass. */
export function combinedMass(masses: readonly PointMass[]): PointMass {
  let mass = 0;
  let x = 0;
  let y = 0;
  let z = 0;
  for (const m of masses) {
    mass += m.mass;
    x += m.mass * m.x;
    y += m.mass * m.y;
    z += m.mass * m.z;
  }
  const per = mass > 0 ? 1 / mass : 0;
  return { mass, x: x * per, y: y * per, z: z * per };
}

/**
 * k² of a list of point masses about the fore-and-aft axis through their common centre, m²; 0 when there is no mass. Two
 * equal masses a metre apart, one over the other, give .25. What each mass has of its own about that axis is left out.
 */
export function rollRadiusSquared(masses: readonly PointMass[]): number {
  const centre = combinedMass(masses);
  const inertia = masses.reduce(
    (sum, m) => sum + m.mass * ((m.y - centre.y) ** 2 + (m.z - centre.z) ** 2),
    0,
  );
  return centre.mass > 0 ? Math.max(0, inertia) / centre.mass : 0;
}
