import type { BodyEstimate } from '../body/body.ts';
import type { Seat } from '../fit/seat-schema.ts';
import { cornerAngle, hipAngle } from './angles.ts';
import { type BodyLengths, type Contacts, contactsOf, lengthsOf } from './contacts.ts';
import { type Figure, figureFor } from './figure.ts';
import {
  type CentreWeights,
  centreOfFigure,
  centreWeights,
  massesBetweenJoints,
  type Spanned,
} from './figure-masses.ts';
import { fixed, fixedVec, type Jet, type JetVec, mix, mixVec, shift, times, unknowns } from './jet.ts';
import { LIMIT_TOLERANCE, LIMITS, NEUTRAL, NEUTRAL_STATURE, REACH_TOLERANCE } from './neutral-posture.ts';
import type { Phase } from './stance.ts';

/** Names of the terms of the objective, in the order of the residuals. */
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
  'trunkPitchLimit',
  'trunkRollLimit',
  'pelvisYawLimit',
  'thighPitchLimit',
  'thighRollLimit',
] as const;
export type StanceTermName = (typeof STANCE_TERMS)[number];

/** One stance problem, ready to be evaluated at any value of its unknowns. */
export interface StanceProblem {
  readonly body: BodyEstimate;
  readonly lengths: BodyLengths;
  readonly contacts: Contacts;
  readonly seat: Seat;
  readonly phase: Phase;
  readonly masses: readonly Spanned[];
  readonly weights: CentreWeights;
}

/** Everything about the figure at one value of the unknowns, derivatives included. */
export interface StanceState {
  readonly figure: Figure;
  readonly centre: JetVec;
  readonly angles: { readonly frontKnee: Jet; readonly kneelingHip: Jet; readonly frontHip: Jet };
}

/** Gathers what does not change during a solve. */
export function stanceProblem(body: BodyEstimate, seat: Seat, phase: Phase): StanceProblem {
  const lengths = lengthsOf(body);
  const contacts = contactsOf(seat, lengths, body.stature);
  const masses = massesBetweenJoints(body, seat);
  return { body, lengths, contacts, seat, phase, masses, weights: centreWeights(masses, contacts) };
}

/** The figure, its centre of mass and its judged angles at the unknowns `q` (radians). */
export function stanceState(q: readonly number[], problem: StanceProblem): StanceState {
  const figure = figureFor(q, { ...problem, body: problem.lengths });
  const { frontHip, frontKnee, kneelingHip, trunkUp, across } = figure;
  const knee = fixedVec(problem.contacts.knee);
  return {
    figure,
    centre: centreOfFigure(figure, problem.weights),
    angles: {
      frontKnee: cornerAngle(frontHip, frontKnee, fixedVec(problem.contacts.frontAnkle)),
      kneelingHip: hipAngle(trunkUp, across, mixVec(1, knee, -1, kneelingHip)),
      frontHip: hipAngle(trunkUp, across, mixVec(1, frontKnee, -1, frontHip)),
    },
  };
}

/**
 * Residuals of the least-squares problem, each in units of its own tolerance, in the order of `STANCE_TERMS`: departures
 * from the neutral posture, balance over the centreline and over the support, and one-sided terms for reach and anatomy
 * that are 0 inside their limits.
 */
export function stanceResiduals(q: readonly number[], problem: StanceProblem): Jet[] {
  const state = stanceState(q, problem);
  const [thighPitch, thighRoll, yaw, trunkPitch, trunkRoll] = unknowns(q);
  const { frontKnee, kneelingHip, frontHip } = state.angles;
  const size = problem.body.stature / NEUTRAL_STATURE;
  const { knee, frontBall } = problem.contacts;
  const foreTarget = knee.x + NEUTRAL.balanceFore.at * (frontBall.x - knee.x);
  return [
    frontKneeDeparture(state.figure, problem.lengths),
    departure(kneelingHip, NEUTRAL.kneelingHip),
    departure(frontHip, NEUTRAL.frontHip),
    departure(trunkPitch, NEUTRAL.trunkPitch),
    departure(trunkRoll, NEUTRAL.trunkRoll),
    departure(yaw, NEUTRAL.pelvisYaw),
    departure(thighPitch, NEUTRAL.thighPitch),
    departure(thighRoll, NEUTRAL.thighRoll),
    times(state.centre.y, 1 / (NEUTRAL.balanceAcross.tolerance * size)),
    times(shift(state.centre.x, -foreTarget), 1 / (NEUTRAL.balanceFore.tolerance * size)),
    over(state.figure.frontExcess, 0, REACH_TOLERANCE * size),
    over(kneelingHip, LIMITS.kneelingHipMost),
    under(frontHip, LIMITS.frontHipLeast),
    under(frontKnee, LIMITS.frontKneeLeast),
    over(trunkPitch, LIMITS.trunkPitchMost),
    beyond(trunkRoll, LIMITS.trunkRollMost),
    beyond(yaw, LIMITS.pelvisYawMost),
    beyond(thighPitch, LIMITS.thighMost),
    beyond(thighRoll, LIMITS.thighMost),
  ];
}

/**
 * The front knee's departure from neutral, measured by the distance from hip to ankle, which grows with the knee's angle.
 * Unlike the angle it goes on growing past a straight leg, so the objective has one minimum where an angle would leave a
 * second one at full stretch (13 of 1500 random fits before this).
 */
function frontKneeDeparture({ frontExcess }: Figure, { thigh, shank }: BodyLengths): Jet {
  const { at, tolerance } = NEUTRAL.frontKnee;
  const neutral = Math.sqrt(thigh ** 2 + shank ** 2 - 2 * thigh * shank * Math.cos(at));
  const perRadian = (thigh * shank * Math.sin(at)) / neutral;
  return times(shift(frontExcess, thigh + shank - neutral), 1 / (perRadian * tolerance));
}

function departure(x: Jet, { at, tolerance }: { at: number; tolerance: number }): Jet {
  return times(shift(x, -at), 1 / tolerance);
}

/** max(0, x − limit) in units of the tolerance. */
function over(x: Jet, limit: number, tolerance = LIMIT_TOLERANCE): Jet {
  return x.v > limit ? times(shift(x, -limit), 1 / tolerance) : fixed(0);
}

/** max(0, limit − x) in units of the tolerance. */
function under(x: Jet, limit: number): Jet {
  return x.v < limit ? mix(-1 / LIMIT_TOLERANCE, x, 1 / LIMIT_TOLERANCE, fixed(limit)) : fixed(0);
}

/** How far |x| is past a limit, signed as x. */
function beyond(x: Jet, limit: number): Jet {
  if (x.v > limit) return over(x, limit);
  return x.v < -limit ? times(shift(x, limit), 1 / LIMIT_TOLERANCE) : fixed(0);
}
