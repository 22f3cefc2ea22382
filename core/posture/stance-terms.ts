import { spanAtAngle } from './angles.ts';
import type { BodyLengths, Contacts } from './contacts.ts';
import type { JointLimit, JointLimits } from './joint-limits.ts';
import { NEUTRAL, REACH_TOLERANCE } from './neutral-posture.ts';

/**
 * The variables of the objective's terms, in the order of the measures' array. Angles in radians unless said otherwise; several
 * terms may share one measure (a joint's neutral place and its limit).
 */
export const MEASURES = [
  'thighPitch',
  'thighRoll',
  'pelvisYaw',
  'trunkPitch',
  'trunkRoll',
  /** Distance from front hip to front ankle, metres. */
  'legApart',
  'kneelingHip',
  'frontHip',
  /** Centre of mass, metres, paddler's frame. */
  'centreForward',
  'centreAcross',
  /** Cosine of the kneeling knee's angle. */
  'kneelingKneeCosine',
  /** Front shank along the sole, over the shank's length: the cosine of the front ankle's angle. */
  'frontAnkleCosine',
] as const;
/** What a term of the objective looks at. */
export type Measure = (typeof MEASURES)[number];

/**
 * Names of the terms of the objective, in the order of the residuals. Departures first, then balance, then the one-sided terms
 * of reach and anatomy.
 */
export const STANCE_TERMS = [
  'frontKnee',
  'kneelingHip',
  'frontHip',
  'trunkPitch',
  'trunkRoll',
  'pelvisYaw',
  'thighPitch',
  'thighRoll',
  'balanceAcross',
  'balanceFore',
  'frontReach',
  'kneelingHipLimit',
  'frontHipLimit',
  'frontKneeLimit',
  'kneelingKneeLimit',
  'frontAnkleLimit',
  'trunkPitchLimit',
  'trunkRollLimit',
  'pelvisYawLimit',
  'thighPitchLimit',
  'thighRollLimit',
] as const;
/** The name of a term. */
export type StanceTermName = (typeof STANCE_TERMS)[number];

/** A departure counts both ways; the one-sided terms cost nothing on their free side. `within` is free from −at to at. */
type Sense = 'near' | 'most' | 'least' | 'within';

/** One term: (measure − at) / tolerance where its sense counts, else 0. */
export interface ObjectiveTerm {
  /** Index of the value in `MEASURES`. */
  readonly measure: number;
  readonly sense: Sense;
  /** Preferred value or limit, radians or metres. */
  readonly at: number;
  /** How far off counts as one unit of the residual, same unit. */
  readonly tolerance: number;
}

/** Place of a measure. */
const on = (measure: Measure) => MEASURES.indexOf(measure);
/** A term that counts only past a joint's limit. */
const limit = (measure: Measure, sense: Sense, { at, tolerance }: JointLimit): ObjectiveTerm => ({
  measure: on(measure),
  sense,
  at,
  tolerance,
});

/** Terms that are the same for all bodies and fittings: departures of angles from neutral. */
const ANGLE_TERMS = {
  kneelingHip: near('kneelingHip'),
  frontHip: near('frontHip'),
  trunkPitch: near('trunkPitch'),
  trunkRoll: near('trunkRoll'),
  pelvisYaw: near('pelvisYaw'),
  thighPitch: near('thighPitch'),
  thighRoll: near('thighRoll'),
};

/** A term that draws a measure to its usual value. */
function near(name: Measure & keyof typeof NEUTRAL): ObjectiveTerm {
  const { at, tolerance } = NEUTRAL[name];
  return { measure: on(name), sense: 'near', at, tolerance };
}

/**
 * The terms of one problem in the order of `STANCE_TERMS`. `size` is the stature over `NEUTRAL_STATURE`: lengths among
 * the tolerances grow with it. The front knee's terms are laid on the distance from hip to ankle, which grows with the
 * knee's angle. Unlike the angle it goes on growing past a straight leg, so the objective has one minimum where an angle
 * would leave a second one at full stretch (13 of 1500 random fits before this). Cosines keep the other limits smooth.
 */
