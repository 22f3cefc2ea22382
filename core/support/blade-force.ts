import { PEAK_OVER_MEAN } from '../document/stroke-defaults.ts';

/**
 * Peak force on the blade over body mass to the power of two thirds, N·kg^(−2/3): 16.3 ± 4.8 between élite dragon-boat paddlers
 * (published; another boat and another stroke, so that it is a beginning and not a measure of a canoeist). Strength goes with
 * a muscle's cross-section, so with mass to the power of two thirds.
 */
export const PEAK_FORCE_PER_MASS = 16.3;

/** The same between athletes, share of it: 4.8 of 16.3. */
export const PEAK_FORCE_SPREAD = 4.8 / 16.3;

/** The parts of a blade's force that no rule gives, as shares of its forward part: lift, and across the boat from the paddler out. */
export interface FreeForce {
  /** Positive lifts the boat. */
  readonly lift: number;
  /** Positive away from the paddler. */
  readonly out: number;
}

/** No lift and nothing across: what the drive is told with. */
export const NO_FREE_FORCE: FreeForce = { lift: 0, out: 0 };

/**
 * How far those parts stray from nothing, one standard deviation (estimates of ours). The water pushes about square to the blade, and
 * while it pushes hardest the shaft leans no more than some 17° forward or back of upright (twice 0.15 is its tangent), out or in
 * no more than some 11°: over the drive lift and press down, out and in, mostly cancel.
 */
export const FREE_FORCE_SD: FreeForce = { lift: 0.15, out: 0.1 };

/**
 * Mean blade force of the drive when the athlete has none of their own, newtons: the peak by body mass (kilograms), over the
 * peak's share of a force that rises and falls like half a sine wave. 80 kg: a peak of 303 N, a mean of 193 N; 51 kg: 143 N.
 */
export function usualDriveForce(massKg: number): number {
  return (PEAK_FORCE_PER_MASS * massKg ** (2 / 3)) / PEAK_OVER_MEAN;
}
