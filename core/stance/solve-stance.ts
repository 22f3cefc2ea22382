import type { BodyEstimate } from '../body/body.ts';
import type { Pins, Seat } from '../fit/seat-schema.ts';
import { type SeatFrame, toBoatFrame } from '../frame/mirror.ts';
import { along, type Vec3 } from '../frame/vec3.ts';
import { toRadians } from '../units/angle.ts';
import { cornerAngle } from './angles.ts';
import { placedMasses } from './figure-masses.ts';
import { fixedVec, type JetVec, valueOfVec } from './jet.ts';
import { type Minimum, minimise } from './minimise.ts';
import { NEUTRAL, STROKE_POSTURE } from './neutral-posture.ts';
import {
  STANCE_TERMS,
  type StanceProblem,
  type StanceState,
  stanceProblem,
  stanceResiduals,
  stanceState,
} from './objective.ts';
import {
  type FigurePoint,
  type Phase,
  type ReachShortfall,
  STANCE_UNKNOWNS,
  type Stance,
  type StanceAngle,
} from './stance.ts';

/** Missing lengths below this are rounding, metres. */
const SHORTFALL_FLOOR = 1e-6;

/** Where neck and the middle of the head lie from mid-shoulder to the top of the head (drawing only). */
const NECK_SHARE = 0.28;
const HEAD_SHARE = 0.64;

/**
 * Solves the kneeling figure of one seat in one phase: the least-squares posture over the fittings. Points come in the
 * boat frame (metres), angles in radians. The answer depends on the input alone: `start` (radians, order of
 * `STANCE_UNKNOWNS`) is for tests of exactly that. Always finite; what cannot be reached stands in `shortfalls`.
 */
export function solveStance(input: {
  body: BodyEstimate;
  seat: Seat;
  frame: SeatFrame;
  phase?: Phase;
  start?: readonly number[];
}): Stance {
  const problem = stanceProblem(input.body, input.seat, input.phase ?? 'ready');
  const pins = pinsOf(problem);
  const free = pins.flatMap((pin, i) => (pin === null ? [i] : []));
  const start = STANCE_UNKNOWNS.map((name, i) => pins[i] ?? input.start?.[i] ?? NEUTRAL[name].at);
  const minimum = minimise((q) => stanceResiduals(q, problem), { start, free });
  return described(problem, minimum, input.frame);
}

/** Unknowns that are held: the coach's pins, and the trunk's pitch at catch and exit. Radians; null is free. */
function pinsOf({ seat, phase }: StanceProblem): (number | null)[] {
  const pins = STANCE_UNKNOWNS.map((name) => {
    const pin = seat.pins[`${name}Deg` as keyof Pins];
    return pin === undefined ? null : toRadians(pin);
  });
  if (phase === 'ready') return pins;
  const own = phase === 'catch' ? seat.stroke.catchPitchDeg : seat.stroke.exitPitchDeg;
  pins[STANCE_UNKNOWNS.indexOf('trunkPitch')] =
    own === undefined ? STROKE_POSTURE[`${phase}Pitch`] : toRadians(own);
  return pins;
}

function described(problem: StanceProblem, minimum: Minimum, frame: SeatFrame): Stance {
  const state = stanceState(minimum.q, problem);
  const toBoat = (point: Vec3) => toBoatFrame(point, frame);
  const points = pointsOf(problem, state);
  const cost = minimum.cost > 0 ? minimum.cost : 1;
  return {
    phase: problem.phase,
    points: mapped(points, toBoat),
    angles: anglesOf(problem, state, minimum.q),
    masses: placedMasses(problem.masses, state.figure, problem.contacts).map((mass) => ({
      ...mass,
      centre: toBoat(mass.centre),
    })),
    centreOfMass: toBoat(valueOfVec(state.centre)),
    totalMassKg: problem.weights.massKg,
    shortfalls: shortfallsOf(problem, state),
    forcing: minimum.residuals
      .map(({ v }, i) => ({ term: STANCE_TERMS[i]!, residual: v, share: (v * v) / cost }))
      .sort((a, b) => b.share - a.share),
    iterations: minimum.iterations,
    converged: minimum.converged,
  };
}

