import type { BodyEstimate } from '../body/body.ts';
import type { Seat } from '../document/seat-schema.ts';
import { dot, norm, scale, subtract, type Vec3 } from '../frame/vec3.ts';
import { hipAngle, hipAngleSlope } from './angles.ts';
import { armsHold } from './arms.ts';
import { type Contacts, contactsOf, lengthsOf, paddlingSign } from './contacts.ts';
import { type Figure, type FigureParts, type FigureSlope, figureAt, figureSlopes } from './figure.ts';
import {
  type CentreWeights,
  centreOf,
  centreSlope,
  centreWeights,
  massesBetweenJoints,
  type Spanned,
} from './figure-masses.ts';
import { jointLimits } from './joint-limits.ts';
import type { LeastSquares } from './minimise.ts';
import { NEUTRAL_STATURE } from './neutral-posture.ts';
import { ownStrays } from './own-neutral.ts';
import { type Phase, STANCE_UNKNOWNS } from './stance.ts';
import { distanceOf, MEASURES, residualOf, stanceTerms, type Term, targetOf } from './stance-terms.ts';

/**
 * One stance problem, ready to be evaluated at any value of its unknowns: body, fittings and phase turned into lengths, fixed
 * joints, weights and terms. Paddler's frame, SI.
 */
export interface StanceProblem extends FigureParts {
  readonly seat: Seat;
  readonly phase: Phase;
  readonly masses: readonly Spanned[];
  readonly weights: CentreWeights;
  readonly terms: readonly Term[];
  /** Unit vectors: kneeling shank from the knee down, and the front sole from heel to toe. */
  readonly shankWay: Vec3;
  readonly soleWay: Vec3;
}

/**
 * How far what one person takes as usual lies from what the model takes, term by term of the objective, in tolerances: the same
 * in every phase. Drawn from the standard normal spread, and solved, they are draws of the stance's own doubt.
 */
export type Strays = readonly number[];

/**
 * Gathers what does not change during a solve: 5 to 20 evaluations follow, and a hand on the drawing asks for a solve sixty
 * times a second. Without `strays` those that were learnt of the seat's athlete hold, where any were.
 */
export function stanceProblem(
  body: BodyEstimate,
  seat: Seat,
  { phase, strays = ownStrays(seat) }: { phase: Phase; strays?: Strays | undefined },
): StanceProblem {
  const lengths = lengthsOf(body);
  const contacts = contactsOf(seat, lengths, body.stature);
  const masses = massesBetweenJoints(body, seat);
  const limits = jointLimits(seat);
  const terms = stanceTerms(lengths, contacts, { limits, size: body.stature / NEUTRAL_STATURE });
  return {
    lengths,
    contacts,
    hold: armsHold(lengths, seat, phase),
    paddling: paddlingSign(seat),
    seat,
    phase,
    masses,
    weights: centreWeights(masses, contacts),
    terms: strays ? terms.map((term, t) => ({ ...term, at: targetOf(term, strays[t] ?? 0) })) : terms,
    shankWay: wayBetween(contacts.knee, contacts.rearAnkle),
    soleWay: soleOf(contacts),
  };
}

/** The same problem in another phase: only the hands hold the paddle elsewhere. */
export function inPhase(problem: StanceProblem, phase: Phase): StanceProblem {
  return { ...problem, phase, hold: armsHold(problem.lengths, problem.seat, phase) };
}

function wayBetween(from: Vec3, to: Vec3): Vec3 {
  const line = subtract(to, from);
  return scale(line, 1 / Math.max(norm(line), 1e-9));
}

/** Unit vector along the front sole, heel to toe. */
export function soleOf({ frontHeel, frontToe }: Contacts): Vec3 {
  return wayBetween(frontHeel, frontToe);
}

/**
 * The objective as a least-squares problem in the five unknowns (radians, order of `STANCE_UNKNOWNS`). Derivatives are
 * written out by hand, along the chain from unknown to joint to measure to term.
 */
