import type { Boat } from '../document/boat-schema.ts';
import { USUAL_DOUBT, USUAL_LIMITS } from '../document/usual-classes.ts';
import { hullLengthOf } from '../hull/hull-length.ts';
import { hullOfBoat } from '../hull/hull-of-boat.ts';

/** A value brought between two ends. */
const within = (value: number, [least, most]: readonly [number, number]) =>
  Math.min(most, Math.max(least, value));

/**
 * The boat as if it were not measured: the usual lines of its class at its own length and greatest beam, without a float check.
 * `narrowedBy` compares a measured boat with it. A boat of no class counts as a training single.
 */
export function unmeasuredBoat(boat: Boat): Boat {
  const bare = { ...boat, floatCheck: null, correction: null };
  if (boat.hull.kind === 'usual') return bare;
  const { stations } = hullOfBoat(bare);
  const half = stations.flatMap(({ section }) => section.map(([y]) => y)).reduce((a, b) => Math.max(a, b), 0);
  return {
    ...bare,
    hull: {
      kind: 'usual',
      boatClass: boat.boatClass === 'none' ? 'training' : boat.boatClass,
      lengthM: within(hullLengthOf(boat.hull), USUAL_LIMITS.lengthM),
      beamM: within(2 * half, USUAL_LIMITS.beamM),
      doubt: USUAL_DOUBT,
    },
  };
}
