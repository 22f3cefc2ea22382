import { norm, subtract } from '../frame/vec3.ts';
import type { BodyLengths } from './contacts.ts';
import type { Stance } from './stance.ts';

/** A leg as two links between two fixed places, metres. */
interface Chain {
  /** Length of the first link. */
  readonly first: number;
  /** Length of the second link. */
  readonly second: number;
  /** Distance between the places. */
  readonly apart: number;
}

/** The chains that fittings stretch: knee to ball of the rear foot, and front hip to front ankle. */
export function legChains(
  { points }: Pick<Stance, 'points'>,
  lengths: BodyLengths,
): { rear: Chain; front: Chain } {
  return {
    rear: {
      first: lengths.shank,
      second: Math.hypot(lengths.heelToBall - lengths.heelToAnkle, lengths.ankleHeight),
      apart: norm(subtract(points.rearBall, points.kneelingKnee)),
    },
    front: {
      first: lengths.thigh,
      second: lengths.shank,
      apart: norm(subtract(points.frontHip, points.frontAnkle)),
    },
  };
}

/** How much longer the distance is than the leg, metres: positive is missing length, negative is spare length. */
export function excessOf({ first, second, apart }: Chain): number {
  return apart - first - second;
}

/**
 * Cosine of a chain's middle angle by the law of cosines, going on smoothly past −1 where the chain is too short: the angle
 * itself is constant there and does not show how near the leg is to bending.
 */
export function chainCosine({ first, second, apart }: Chain): number {
  return (first ** 2 + second ** 2 - apart ** 2) / (2 * first * second);
}

/**
 * Angle at a chain's first end between its first link and the line to its other end, radians, for another first link and
 * another excess at the same distance. 0 once it is straight.
 */
export function firstAngle({ apart }: Chain, { first, excess }: { first: number; excess: number }): number {
  const second = apart - first - excess;
  const cosine = (first ** 2 + apart ** 2 - second ** 2) / (2 * first * Math.max(apart, 1e-6));
  return Math.acos(Math.min(1, Math.max(-1, cosine)));
}
