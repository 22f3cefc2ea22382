import type { MidDrive } from './mid-drive.ts';
import { USUAL_LEAN } from './usual-drive.ts';

/** What makes this stance's paddle longer (+) or shorter (−) than the rule, metres. The four add up to the whole difference. */
export interface LengthChanges {
  /** The knee higher over the water than usual: pad, floorboard, or how deep the boat floats. */
  readonly knee: number;
  /** The trunk more upright in the drive than usual. */
  readonly lean: number;
  /** The top hand higher over the shoulders than usual. */
  readonly hand: number;
  /** What is left: the body's proportions and the blade. */
  readonly body: number;
}

/**
 * Height of the knee joint over the water, metres: the median adult of the survey, a pad in the middle of its band, a usual
 * single (computed with this model).
 */
const USUAL_KNEE_OVER_WATER = 0.115;

/**
 * Splits the difference of the two lengths into what this stance changes against the usual one, for which the rule holds.
 * Metres. A pad 3 cm higher than usual gives `knee` 0.03.
 */
export function lengthChanges(
  difference: number,
  {
    middle,
    kneeOverWater,
    usualHand,
    trunk,
  }: { middle: MidDrive; kneeOverWater: number; usualHand: number; trunk: number },
): LengthChanges {
  const knee = kneeOverWater - USUAL_KNEE_OVER_WATER;
  const lean = trunk * (Math.cos(middle.trunkPitch) - Math.cos(USUAL_LEAN));
  const hand = middle.topHandOver - usualHand;
  return { knee, lean, hand, body: difference - knee - lean - hand };
}

/** The change that lengthens the paddle most. */
export function mainReason(changes: LengthChanges): keyof LengthChanges {
  const names = ['knee', 'lean', 'hand', 'body'] as const;
  return names.reduce((best, name) => (changes[name] > changes[best] ? name : best));
}
