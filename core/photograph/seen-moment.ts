import type { Seat } from '../document/seat-schema.ts';
import { STROKE_PITCH_SD_DEG } from '../evaluation/doubt-sources.ts';
import { along, norm, plus, scale, subtract, type Vec3 } from '../frame/vec3.ts';
import { USUAL_LEAN } from '../paddle/usual-drive.ts';
import { type ArmsHold, armsHold } from '../posture/arms.ts';
import type { BodyLengths } from '../posture/contacts.ts';
import type { Phase } from '../posture/stance.ts';
import { strokePitch } from '../posture/stroke-pitch.ts';
import { toRadians } from '../units/angle.ts';

/** The instant that a picture shows: a phase of the stance, or the middle of the drive with the shaft upright. */
export type SeenMoment = Phase | 'drive';

/**
 * How arms and shoulders may differ from the model's hold, in the order of the unknowns: top hand and lower shoulder (forward,
 * toward the paddling side, up; arm lengths), shaft (forward and across, shares of its length), turn of the shoulders (radians).
 * One standard deviation between persons: the top hand's is 9 cm; all are estimates.
 */
export const HOLD_SD = [0.15, 0.12, 0.15, 0.06, 0.05, 0.06, 0.2, 0.15, toRadians(10)] as const;
/** Which of them is the turn of the shoulders. */
export const TURN = 8;

/** The model's hold at a moment: that of its phase; in the middle of the drive half way between catch and exit, the shaft upright. */
export function holdAt(lengths: BodyLengths, seat: Seat, moment: SeenMoment): ArmsHold {
  if (moment !== 'drive') return armsHold(lengths, seat, moment);
  const first = armsHold(lengths, seat, 'catch');
  const last = armsHold(lengths, seat, 'exit');
  const topHand = along(first.topHand, last.topHand, 0.5);
  const shaft = along(wayOf(first), wayOf(last), 0.5);
  return {
    ...first,
    square: unit(along(first.square, last.square, 0.5)),
    topHand,
    lowerHand: plus(topHand, seat.paddle.lowerHandM, unit({ ...shaft, x: 0 })),
  };
}

/** From the top hand to the lower one: along the shaft. */
const wayOf = ({ topHand, lowerHand }: ArmsHold) => subtract(lowerHand, topHand);
const unit = (v: Vec3) => scale(v, 1 / norm(v));

/** The hold as one athlete has it: `by` in standard deviations, in the order of `HOLD_SD`. `side` is +1 toward the paddling side. */
export function strayedHold(
  hold: ArmsHold,
  by: ArrayLike<number>,
  { arm, side }: { arm: number; side: 1 | -1 },
): ArmsHold {
  const off = (i: number) => HOLD_SD[i]! * by[i]!;
  const offset = (first: number) => ({
    x: arm * off(first),
    y: arm * off(first + 1) * side,
    z: arm * off(first + 2),
  });
  const shaft = wayOf(hold);
  const length = norm(shaft);
  const bent = unit(plus(scale(shaft, 1 / length), 1, { x: off(6), y: off(7) * side, z: 0 }));
  const topHand = plus(hold.topHand, 1, offset(0));
  const turn = Math.atan2(hold.square.x, hold.square.y * side) + off(TURN);
  return {
    ...hold,
    topHand,
    lowerHand: plus(topHand, length, bent),
    travel: plus(hold.travel, 1, offset(3)),
    square: { x: Math.sin(turn), y: Math.cos(turn) * side, z: 0 },
  };
}

/** The trunk's pitch that is taken at a moment of the stroke, and its spread between persons, radians; null when ready. */
export function pitchTaken(seat: Seat, moment: SeenMoment): { at: number; tolerance: number } | null {
  if (moment === 'ready') return null;
  const tolerance = toRadians(STROKE_PITCH_SD_DEG.usual);
  if (moment === 'drive') return { at: USUAL_LEAN, tolerance };
  return { at: strokePitch(seat, moment), tolerance };
}
