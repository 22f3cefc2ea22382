import type { BodyEstimate } from '../body/body.ts';
import type { Seat } from '../fit/seat-schema.ts';
import { topHandOver } from '../stance/arms.ts';
import { leaning } from '../stance/leaning.ts';
import type { Phase, Stance } from '../stance/stance.ts';
import type { Radians } from '../units/angle.ts';

/** The middle of the drive, when the shaft stands upright. Metres, boat frame. */
export interface MidDrive {
  /** Half way from the trunk's pitch at the catch to that at the exit. */
  readonly trunkPitch: Radians;
  readonly hipZ: number;
  readonly shoulderZ: number;
  /** Top hand over mid-shoulder: the athlete's own, measured, or half way between the holds of catch and exit. */
  readonly topHandOver: number;
  readonly topHandZ: number;
}

/** What the middle of the drive is found from. */
export interface MidDriveInput {
  readonly body: Pick<BodyEstimate, 'stature' | 'lengths'>;
  readonly seat: Pick<Seat, 'stroke'>;
  readonly stances: Readonly<Record<Phase, Stance>>;
}

/** How truly the top hand's height over the shoulders is estimated, metres, for the stature below (estimate of ours). */
const TOP_HAND_SD = 0.05;
const STATED_FOR_STATURE = 1.8;

/** The same once it is read off a side photograph, metres (estimate). */
export const TOP_HAND_MEASURED_SD = 0.02;

/**
 * Trunk and top hand in the middle of the drive, by hand: hips as when ready (the stroke's own solve has them within half
 * a centimetre), the trunk pitched half way between catch and exit, the hand half way between their holds. The ready
 * stance's own hand would be 4 cm too high: at rest the trunk is more upright than in the drive.
 *
 * At 1.80 m with the usual 38° and 12°: trunk at 25°, the hand some 22 cm over the shoulders.
 */
export function midDrive({ body, seat, stances }: MidDriveInput): MidDrive {
  const { trunk, upperArm, forearm, hand } = body.lengths;
  const trunkPitch = ((stances.catch.angles.trunkPitch + stances.exit.angles.trunkPitch) / 2) as Radians;
  const hipZ = stances.ready.points.midHip.z;
  const shoulderZ = hipZ + trunk.value * leaning(trunkPitch, stances.ready.angles.trunkRoll).up.z;
  const arm = { upperArm: upperArm.value, forearm: forearm.value, hand: hand.value };
  const over = seat.stroke.topHandOverM ?? (topHandOver(arm, 'catch') + topHandOver(arm, 'exit')) / 2;
  return { trunkPitch, hipZ, shoulderZ, topHandOver: over, topHandZ: shoulderZ + over };
}

/** Standard deviation of the top hand's height over the shoulders in the middle of the drive, metres. */
export function topHandSd({ body, seat }: Pick<MidDriveInput, 'body' | 'seat'>): number {
  if (seat.stroke.topHandOverM !== undefined) return TOP_HAND_MEASURED_SD;
  return (TOP_HAND_SD * body.stature) / STATED_FOR_STATURE;
}

/** Places of the head and shoulders that a hand's height is told by, the lowest first. */
export const HEAD_LEVELS = ['shoulder', 'chin', 'eyes', 'crown'] as const;
export type HeadLevel = (typeof HEAD_LEVELS)[number];

/**
 * Below the crown, share of stature: chin 0.870 and eyes 0.936 of stature above the floor, standing (Drillis & Contini
 * 1966, as reproduced in Winter, Biomechanics and Motor Control of Human Movement).
 */
const BELOW_CROWN = { chin: 1 - 0.87, eyes: 1 - 0.936 } as const;

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
