import { PEAK_OVER_MEAN } from '../document/stroke-defaults.ts';

/**
 * Peak force on the blade over body mass to the power of two thirds, N·kg^(−2/3): 16.3 ± 4.8 between élite dragon-boat paddlers
 * (published; another boat and another stroke, so that it is a beginning and not a measure of a canoeist). Strength goes with
 * a muscle's cross-section, so with mass to the power of two thirds.
 */
export const PEAK_FORCE_PER_MASS = 16.3;

/** The same between athletes, share of it: 4.8 of 16.3. */
export const PEAK_FORCE_SPREAD = 4.8 / 16.3;

/**
 * Mean blade force of the drive when the athlete has none of their own, newtons: the peak by body mass (kilograms), over the
 * peak's share of a force that rises and falls like half a sine wave. 80 kg: a peak of 303 N, a mean of 193 N; 51 kg: 143 N.
 */
export function usualDriveForce(massKg: number): number {
  return (PEAK_FORCE_PER_MASS * massKg ** (2 / 3)) / PEAK_OVER_MEAN;
}
