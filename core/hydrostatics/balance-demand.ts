import type { Hull } from '../hull/hull.ts';
import { toRadians } from '../units/angle.ts';
import { GRAVITY } from '../units/gravity.ts';
import type { Afloat, BalanceDemand, PointMass } from './afloat.ts';
import { combinedMass } from './combined-mass.ts';
import { equilibriumHeel } from './equilibrium-heel.ts';

/**
 * What the crew must balance: SI, boat frame. `afloat` is the position of the boat under the same masses at the heel at which
 * it is held. Under a kneeling paddler a racing canoe's GM is negative: the crew balances it like a bicycle. A lean by a small
 * angle φ then turns the boat further over by weight × |GM| × sin φ (the righting moment of naval architecture, Δ·GM·sin φ,
 * with its sign turned), so each degree needs weight × |GM| × π/180. With GM above 0 the boat rests at a heel, found with free
 * trim; `equilibriumHeel` is null when it swamps first.
 *
 * 100 kg with its centre 10 mm to port is a steady moment of 9.81 N·m; with a GM of −0.4 m each degree asks for 6.8 N·m.
 */
export function balanceDemand(
  hull: Hull,
  afloat: Afloat,
  load: { masses: readonly PointMass[]; waterDensity: number },
): BalanceDemand {
  const gm = afloat.transverseGm;
  return {
    ...heldDemand(combinedMass(load.masses), gm),
    equilibriumHeel: gm > 0 ? equilibriumHeel(hull, afloat, load) : null,
  };
}

/** What the crew must hold at a transverse GM (metres) under masses with this common centre: all but the heel of rest. */
export function heldDemand(centre: PointMass, gm: number): Omit<BalanceDemand, 'equilibriumHeel'> {
  return {
    transverseGm: gm,
    offCentre: centre.y,
    steadyMoment: centre.mass * GRAVITY * centre.y,
    leanMoment: gm < 0 ? centre.mass * GRAVITY * -gm * toRadians(1) : null,
  };
}