export function stanceObjective(problem: StanceProblem): LeastSquares {
  const { terms } = problem;
  const measures = new Float64Array(MEASURES.length);
  const slopes = new Float64Array(MEASURES.length);
  const residuals = new Float64Array(terms.length);
  let figure: Figure | null = null;
  return {
    terms: terms.length,
    residualsAt(q, into) {
      figure = figureAt(q, problem);
      measuresOf({ q, figure }, problem, measures);
      for (let i = 0; i < terms.length; i++) {
        into[i] = residualOf(terms[i]!, measures[terms[i]!.measure]!);
        residuals[i] = into[i]!;
      }
    },
    slopesThere(into) {
      if (!figure) return;
      const moved = figureSlopes(figure, problem);
      const hips = hipWays(figure);
      for (let k = 0; k < moved.length; k++) {
        measureSlopes({ figure, hips, problem }, { slope: moved[k]!, unknown: k }, slopes);
        for (let i = 0; i < terms.length; i++) {
          const { sense, measure, tolerance } = terms[i]!;
          const counts = sense === 'near' || residuals[i] !== 0;
          into[k * terms.length + i] = counts ? slopes[measure]! / tolerance : 0;
        }
      }
    },
  };
}

/**
 * Every term's signed distance from its target at any value of the unknowns (radians), in tolerances: of a one-sided term,
 * positive past its limit and negative on its free side.
 */
export function termDistances(problem: StanceProblem, q: Float64Array): Float64Array {
  const { terms } = problem;
  const measures = new Float64Array(MEASURES.length);
  measuresOf({ q, figure: figureAt(q, problem) }, problem, measures);
  return Float64Array.from(terms, (term) => distanceOf(term, measures[term.measure]!));
}

/** How each term's distance changes per radian of each unknown: unknown by unknown, in the order of the terms. */
export function termSlopes(problem: StanceProblem, q: Float64Array): Float64Array {
  const { terms } = problem;
  const figure = figureAt(q, problem);
  const measures = new Float64Array(MEASURES.length);
  const slopes = new Float64Array(MEASURES.length);
  const into = new Float64Array(STANCE_UNKNOWNS.length * terms.length);
  measuresOf({ q, figure }, problem, measures);
  const hips = hipWays(figure);
  figureSlopes(figure, problem).forEach((slope, unknown) => {
    measureSlopes({ figure, hips, problem }, { slope, unknown }, slopes);
    terms.forEach(({ sense, measure, tolerance }, t) => {
      const turned = sense === 'least' || (sense === 'within' && measures[measure]! < 0);
      into[unknown * terms.length + t] = ((turned ? -1 : 1) * slopes[measure]!) / tolerance;
    });
  });
  return into;
}

/** What both hip angles are measured between: trunk, line of the hips, thigh from hip to knee. */
function hipWays({ thigh, trunk, across, leg, frontHip }: Figure) {
  return {
    kneeling: { up: trunk.up, across, thigh: scale(thigh.up, -1) },
    front: { up: trunk.up, across, thigh: subtract(leg.middle, frontHip) },
  };
}

type HipWays = ReturnType<typeof hipWays>;

/** Writes the measures of a figure in the order of `MEASURES`: radians, metres, and two cosines. */
function measuresOf(
  { q, figure }: { q: Float64Array; figure: Figure },
  problem: StanceProblem,
  into: Float64Array,
): void {
  const { weights, lengths, contacts, shankWay, soleWay } = problem;
  const hips = hipWays(figure);
  const centre = centreOf(figure, weights, lengths.headNeck);
  for (let k = 0; k < STANCE_UNKNOWNS.length; k++) into[k] = q[k]!;
  into[5] = figure.leg.apart;
  into[6] = hipAngle(hips.kneeling);
  into[7] = hipAngle(hips.front);
  into[8] = centre.x;
  into[9] = centre.y;
  into[10] = dot(figure.thigh.up, shankWay);
  into[11] = dot(subtract(figure.leg.middle, contacts.frontAnkle), soleWay) / lengths.shank;
}

/** Writes how the measures change per radian of one unknown: the chain rule from joint to measure, written out. */
function measureSlopes(
  { figure, hips, problem }: { figure: Figure; hips: HipWays; problem: StanceProblem },
  { slope, unknown }: { slope: FigureSlope; unknown: number },
  into: Float64Array,
): void {
  const { weights, lengths, shankWay, soleWay } = problem;
  const change = { up: slope.trunkUp, across: slope.across };
  const centre = centreSlope(figure, slope, { weights, headNeck: lengths.headNeck });
  for (let k = 0; k < STANCE_UNKNOWNS.length; k++) into[k] = k === unknown ? 1 : 0;
  into[5] = slope.legApart;
  into[6] = hipAngleSlope(hips.kneeling, { ...change, thigh: scale(slope.thighUp, -1) });
  into[7] = hipAngleSlope(hips.front, { ...change, thigh: subtract(slope.frontKnee, slope.frontHip) });
  into[8] = centre.x;
  into[9] = centre.y;
  into[10] = dot(slope.thighUp, shankWay);
  into[11] = dot(slope.frontKnee, soleWay) / lengths.shank;
}
