import { STANCE_ANGLES, type StanceAngle } from '../posture/stance.ts';
import type { Radians } from '../units/angle.ts';

/** An angle that was seen otherwise than planned: seen less planned, and its doubt (one standard deviation), radians. */
export interface ClearDifference {
  /** Which angle it is. */
  readonly angle: StanceAngle;
  /** Positive where more was seen than planned. */
  readonly by: Radians;
  readonly sd: Radians;
}

/** A difference is clear past so many standard deviations: 95 %. */
const CLEAR = 1.96;
/** Less than this is nothing to speak of, radians: two degrees. */
const LEAST = (2 * Math.PI) / 180;

/** Angles that differ clearly from the plan, the largest difference first. */
export function clearDifferences(
  planned: Readonly<Record<StanceAngle, Radians>>,
  seen: Readonly<Record<StanceAngle, Radians>>,
  sd: Readonly<Record<StanceAngle, Radians>>,
): ClearDifference[] {
  return STANCE_ANGLES.map((angle) => ({ angle, by: seen[angle] - planned[angle], sd: sd[angle] }))
    .filter(({ by, sd: doubt }) => Math.abs(by) > Math.max(LEAST, CLEAR * doubt))
    .sort((a, b) => Math.abs(b.by) - Math.abs(a.by));
}