export function stanceTerms(
  { thigh, shank }: BodyLengths,
  { knee, frontBall }: Contacts,
  { limits, size }: { limits: JointLimits; size: number },
): readonly ObjectiveTerm[] {
  const { frontKnee, balanceFore, balanceAcross } = NEUTRAL;
  const neutral = spanAtAngle(frontKnee.at, thigh, shank);
  const least = spanAtAngle(limits.frontKneeLeast.at, thigh, shank);
  const leg = (sense: Sense, at: number, tolerance: number): ObjectiveTerm => ({
    measure: on('legApart'),
    sense,
    at,
    tolerance,
  });
  const terms: Record<StanceTermName, ObjectiveTerm> = {
    ...ANGLE_TERMS,
    frontKnee: leg('near', neutral.span, neutral.slope * frontKnee.tolerance),
    balanceAcross: {
      measure: on('centreAcross'),
      sense: 'near',
      at: balanceAcross.at,
      tolerance: balanceAcross.tolerance * size,
    },
    balanceFore: {
      measure: on('centreForward'),
      sense: 'near',
      at: knee.x + balanceFore.at * (frontBall.x - knee.x),
      tolerance: balanceFore.tolerance * size,
    },
    frontReach: leg('most', thigh + shank, REACH_TOLERANCE * size),
    kneelingHipLimit: limit('kneelingHip', 'most', limits.kneelingHipMost),
    frontHipLimit: limit('frontHip', 'least', limits.frontHipLeast),
    frontKneeLimit: leg('least', least.span, least.slope * limits.frontKneeLeast.tolerance),
    kneelingKneeLimit: cosineLimit('kneelingKneeCosine', limits.kneelingKneeLeast),
    frontAnkleLimit: cosineLimit('frontAnkleCosine', limits.frontAnkleLeast),
    trunkPitchLimit: limit('trunkPitch', 'most', limits.trunkPitchMost),
    trunkRollLimit: limit('trunkRoll', 'within', limits.trunkRollMost),
    pelvisYawLimit: limit('pelvisYaw', 'within', limits.pelvisYawMost),
    thighPitchLimit: limit('thighPitch', 'within', limits.thighMost),
    thighRollLimit: limit('thighRoll', 'within', limits.thighMost),
  };
  return STANCE_TERMS.map((name) => terms[name]);
}

/** An angle that must be at least `least`, on its cosine; a limit near 0 or π keeps a tenth of a radian's slope. */
function cosineLimit(measure: Measure, { at, tolerance }: JointLimit): ObjectiveTerm {
  const slope = Math.max(0.1, Math.abs(Math.sin(at)));
  return { measure: on(measure), sense: 'most', at: Math.cos(at), tolerance: slope * tolerance };
}

/**
 * A term's residual for the value of its measure, in units of its tolerance: a stance minimises the sum of their squares. 0 on
 * the free side of a one-sided term; continuous at its edge, where only the slope has a corner.
 */
export function residualOf({ sense, at, tolerance }: ObjectiveTerm, value: number): number {
  const off = value - at;
  switch (sense) {
    case 'near':
      return off / tolerance;
    case 'most':
      return off > 0 ? off / tolerance : 0;
    case 'least':
      return off < 0 ? off / tolerance : 0;
    case 'within':
      if (off > 0) return off / tolerance;
      return value < -at ? (value + at) / tolerance : 0;
  }
}

/**
 * A term's signed distance from its target in units of its tolerance: of a one-sided term, positive past its limit and
 * negative on its free side, where `residualOf` is 0.
 */
export function distanceOf({ sense, at, tolerance }: ObjectiveTerm, value: number): number {
  if (sense === 'least') return (at - value) / tolerance;
  return ((sense === 'within' ? Math.abs(value) : value) - at) / tolerance;
}

/** A term's target moved by `strays` tolerances: `distanceOf` is then less by as many. */
export function targetOf({ sense, at, tolerance }: ObjectiveTerm, strays: number): number {
  return sense === 'least' ? at - strays * tolerance : at + strays * tolerance;
}
