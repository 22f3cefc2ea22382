import type { Hull } from '../hull/hull.ts';
import { GRAVITY } from '../units/gravity.ts';
import type { Afloat, BalanceDemand, PointMass } from './afloat.ts';
import { combined } from './float-at-rest.ts';

/**
 * What the crew must balance at rest: metacentric height, combined mass from the centreline, the steady moment it
 * makes, and the time in which an unbalanced boat tips, √(k²/(g·|GM|)) with k² of all masses about the fore-and-aft
 * axis through their common centre. SI, boat frame.
 */
export function balanceDemand(
  _hull: Hull,
  afloat: Afloat,
  load: { masses: readonly PointMass[]; waterDensity: number },
): BalanceDemand {
  const centre = combined(load.masses);
  const inertia = load.masses.reduce(
    (sum, m) => sum + m.mass * ((m.y - centre.y) ** 2 + (m.z - centre.z) ** 2),
    0,
  );
  const gm = afloat.transverseGm;
  return {
    transverseGm: gm,
    offCentre: centre.y,
    steadyMoment: centre.mass * GRAVITY * centre.y,
    tippingTime: gm < 0 ? Math.sqrt(inertia / centre.mass / (GRAVITY * -gm)) : null,
    equilibriumHeel: gm > 0 ? -Math.atan(centre.y / gm) : null,
  };
}
