import type { BodyEstimate } from '../body/body.ts';
import { RATIO_TABLE } from '../body/ratio-table.ts';
import type { Seat } from '../document/seat-schema.ts';
import { topHandOver } from '../posture/arms.ts';
import { leaning } from '../posture/leaning.ts';
import { STROKE_POSTURE } from '../posture/neutral-posture.ts';
import type { Stance } from '../posture/stance.ts';
import { forwardLimit, strokePitch } from '../posture/stroke-pitch.ts';
import type { Radians } from '../units/angle.ts';
import { USUAL_LEAN } from './usual-drive.ts';

/** The middle of the drive, when the shaft stands upright. Metres, boat frame. */
export interface MidDrive {
  /**
   * The usual lean, plus the difference of the athlete's own catch and exit from the usual ones; within a personal limit of the
   * trunk.
   */
  readonly trunkPitch: Radians;
  /** Middle of the two hip joints. */
  readonly hipZ: number;
  /** Middle of the two shoulder joints. */
  readonly shoulderZ: number;
  /** Top hand over mid-shoulder: the athlete's own, measured, or half way between the holds of catch and exit. */
  readonly topHandOver: number;
  /** Top hand on the grip. */
  readonly topHandZ: number;
}

/** What the middle of the drive is found from. */
export interface MidDriveInput {
  readonly body: Pick<BodyEstimate, 'stature' | 'lengths'>;
  readonly seat: Pick<Seat, 'stroke'> & Partial<Pick<Seat, 'athlete'>>;
  readonly stances: Readonly<Record<'ready' | 'catch', Stance>>;
}

/**
 * Standard deviation of the top hand's height over the water beyond that of posture and body: metres, for the stature below
 * (estimate). The rule of 8 to 12 cm leaves 2 cm, a lean of 35 ± 3° another 1.5 cm, the paddlers' habits 2 cm.
 */
const TOP_HAND_SD = 0.03;
/** Stature, metres, for which `TOP_HAND_SD` is stated. */
const STATED_FOR_STATURE = 1.8;

/** The same where it is read from a side photograph, metres (estimate). */
export const TOP_HAND_MEASURED_SD = 0.02;

/**
 * Trunk and top hand in the middle of the drive, in closed form. The hips are as when ready (the stroke's own solve differs by
 * under half a centimetre), the hand is half way between the holds of catch and exit, and the trunk leans as it usually does
 * while the blade is upright and buried. That is nearer to the catch than half way: the trunk comes up late.
 *
 * The model is calibrated here to the rule of the paddle's length (stature less 8 to 12 cm, common practice): with the trunk
 * 35° forward and the top hand 14 cm over the shoulders, the median woman and man of the survey, on fittings in the middle of
 * their bands in a usual single, get a paddle 10 ± 2 cm shorter than they are. Any further difference comes from this stance.
 *
 * At 1.80 m: trunk at 35°, the hand some 15 cm over the shoulders.
 */
export function midDrive({ body, seat, stances }: MidDriveInput): MidDrive {
  const { trunk, upperArm, forearm, hand } = body.lengths;
  const own = (stances.catch.angles.trunkPitch + strokePitch(seat, 'exit')) / 2;
  const usual = (STROKE_POSTURE.catchPitch + STROKE_POSTURE.exitPitch) / 2;
  const trunkPitch = Math.min(USUAL_LEAN + own - usual, Math.max(forwardLimit(seat), own)) as Radians;
  const hipZ = stances.ready.points.midHip.z;
  const shoulderZ = hipZ + trunk.value * leaning(trunkPitch, stances.ready.angles.trunkRoll).up.z;
  const over = seat.stroke.topHandOverM ?? usualTopHand({ upperArm, forearm, hand });
  return { trunkPitch, hipZ, shoulderZ, topHandOver: over, topHandZ: shoulderZ + over };
}

/** The usual height of the top hand over mid-shoulder in the middle of the drive, metres: half way between catch and exit. */
export function usualTopHand({
  upperArm,
  forearm,
  hand,
}: Pick<BodyEstimate['lengths'], 'upperArm' | 'forearm' | 'hand'>): number {
  const arm = { upperArm: upperArm.value, forearm: forearm.value, hand: hand.value };
  return (topHandOver(arm, 'catch') + topHandOver(arm, 'exit')) / 2;
}

/** Standard deviation of the top hand's height over the shoulders in the middle of the drive, metres. */
export function topHandSd({ body, seat }: Pick<MidDriveInput, 'body' | 'seat'>): number {
  if (seat.stroke.topHandOverM !== undefined) return TOP_HAND_MEASURED_SD;
  return (TOP_HAND_SD * body.stature) / STATED_FOR_STATURE;
}

/** Levels of shoulder and head to which a hand's height is compared, the lowest first. */
export const HEAD_LEVELS = ['shoulder', 'chin', 'eyes', 'crown'] as const;
/** One of these levels. */
export type HeadLevel = (typeof HEAD_LEVELS)[number];

/** Below the crown, standing, as shares of stature (source: `RATIO_TABLE`). */
const BELOW_CROWN = { chin: 1 - RATIO_TABLE.chinHeight, eyes: 1 - RATIO_TABLE.eyeHeight } as const;

/** Height of each level over mid-shoulder with the head held upright, metres. */
export function headLevels(body: Pick<BodyEstimate, 'stature' | 'lengths'>): Record<HeadLevel, number> {
  const crown = body.lengths.headNeck.value;
  return {
    shoulder: 0,
    chin: crown - BELOW_CROWN.chin * body.stature,
    eyes: crown - BELOW_CROWN.eyes * body.stature,
    crown,
  };
}

/** The level nearest to a height over mid-shoulder (metres); the lower of two equally near ones. */
export function nearestLevel(over: number, body: Pick<BodyEstimate, 'stature' | 'lengths'>): HeadLevel {
  const levels = headLevels(body);
  return HEAD_LEVELS.reduce((best, level) =>
    Math.abs(levels[level] - over) < Math.abs(levels[best] - over) ? level : best,
  );
}
