import type { BodyEstimate } from '../body/body.ts';
import type { Seat } from '../document/seat-schema.ts';
import type { Stance } from '../posture/stance.ts';
import { type Radians, toRadians } from '../units/angle.ts';
import { type LengthChanges, lengthChanges } from './length-changes.ts';
import { type HeadLevel, type MidDrive, midDrive, nearestLevel, usualTopHand } from './mid-drive.ts';

/** A paddle is this much shorter than its paddler, metres: common practice, no source. */
export const UNDER_STATURE = { least: 0.08, most: 0.12 } as const;

/** Where a length by the stance comes from: one stretch of the way from the water up to the top hand, or the blade. */
export interface LengthPart {
  readonly part: 'knee' | 'thigh' | 'trunk' | 'hand' | 'blade';
  /** Metres; they add up to the length by the stance. */
  readonly lengthM: number;
}

/** A hand's height over the shoulders, metres, and the place of the head that it is nearest to. */
export interface HandPlace {
  /** Over mid-shoulder; negative below. */
  readonly over: number;
  readonly level: HeadLevel;
}

/** How a paddle suits its paddler in this seat. Metres and radians. */
export interface PaddleFit {
  /** Length by stature: the middle of the rule and its ends. */
  readonly byStature: { readonly lengthM: number; readonly leastM: number; readonly mostM: number };
  /** Length by the stance: top hand above the water in the middle of the drive, shaft upright, and the blade under it. */
  readonly byStance: { readonly lengthM: number; readonly parts: readonly LengthPart[] };
  readonly midDrive: MidDrive;
  /** Where the top hand passes over the shoulders at mid-drive: as the model takes it, and with a paddle by stature. */
  readonly topHand: Readonly<Record<'modelled' | 'byStature', HandPlace>>;
  /** By the stance less by stature: positive where this seat asks for a longer paddle than the stature does. */
  readonly difference: number;
  /** The difference by what this stance changes against the usual one. */
  readonly changes: LengthChanges;
  /** The length by the stance is longer than the athlete is tall: never told without the main reason. */
  readonly longerThanAthlete: boolean;
  /** The paddle at hand less the length by the stance: negative where the blade is not covered. */
  readonly againstStance: number;
  /** Blade over the whole length, 0–1. */
  readonly bladeShare: number;
  /** Between the hands along the shaft, and that over the paddle's length. */
  readonly handSpacing: number;
  /** 0–1, no unit. */
  readonly handShare: number;
  /** Lower hand above the neck of the blade, along the shaft. */
  readonly handAboveNeck: number;
  /** Lower hand ahead of the kneeling knee at the catch; negative behind it. */
  readonly catchReach: number;
  /** Lower hand at mid-drive, shaft upright and the blade just covered, above the gunwale beside it and the water. */
  readonly handOverGunwale: number;
  /** Negative where the hand would be wet. */
  readonly handOverWater: number;
  /** Blade turned against the shaft, as set. */
  readonly bladeAngle: Radians;
}

/** What a paddle is judged by: the solved seat, and the heights of water and gunwale beside it, metres, boat frame. */
export interface PaddleInput {
  readonly body: Pick<BodyEstimate, 'stature' | 'lengths'>;
  readonly seat: Pick<Seat, 'paddle' | 'stroke'>;
  readonly stances: Readonly<Record<'ready' | 'catch', Stance>>;
  /** Height of the water beside the seat. */
  readonly waterZ: number;
  /** Height of the sheer beside the seat. */
  readonly gunwaleZ: number;
}

/**
 * Both lengths of a paddle and how it is held. In the middle of the drive the shaft stands upright, so the blade is just
 * covered by a paddle as long as the top hand stands over the water, and the blade. A pad one centimetre higher asks for
 * a paddle about one centimetre longer, and brings the lower hand as much higher.
 *
 * Both are calibrated to each other: for the median woman and man on fittings in the middle of their bands they agree within
 * 2 cm (see `midDrive`). What then differs is what this stance changes, told by `changes`.
 *
 * For a paddler of 1.80 m: 1.70 m by stature (1.68–1.72).
 */
export function paddleFit(input: PaddleInput): PaddleFit {
  const { body, seat, stances, waterZ, gunwaleZ } = input;
  const { lengthM, bladeLengthM, lowerHandM, bladeAngleDeg } = seat.paddle;
  const middle = midDrive(input);
  const parts = lengthParts(input, middle);
  const byStance = parts.reduce((sum, part) => sum + part.lengthM, 0);
  const byStature = body.stature - (UNDER_STATURE.least + UNDER_STATURE.most) / 2;
  const difference = byStance - byStature;
  const handZ = middle.topHandZ - lowerHandM;
  const place = (over: number): HandPlace => ({ over, level: nearestLevel(over, body) });
  const atCatch = stances.catch.points;
  return {
    byStature: {
      lengthM: byStature,
      leastM: body.stature - UNDER_STATURE.most,
      mostM: body.stature - UNDER_STATURE.least,
    },
    byStance: { lengthM: byStance, parts },
    midDrive: middle,
    topHand: { modelled: place(middle.topHandOver), byStature: place(middle.topHandOver - difference) },
    difference,
    changes: lengthChanges(difference, {
      middle,
      kneeOverWater: parts[0]!.lengthM,
      usualHand: usualTopHand(body.lengths),
      trunk: body.lengths.trunk.value,
    }),
    longerThanAthlete: byStance > body.stature,
    againstStance: lengthM - byStance,
    bladeShare: bladeLengthM / lengthM,
    handSpacing: lowerHandM,
    handShare: lowerHandM / lengthM,
    handAboveNeck: lengthM - bladeLengthM - lowerHandM,
    catchReach: atCatch.lowerHand.x - atCatch.kneelingKnee.x,
    handOverGunwale: handZ - gunwaleZ,
    handOverWater: handZ - waterZ,
    bladeAngle: toRadians(bladeAngleDeg),
  };
}

/** The way from the water up through knee, hip and shoulder to the top hand, and the blade below the water. */
function lengthParts({ seat, stances, waterZ }: PaddleInput, middle: MidDrive): LengthPart[] {
  const { kneelingKnee } = stances.ready.points;
  return [
    { part: 'knee', lengthM: kneelingKnee.z - waterZ },
    { part: 'thigh', lengthM: middle.hipZ - kneelingKnee.z },
    { part: 'trunk', lengthM: middle.shoulderZ - middle.hipZ },
    { part: 'hand', lengthM: middle.topHandOver },
    { part: 'blade', lengthM: seat.paddle.bladeLengthM },
  ];
}
