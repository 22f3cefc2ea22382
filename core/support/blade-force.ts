import { PEAK_OVER_MEAN } from '../document/stroke-defaults.ts';

/**
 * Peak force on the blade over body mass to the power of two thirds, N·kg^(−2/3): 16.3 ± 4.8 between six elite dragon-boat
 * paddlers (Ho, Smith & O'Meara 2009, J Sports Sci 27:37–47). Another boat and another stroke: a first estimate for a canoeist.
 * Strength follows a muscle's cross-section, so mass to the power of two thirds. Their mean force was 7.9; the half sine of
 * `PEAK_OVER_MEAN` gives 10.4, on the safe side for what must hold.
 */
export const PEAK_FORCE_PER_MASS = 16.3;

/** Standard deviation of it between athletes, as a share: 4.8 of 16.3. */
export const PEAK_FORCE_SPREAD = 4.8 / 16.3;

/** The parts of a blade's force that no rule gives, as shares of its forward part: lift, and across the boat from the paddler out. */
export interface FreeForce {
  /** Positive lifts the boat. */
  readonly lift: number;
  /** Positive away from the paddler. */
  readonly out: number;
}

/** No lift and nothing across: the default. */
export const NO_FREE_FORCE: FreeForce = { lift: 0, out: 0 };

/**
 * Standard deviations of those parts about 0 (estimates). The water pushes about square to the blade, and while it pushes
 * hardest the shaft leans no more than some 17° forward or back of upright (twice 0.15 is its tangent), out or in no more than
 * some 11°: over the drive lift and press down, out and in, mostly cancel.
 */
export const FREE_FORCE_SD: FreeForce = { lift: 0.15, out: 0.1 };

/**
 * Mean blade force of the drive, newtons, when the athlete has no value of their own: the peak by body mass (kilograms), over
 * the peak's share of a force that rises and falls like half a sine wave. 80 kg: a peak of 303 N, a mean of 193 N; 51 kg: 143
 * N.
 */
export function usualDriveForce(massKg: number): number {
  return (PEAK_FORCE_PER_MASS * massKg ** (2 / 3)) / PEAK_OVER_MEAN;
}
