import type { PointMass } from './afloat.ts';

/** Total mass and common centre of a list: kilograms and metres, boat frame. Without any mass the centre is the origin. */
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
