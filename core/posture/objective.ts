import type { LeastSquares } from './minimise.ts';
import type { NormalEquations } from './normal-equations.ts';
import { STANCE_UNKNOWNS } from './stance.ts';
import { measureAt, slopesAt } from './stance-measures.ts';
import type { StanceProblem } from './stance-problem.ts';
import { inStanceSpace, type StanceSpace, stanceSpace } from './stance-space.ts';
import { distanceOf, MEASURES, type ObjectiveTerm, residualOf } from './stance-terms.ts';

const UNKNOWNS = STANCE_UNKNOWNS.length;
const MEASURED = MEASURES.length;

/**
 * The objective as a least-squares problem in the five unknowns (radians, order of `STANCE_UNKNOWNS`). Derivatives are
 * written out by hand, along the chain from unknown to joint to measure to term. It writes into `space`.
 */
export function stanceObjective(problem: StanceProblem, space = stanceSpace(problem)): LeastSquares {
  const { terms } = problem;
  const { measures } = space;
  return {
    terms: terms.length,
    residualsAt(q, into) {
      measureAt(space, problem, q);
      for (let i = 0; i < terms.length; i++) into[i] = residualOf(terms[i]!, measures[terms[i]!.measure]!);
    },
    equationsThere(into, residuals) {
      slopesAt(space, problem);
      weighMeasures(space, terms, residuals);
      writeEquations(into, space);
    },
  };
}

/** Writes the residuals of all terms at any value of the unknowns (radians). */
export function termResiduals(problem: StanceProblem, q: Float64Array, into: Float64Array): void {
  inStanceSpace(problem, (space) => stanceObjective(problem, space).residualsAt(q, into));
}

/**
 * Several terms look at one measure and have its slope in common: adds up the weight of each measure (Σ 1/tolerance²) and its
 * pull (Σ residual/tolerance). On its free side a one-sided term has no slope and does not count.
 */
function weighMeasures(
  { weights, pulls }: StanceSpace,
  terms: readonly ObjectiveTerm[],
  residuals: Float64Array,
): void {
  weights.fill(0);
  pulls.fill(0);
  for (let i = 0; i < terms.length; i++) {
    const { measure, sense, tolerance } = terms[i]!;
    const residual = residuals[i]!;
    if (residual === 0 && sense !== 'near') continue;
    weights[measure]! += 1 / (tolerance * tolerance);
    pulls[measure]! += residual / tolerance;
  }
}

/** JᵀJ and Jᵀr from the measures' weights, pulls and slopes. The first measures are the unknowns: their slopes are 1 and 0. */
function writeEquations(
  { normal, gradient }: NormalEquations,
  { weights, pulls, measureSlopes: slopes }: StanceSpace,
): void {
  normal.fill(0);
  for (let k = 0; k < UNKNOWNS; k++) {
    gradient[k] = pulls[k]!;
    normal[k * UNKNOWNS + k] = weights[k]!;
  }
  for (let m = UNKNOWNS; m < MEASURED; m++) {
    const weight = weights[m]!;
    const pull = pulls[m]!;
    if (weight === 0) continue;
    for (let k = 0; k < UNKNOWNS; k++) {
      const slope = slopes[k * MEASURED + m]!;
      gradient[k]! += pull * slope;
      for (let j = 0; j <= k; j++) normal[k * UNKNOWNS + j]! += weight * slope * slopes[j * MEASURED + m]!;
    }
  }
}

/**
 * Every term's signed distance from its target at any value of the unknowns (radians), in tolerances: of a one-sided term,
 * positive past its limit and negative on its free side.
 */
export function termDistances(problem: StanceProblem, q: Float64Array): Float64Array {
  return inStanceSpace(problem, (space) => {
    measureAt(space, problem, q);
    return Float64Array.from(problem.terms, (term) => distanceOf(term, space.measures[term.measure]!));
  });
}

/** How each term's distance changes per radian of each unknown: unknown by unknown, in the order of the terms. */
export function termSlopes(problem: StanceProblem, q: Float64Array): Float64Array {
  const { terms } = problem;
  const into = new Float64Array(UNKNOWNS * terms.length);
  return inStanceSpace(problem, (space) => {
    const { measures, measureSlopes } = space;
    measureAt(space, problem, q);
    slopesAt(space, problem);
    for (let k = 0; k < UNKNOWNS; k++) {
      terms.forEach(({ sense, measure, tolerance }, t) => {
        const turned = sense === 'least' || (sense === 'within' && measures[measure]! < 0);
        into[k * terms.length + t] = ((turned ? -1 : 1) * measureSlopes[k * MEASURED + measure]!) / tolerance;
      });
    }
    return into;
  });
}
