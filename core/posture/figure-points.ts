import { add, along, subtract, type Vec3 } from '../frame/vec3.ts';
import { cornerAngle, hipAngle } from './angles.ts';
import type { SolverFigure } from './figure.ts';
import type { FigurePoint, StanceAngle } from './stance.ts';
import type { StanceProblem } from './stance-problem.ts';

/** Where neck and the middle of the head lie from mid-shoulder to the top of the head (drawing only). */
const NECK_SHARE = 0.28;
/** Middle of the head, on the same line. */
const HEAD_SHARE = 0.64;

/**
 * Every point that the figure is drawn through (`FIGURE_POINTS`), paddler's frame, metres. Called once, after the solve: the
 * search needs only the joints of its terms.
 */
export function figurePoints({ contacts }: StanceProblem, figure: SolverFigure): Record<FigurePoint, Vec3> {
  const { midShoulder, headTop, arms } = figure;
  const { lowerShoulder, topShoulder, lower, top, hold } = arms;
  return {
    kneelingKnee: contacts.knee,
    kneeContact: contacts.kneeContact,
    kneelingHip: figure.kneelingHip,
    kneelingAnkle: contacts.rearAnkle,
    rearHeel: contacts.rearHeel,
    rearBall: contacts.rearBall,
    rearToe: contacts.rearToe,
    frontHip: figure.frontHip,
    frontKnee: figure.leg.middle,
    frontAnkle: contacts.frontAnkle,
    frontHeel: contacts.frontHeel,
    frontBall: contacts.frontBall,
    frontToe: contacts.frontToe,
    midHip: figure.midHip,
    midShoulder,
    neck: along(midShoulder, headTop, NECK_SHARE),
    headCentre: along(midShoulder, headTop, HEAD_SHARE),
    headTop,
    lowerShoulder: add(midShoulder, lowerShoulder),
    lowerElbow: add(midShoulder, lower.middle),
    lowerHand: add(midShoulder, hold.lowerHand),
    topShoulder: add(midShoulder, topShoulder),
    topElbow: add(midShoulder, top.middle),
    topHand: add(midShoulder, hold.topHand),
  };
}

/**
 * The angles a coach reads (`STANCE_ANGLES`), radians, as `angles.ts` defines them. Five are the unknowns themselves. The other
 * six are measured between the points, so that the values beside the drawing match the drawing.
 */
export function figureAngles(
  { soleWay }: StanceProblem,
  { figure, points: p, q }: { figure: SolverFigure; points: Record<FigurePoint, Vec3>; q: Float64Array },
): Record<StanceAngle, number> {
  const { across, trunk } = figure;
  const hip = (at: Vec3, knee: Vec3) => hipAngle({ up: trunk.up, across, thigh: subtract(knee, at) });
  return {
    frontKnee: cornerAngle(p.frontHip, p.frontKnee, p.frontAnkle),
    kneelingKnee: cornerAngle(p.kneelingHip, p.kneelingKnee, p.kneelingAnkle),
    kneelingHip: hip(p.kneelingHip, p.kneelingKnee),
    frontHip: hip(p.frontHip, p.frontKnee),
    rearAnkle: cornerAngle(p.kneelingKnee, p.kneelingAnkle, p.rearBall),
    frontAnkle: cornerAngle(p.frontKnee, p.frontAnkle, add(p.frontAnkle, soleWay)),
    trunkPitch: q[3]!,
    trunkRoll: q[4]!,
    pelvisYaw: q[2]!,
    thighPitch: q[0]!,
    thighRoll: q[1]!,
  };
}
