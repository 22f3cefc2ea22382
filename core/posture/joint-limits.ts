import type { Athlete, LimitedJoint } from '../document/athlete-schema.ts';
import type { Seat } from '../document/seat-schema.ts';
import { type Radians, toRadians } from '../units/angle.ts';
import { keysOf, recordOf } from '../units/entries.ts';
import { LIMIT_TOLERANCE, LIMITS } from './neutral-posture.ts';

/** Where a one-sided limit begins to cost, and how far past it counts as one unit. Radians. */
export interface JointLimit {
  readonly at: Radians;
  readonly tolerance: Radians;
}

/** Limits of the joints in one solve, as the angles of `angles.ts` read; `…Most` above, `…Least` below. */
export type JointLimits = Readonly<Record<keyof typeof LIMITS, JointLimit>>;

/**
 * A personal limit is much stiffer than an anatomy limit: a person who must not bend a joint past an angle takes any other
 * posture that is possible. It begins to cost this far inside the limit, and half a degree counts as one unit (estimates).
 */
const OWN_LIMIT = { inside: toRadians(1), tolerance: toRadians(0.5) } as const;

/**
 * Least sideways limit, degrees; a smaller one counts as this much, so that no paddler must lean away from the paddling side.
 */
export const UPRIGHT_DEG = 1;

/** Which limit an athlete's own limit narrows, and at which end. The rear ankle depends on the fittings alone. */
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
  trunkSideways: { limit: 'trunkRollMost', end: 'most', at: (d) => toRadians(Math.max(UPRIGHT_DEG, d)) },
};

/**
 * Anatomy limits, narrowed by the athlete's own. Personal limits are in degrees of motion (flexion, extension), these in
 * included angles, radians; none widens what anatomy allows. They are one-sided springs, not walls: fittings that allow no
 * other posture bend a joint past its limit, and the findings then say stop. `trunkForward` of 30° gives a `trunkPitchMost` at
 * 29°.
 */
export function jointLimits({ athlete }: Pick<Seat, 'athlete'>): JointLimits {
  if (!athlete) return anatomyLimits();
  const before = known.get(athlete);
  if (before) return before;
  const limits = narrowedBy(athlete);
  known.set(athlete, limits);
  return limits;
}

/** Limits already found for an athlete. */
const known = new WeakMap<Athlete, JointLimits>();

function narrowedBy(athlete: Athlete): JointLimits {
  const limits = anatomyLimits();
  for (const { joint, maxDeg } of athlete.limits) {
    const rule = NARROWS[joint];
    if (!rule) continue;
    const most = rule.end === 'most';
    const at = rule.at(maxDeg) + (most ? -OWN_LIMIT.inside : OWN_LIMIT.inside);
    const usual = limits[rule.limit].at;
    if (most ? at >= usual : at <= usual) continue;
    limits[rule.limit] = { at: at as Radians, tolerance: OWN_LIMIT.tolerance };
  }
  return limits;
}

/** Limits that hold for everybody, each with the usual tolerance. */
function anatomyLimits(): Record<keyof typeof LIMITS, JointLimit> {
  return recordOf(keysOf(LIMITS), (name) => ({
    at: LIMITS[name] as Radians,
    tolerance: LIMIT_TOLERANCE as Radians,
  }));
}