type Points = Record<FigurePoint, Vec3>;

function mapped(points: Points, change: (point: Vec3) => Vec3): Points {
  const out = {} as Points;
  for (const name of Object.keys(points) as FigurePoint[]) out[name] = change(points[name]);
  return out;
}

function pointsOf({ contacts }: StanceProblem, { figure }: StanceState): Points {
  const at = (vec: JetVec) => valueOfVec(vec);
  const midShoulder = at(figure.midShoulder);
  const headTop = at(figure.headTop);
  return {
    kneelingKnee: contacts.knee,
    kneeContact: contacts.kneeContact,
    kneelingHip: at(figure.kneelingHip),
    kneelingAnkle: contacts.rearAnkle,
    rearHeel: contacts.rearHeel,
    rearBall: contacts.rearBall,
    rearToe: contacts.rearToe,
    frontHip: at(figure.frontHip),
    frontKnee: at(figure.frontKnee),
    frontAnkle: contacts.frontAnkle,
    frontHeel: contacts.frontHeel,
    frontBall: contacts.frontBall,
    frontToe: contacts.frontToe,
    midHip: at(figure.midHip),
    midShoulder,
    neck: along(midShoulder, headTop, NECK_SHARE),
    headCentre: along(midShoulder, headTop, HEAD_SHARE),
    headTop,
    lowerShoulder: at(figure.lowerShoulder),
    lowerElbow: at(figure.lowerElbow),
    lowerHand: at(figure.lowerHand),
    topShoulder: at(figure.topShoulder),
    topElbow: at(figure.topElbow),
    topHand: at(figure.topHand),
  };
}

function anglesOf(
  { contacts }: StanceProblem,
  { figure, angles }: StanceState,
  q: readonly number[],
): Record<StanceAngle, number> {
  const knee = fixedVec(contacts.knee);
  const rearAnkle = fixedVec(contacts.rearAnkle);
  const frontAnkle = fixedVec(contacts.frontAnkle);
  return {
    frontKnee: angles.frontKnee.v,
    kneelingKnee: cornerAngle(figure.kneelingHip, knee, rearAnkle).v,
    kneelingHip: angles.kneelingHip.v,
    frontHip: angles.frontHip.v,
    rearAnkle: cornerAngle(knee, rearAnkle, fixedVec(contacts.rearBall)).v,
    frontAnkle: cornerAngle(figure.frontKnee, frontAnkle, fixedVec(soleAhead(contacts))).v,
    trunkPitch: q[3]!,
    trunkRoll: q[4]!,
    pelvisYaw: q[2]!,
    thighPitch: q[0]!,
    thighRoll: q[1]!,
  };
}

/** A point ahead of the front ankle along the sole, so that a square ankle reads π/2. */
function soleAhead({ frontAnkle, frontHeel, frontToe }: StanceProblem['contacts']): Vec3 {
  return {
    x: frontAnkle.x + frontToe.x - frontHeel.x,
    y: frontAnkle.y + frontToe.y - frontHeel.y,
    z: frontAnkle.z + frontToe.z - frontHeel.z,
  };
}

function shortfallsOf({ contacts }: StanceProblem, { figure }: StanceState): ReachShortfall[] {
  const all: ReachShortfall[] = [
    { part: 'rearRest', shortfall: contacts.rearShortfall },
    { part: 'frontFoot', shortfall: figure.frontExcess.v },
    { part: 'lowerHand', shortfall: figure.lowerExcess.v },
    { part: 'topHand', shortfall: figure.topExcess.v },
  ];
  return all.filter((s) => s.shortfall > SHORTFALL_FLOOR);
}
