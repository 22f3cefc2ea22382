import type { HullCorrection } from '../document/hull-kinds-schema.ts';
import type { Hull, Station } from './hull.ts';
import { loftHull } from './loft-hull.ts';

/**
 * The hull with a float check's correction: every half-breadth becomes y · (1 + (fullness + foreAftFullness · ξ) · (1 − ζ)),
 * where ξ runs from −1 at the stern to 1 at the bow and ζ from 0 at the keel to 1 at the sheer. Sheer, keel, length and depth
 * stay: a tape reads them well. The bottom, which it reads badly, becomes fuller (above 0) or finer. Parameters without
 * dimension; returns a new hull. The form is this project's own.
 */
export function correctHull(
  hull: Hull,
  { fullness, foreAftFullness }: Pick<HullCorrection, 'fullness' | 'foreAftFullness'>,
): Hull {
  if (fullness === 0 && foreAftFullness === 0) return hull;
  const middle = (hull.aftX + hull.foreX) / 2;
  const stations = hull.stations.map(({ x, section }): Station => {
    const fuller = fullness + foreAftFullness * ((x - middle) / (hull.length / 2));
    const keel = section[0]![1];
    const depth = section[section.length - 1]![1] - keel;
    const factor = (z: number) =>
      depth > 0 ? Math.max(0, 1 + fuller * (1 - Math.min(1, Math.max(0, (z - keel) / depth)))) : 1;
    return { x, section: section.map(([y, z]) => [y * factor(z), z] as const) };
  });
  return loftHull({ name: hull.name, stations, between: hull.between });
}
