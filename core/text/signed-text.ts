import type { Unit } from '../evaluation/finding.ts';
import type { QuantityId } from '../evaluation/quantities.ts';

/** Writes a value with its unit, as the reader's language and units want it; lengths finely where it is asked. */
export type FormatValue = (value: number, unit: Unit, inMillimetres?: boolean) => string;

/** How a value on either side of 0 is said: `{v}` is its size. What is left out is written plainly. */
interface SignWords {
  readonly under: string;
  readonly over?: string;
}

const INTO: SignWords = { under: '{v} into it' };
const OVERLAP: SignWords = { under: '{v} overlap' };
const LOWER: SignWords = { under: '{v} lower' };
const SIDES: SignWords = { under: '{v} to the right', over: '{v} to the left' };
const FORWARD: SignWords = { under: '{v} forward of it' };
const OFF_SIDE: SignWords = { under: '{v} to the off side' };
const OUTSIDE: SignWords = { under: '{v} outside' };
const TO_SPARE: SignWords = { under: 'none, {v} to spare' };
const OTHER_WAY: SignWords = { under: '{v} the other way' };

/** Quantities whose sign would need thinking: the minus is said in words. */
const SIGN_WORDS: Partial<Record<QuantityId, SignWords>> = {
  trimRest: LOWER,
  trimCatch: LOWER,
  trimAngle: { under: '{v} bow down' },
  offCentre: SIDES,
  steadyMoment: SIDES,
  hipFlexorStretch: { under: 'none, {v} to spare' },
  supportMargin: { under: '{v} outside' },
  trunkPitch: { under: '{v} back' },
  trunkRoll: { under: '{v} away from the paddling side' },
  padAft: FORWARD,
  padFromMid: FORWARD,
  restAft: FORWARD,
  centreAft: FORWARD,
  frontHeelForward: { under: '{v} aft of it' },
  padOut: OFF_SIDE,
  centreOut: OFF_SIDE,
  recessTurn: OTHER_WAY,
  restTurn: OTHER_WAY,
  pelvisYaw: OTHER_WAY,
  thighPitch: { under: '{v} back' },
  paddleUnderStature: { under: '{v} longer' },
  paddleDifference: { under: '{v} less' },
  catchReach: { under: '{v} behind it' },
  handOverGunwale: { under: '{v} under it' },
  handOverWater: { under: '{v} under it' },
  padInsideHull: INTO,
  kneeInsideHull: INTO,
  restInsideHull: INTO,
  footInsideHull: INTO,
  boardInsideHull: INTO,
  padHolesToSkin: INTO,
  restHolesToSkin: INTO,
  padHolesOnBoard: OUTSIDE,
  restHolesOnBoard: OUTSIDE,
  padOverhang: TO_SPARE,
  restOverhang: TO_SPARE,
  footOverhang: TO_SPARE,
  padToRest: OVERLAP,
  padToFrontHeel: OVERLAP,
  toNextSeat: OVERLAP,
  padTravel: OUTSIDE,
  restTravel: OUTSIDE,
};

/** A value with its unit and without a sign to think about: `8 mm lower`, `3 mm to the right`, `none, 4° to spare`. */
export function signedText(
  { id, value, unit }: { id: string; value: number; unit: Unit },
  format: FormatValue,
  inMillimetres = false,
): string {
  const size = format(Math.abs(value), unit, inMillimetres);
  const words = SIGN_WORDS[id as QuantityId];
  const zero = format(0, unit, inMillimetres) === size;
  const template = zero ? undefined : value < 0 ? words?.under : words?.over;
  if (template) return template.replace('{v}', size);
  return words ? size : format(value, unit, inMillimetres);
}
