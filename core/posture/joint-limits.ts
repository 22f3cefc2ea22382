import type { LimitedJoint } from '../document/athlete-schema.ts';
import type { Seat } from '../document/seat-schema.ts';
import { type Radians, toRadians } from '../units/angle.ts';
import { LIMITS } from './neutral-posture.ts';

/** Limits of the joints in one solve, radians, as the angles of `stance/angles.ts` read; `…Most` above, `…Least` below. */
export type JointLimits = Readonly<Record<keyof typeof LIMITS, Radians>>;

/** Which limit an athlete's own limit narrows, and from which way; the rear ankle is held by the fittings alone. */
const NARROWS: Readonly<
  Partial<
    Record<
      LimitedJoint,
      { limit: keyof typeof LIMITS; end: 'most' | 'least'; at: (maxDeg: number) => Radians }
    >
  >
> = {
  kneelingKneeFlexion: { limit: 'kneelingKneeLeast', end: 'least', at: (d) => toRadians(180 - d) },
  frontKneeFlexion: { limit: 'frontKneeLeast', end: 'least', at: (d) => toRadians(180 - d) },
  kneelingHipExtension: { limit: 'kneelingHipMost', end: 'most', at: (d) => toRadians(180 + d) },
  frontHipFlexion: { limit: 'frontHipLeast', end: 'least', at: (d) => toRadians(180 - d) },
  frontAnkleDorsiflexion: { limit: 'frontAnkleLeast', end: 'least', at: (d) => toRadians(90 - d) },
  trunkForward: { limit: 'trunkPitchMost', end: 'most', at: toRadians },
  trunkSideways: { limit: 'trunkRollMost', end: 'most', at: (d) => toRadians(Math.max(0, d)) },
};

/**
 * Anatomy limits, narrowed by the athlete's own: a joint that must not go past an angle is not solved past it freely. Personal
 * limits are in degrees of motion (flexion, extension), these in included angles, radians; none widens what anatomy allows.
 * They are one-sided springs, not walls: fittings that leave no other way bend a joint past its limit, and the findings then
 * say stop. `trunkForward` of 30° gives a `trunkPitchMost` of 0.524.
 */
export function jointLimits({ athlete }: Pick<Seat, 'athlete'>): JointLimits {
  const limits = { ...LIMITS } as Record<keyof typeof LIMITS, Radians>;
  for (const { joint, maxDeg } of athlete?.limits ?? []) {
    const rule = NARROWS[joint];
    if (!rule) continue;
    const own = rule.at(maxDeg) as number;
    const usual = limits[rule.limit] as number;
    limits[rule.limit] = rule.end === 'most' ? Math.min(usual, own) : Math.max(usual, own);
  }
  return limits;
}
