import type { Unit } from '../evaluation/finding.ts';
import { isQuantityId, type QuantityId } from '../evaluation/quantities.ts';
import type { Words } from './words.ts';

/** How a value is shown. */
export interface HowShown {
  /** Lengths finely. */
  readonly inMillimetres?: boolean;
  /** Half of its 95 % interval, in the value's SI unit: no digit is shown that this does not allow. */
  readonly half?: number | undefined;
}

/** Writes a value with its unit, as the reader's language and units want it. */
export type FormatValue = (value: number, unit: Unit, how?: HowShown) => string;

/** Quantities whose sign is hard to read: the minus is put in words, by the message `signed.…`. */
const SIGN_WORDS: Partial<Record<QuantityId, string>> = {
  trimRest: 'lower',
  trimCatch: 'lower',
  trimAngle: 'bow-down',
  offCentre: 'sides',
  steadyMoment: 'sides',
  hipFlexorStretch: 'to-spare',
  rearReach: 'to-spare',
  frontReach: 'to-spare',
  supportMargin: 'outside',
  trunkPitch: 'back',
  trunkRoll: 'away',
  padAft: 'forward',
  padFromMid: 'forward',
  restAft: 'forward',
  centreAft: 'forward',
  frontHeelForward: 'aft',
  padOut: 'opposite',
  centreOut: 'across',
  recessTurn: 'opposite',
  restTurn: 'opposite',
  pelvisYaw: 'opposite',
  thighPitch: 'back',
  paddleUnderStature: 'longer',
  paddleDifference: 'less',
  catchReach: 'behind',
  handOverGunwale: 'under',
  handOverWater: 'under',
  padInsideHull: 'into',
  kneeInsideHull: 'into',
  restInsideHull: 'into',
  footInsideHull: 'into',
  boardInsideHull: 'into',
  padHolesToSkin: 'into',
  restHolesToSkin: 'into',
  padHolesOnBoard: 'outside',
  restHolesOnBoard: 'outside',
  padOverhang: 'to-spare',
  restOverhang: 'to-spare',
  footOverhang: 'to-spare',
  padToRest: 'overlap',
  padToFrontHeel: 'overlap',
  toNextSeat: 'overlap',
  padTravel: 'outside',
  restTravel: 'outside',
};

/** Signs that are put in words on both sides of 0. */
const BOTH: readonly string[] = ['sides', 'across'];

/** How a value is reported. */
interface Telling {
  readonly words: Words;
  readonly format: FormatValue;
  readonly how?: HowShown;
  /** Half-width of its interval, in the value's unit; told beside the size, before the words for the sign. */
  readonly doubt?: number | undefined;
}

/** Half of an interval as text. One too small to show is written as the least that shows: no value is told as ± 0. */
export function halfText(half: number, unit: Unit, format: FormatValue, how: HowShown = {}): string {
  const nothing = format(0, unit, how);
  let shown = half;
  while (shown > 0 && format(shown, unit, how) === nothing) shown *= 2;
  return format(shown, unit, how);
}

/** A value with its unit and without a sign to think about: `8 mm lower`, `3 mm to the right`, `none, 4° ± 6° to spare`. */
export function signedText(
  { id, value, unit }: { id: string; value: number; unit: Unit },
  { words, format, how = {}, doubt }: Telling,
): string {
  const sure = (text: string) =>
    doubt === undefined
      ? text
      : words.say('finding-title.doubt', { value: text, half: halfText(doubt, unit, format, how) });
  const size = format(Math.abs(value), unit, how);
  const sign = isQuantityId(id) ? SIGN_WORDS[id] : undefined;
  if (!sign) return sure(format(value, unit, how));
  const zero = format(0, unit, how) === size;
  if (zero || (value > 0 && !BOTH.includes(sign))) return sure(size);
  return words.say(`signed.${sign}`, { size: sure(size), sign: value < 0 ? 'under' : 'over' });
}
