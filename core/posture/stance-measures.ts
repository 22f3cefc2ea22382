import { dot } from '../frame/vec3.ts';
import { scaleTo, subtractTo } from '../frame/vec3-in-place.ts';
import { hipAngle, hipGradientTo } from './angles.ts';
import { figureTo } from './figure.ts';
import { centreSlopeTo, centreTo } from './figure-masses.ts';
import { figureSlopesTo } from './figure-slopes.ts';
import { STANCE_UNKNOWNS } from './stance.ts';
import type { StanceProblem } from './stance-problem.ts';
import type { StanceSpace } from './stance-space.ts';
import { MEASURES } from './stance-terms.ts';

/*
 * The measures of a stance (`MEASURES`: radians, metres, and two cosines) and how they change: what every term of the objective
 * is computed from. These run about twenty times for each solve, so they write into the search's own memory and allocate nothing.
 */

/** Finds the figure at some unknowns and writes its measures. */
export function measureAt(space: StanceSpace, problem: StanceProblem, q: Float64Array): void {
  const { figure, kneeling, front, measures: into } = space;
  const { contacts, lengths, shankWay, soleWay, weighing } = problem;
  figureTo(figure, q, problem);
  const { middle, apart } = figure.leg;
  scaleTo(kneeling.thigh, figure.thigh.up, -1);
  subtractTo(front.thigh, middle, figure.frontHip);
  const centre = centreTo(space.centre.centre, figure, weighing);
  for (let k = 0; k < STANCE_UNKNOWNS.length; k++) into[k] = q[k]!;
  into[5] = apart;
  into[6] = hipAngle(kneeling);
  into[7] = hipAngle(front);
  into[8] = centre.x;
  into[9] = centre.y;
  into[10] = dot(figure.thigh.up, shankWay);
  into[11] = (dot(middle, soleWay) - dot(contacts.frontAnkle, soleWay)) / lengths.shank;
}

/** Writes the slopes of all measures where `measureAt` last found the figure: `measureSlopes`, per radian. */
export function slopesAt(space: StanceSpace, problem: StanceProblem): void {
  figureSlopesTo(space.slopes, space.figure, problem);
  hipGradientTo(space.kneelingGradient, space.kneeling);
  hipGradientTo(space.frontGradient, space.front);
  for (let k = 0; k < STANCE_UNKNOWNS.length; k++) slopeBy(space, problem, k);
}

/** Writes how the measures change per radian of one unknown: the chain rule from joint to measure, written out. */
function slopeBy(space: StanceSpace, problem: StanceProblem, unknown: number): void {
  const { kneelingGradient: kneeling, frontGradient: front, measureSlopes: into } = space;
  const { lengths, shankWay, soleWay, weighing } = problem;
  const slope = space.slopes[unknown]!;
  const { trunkUp, across, thighUp, frontHip, leg } = slope;
  const centre = centreSlopeTo(space.centre, { figure: space.figure, slope }, weighing);
  const row = unknown * MEASURES.length;
  into[row + 5] = leg.apart;
  into[row + 6] = dot(kneeling.up, trunkUp) + dot(kneeling.across, across) - dot(kneeling.thigh, thighUp);
  into[row + 7] =
    dot(front.up, trunkUp) +
    dot(front.across, across) +
    dot(front.thigh, leg.middle) -
    dot(front.thigh, frontHip);
  into[row + 8] = centre.x;
  into[row + 9] = centre.y;
  into[row + 10] = dot(thighUp, shankWay);
  into[row + 11] = dot(leg.middle, soleWay) / lengths.shank;
}
