import type { Seat } from '../fit/seat-schema.ts';
import type { Phase, Stance } from '../stance/stance.ts';
import { type Radians, toRadians } from '../units/angle.ts';

/** A paddle is this much shorter than its paddler, metres: common practice, no source. */
export const UNDER_STATURE = { least: 0.08, most: 0.12 } as const;

/** Where a length by the stance comes from: one stretch of the way from the water up to the top hand, or the blade. */
export interface LengthPart {
  readonly part: 'knee' | 'thigh' | 'trunk' | 'hand' | 'blade';
  /** Metres; they add up to the length by the stance. */
  readonly lengthM: number;
}

/** How a paddle suits its paddler in this seat. Metres and radians. */
export interface PaddleFit {
  /** Length by stature: the middle of the rule and its ends. */
  readonly byStature: { readonly lengthM: number; readonly leastM: number; readonly mostM: number };
  /** Length by the stance: top hand above the water with the shaft upright, and the blade under it. */
  readonly byStance: { readonly lengthM: number; readonly parts: readonly LengthPart[] };
  /** By the stance less by stature: positive where this seat asks for a longer paddle than the stature does. */
  readonly difference: number;
  /** The paddle at hand less the length by the stance: negative where the blade is not covered. */
  readonly againstStance: number;
  readonly bladeShare: number;
  /** Between the hands along the shaft, and that over the paddle's length. */
  readonly handSpacing: number;
  readonly handShare: number;
  /** Lower hand above the neck of the blade, along the shaft. */
  readonly handAboveNeck: number;
  /** Lower hand ahead of the kneeling knee at the catch; negative behind it. */
  readonly catchReach: number;
  /** Lower hand at mid-drive, shaft upright and the blade just covered, above the gunwale beside it and the water. */
  readonly handOverGunwale: number;
  readonly handOverWater: number;
  /** Blade turned against the shaft, as set. */
  readonly bladeAngle: Radians;
}

/** What a paddle is judged by: the solved seat, and the heights of water and gunwale beside it, metres, boat frame. */
export interface PaddleInput {
  readonly body: { readonly stature: number };
  readonly seat: Pick<Seat, 'paddle'>;
  readonly stances: Readonly<Record<Phase, Stance>>;
  readonly waterZ: number;
  readonly gunwaleZ: number;
}

/**
 * Both lengths of a paddle and how it is held. At mid-drive the top hand is taken as high as in the ready stance and the
 * shaft as upright, so the blade is just covered by a paddle as long as that hand stands over the water, and the blade.
 * A pad one centimetre higher asks for a paddle about one centimetre longer, and brings the lower hand as much higher.
 *
 * For a paddler of 1.80 m: 1.70 m by stature (1.68–1.72).
 */
export function paddleFit(input: PaddleInput): PaddleFit {
  const { body, seat, stances, waterZ, gunwaleZ } = input;
  const { lengthM, bladeLengthM, lowerHandM, bladeAngleDeg } = seat.paddle;
  const parts = lengthParts(input);
  const byStance = parts.reduce((sum, part) => sum + part.lengthM, 0);
  const byStature = body.stature - (UNDER_STATURE.least + UNDER_STATURE.most) / 2;
  const midDriveHandZ = stances.ready.points.topHand.z - lowerHandM;
  const atCatch = stances.catch.points;
  return {
    byStature: {
      lengthM: byStature,
      leastM: body.stature - UNDER_STATURE.most,
      mostM: body.stature - UNDER_STATURE.least,
    },
    byStance: { lengthM: byStance, parts },
    difference: byStance - byStature,
    againstStance: lengthM - byStance,
    bladeShare: bladeLengthM / lengthM,
    handSpacing: lowerHandM,
    handShare: lowerHandM / lengthM,
    handAboveNeck: lengthM - bladeLengthM - lowerHandM,
    catchReach: atCatch.lowerHand.x - atCatch.kneelingKnee.x,
    handOverGunwale: midDriveHandZ - gunwaleZ,
    handOverWater: midDriveHandZ - waterZ,
    bladeAngle: toRadians(bladeAngleDeg),
  };
}

/** The way from the water up through knee, hip and shoulder to the top hand, and the blade below the water. */
function lengthParts({ seat, stances, waterZ }: PaddleInput): LengthPart[] {
  const { kneelingKnee, midHip, midShoulder, topHand } = stances.ready.points;
  return [
    { part: 'knee', lengthM: kneelingKnee.z - waterZ },
    { part: 'thigh', lengthM: midHip.z - kneelingKnee.z },
    { part: 'trunk', lengthM: midShoulder.z - midHip.z },
    { part: 'hand', lengthM: topHand.z - midShoulder.z },
    { part: 'blade', lengthM: seat.paddle.bladeLengthM },
  ];
}
