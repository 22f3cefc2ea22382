import type { Hull } from '../hull/hull.ts';
import { GRAVITY } from '../units/gravity.ts';
import type { Afloat, BalanceDemand, PointMass } from './afloat.ts';
import { combinedMass, rollRadiusSquared } from './combined-mass.ts';
import { equilibriumHeel } from './equilibrium-heel.ts';

/**
 * What the crew must balance: SI, boat frame. `afloat` is where the boat lies under the same masses at the heel it is
 * held at. Under a kneeling paddler a racing canoe's GM is negative: the crew balances it as one balances a bicycle, and
 * the tipping time √(k²/(g·|GM|)) says how quick they must be; k² is that of the masses as points about the
 * fore-and-aft axis through their common centre, so the true time is a little longer. With GM above 0 the boat has
 * a heel of its own, found with free trim; null too when it would swamp first.
 *
 * 100 kg with its centre 10 mm to port is a steady moment of 9.81 N·m.
 */
export function balanceDemand(
  hull: Hull,
  afloat: Afloat,
  load: { masses: readonly PointMass[]; waterDensity: number },
): BalanceDemand {
  const centre = combinedMass(load.masses);
  const gm = afloat.transverseGm;
  return {
    transverseGm: gm,
    offCentre: centre.y,
    steadyMoment: centre.mass * GRAVITY * centre.y,
    tippingTime: gm < 0 ? Math.sqrt(rollRadiusSquared(load.masses) / (GRAVITY * -gm)) : null,
    equilibriumHeel: gm > 0 ? equilibriumHeel(hull, afloat, load) : null,
  };
}
