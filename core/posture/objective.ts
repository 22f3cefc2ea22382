import type { LeastSquares } from './minimise.ts';
import { STANCE_UNKNOWNS } from './stance.ts';
import { measureAt, slopeBy, slopesAt } from './stance-measures.ts';
import type { StanceProblem } from './stance-problem.ts';
import { inStanceSpace, stanceSpace } from './stance-space.ts';
import { distanceOf, residualOf } from './stance-terms.ts';

/**
 * The objective as a least-squares problem in the five unknowns (radians, order of `STANCE_UNKNOWNS`). Derivatives are
 * written out by hand, along the chain from unknown to joint to measure to term. It writes into `space`.
 */
export function stanceObjective(problem: StanceProblem, space = stanceSpace(problem)): LeastSquares {
  const { terms } = problem;
  const { measures, measureSlopes, counting } = space;
  let found = false;
  return {
    terms: terms.length,
    residualsAt(q, into) {
      measureAt(space, problem, q);
      found = true;
      for (let i = 0; i < terms.length; i++) into[i] = residualOf(terms[i]!, measures[terms[i]!.measure]!);
    },
    slopesThere(into) {
      if (!found) return;
      slopesAt(space, problem);
      // On its free side a one-sided term has no slope by any unknown: half of all terms, looked for once.
      let count = 0;
      for (let i = 0; i < terms.length; i++) {
        const term = terms[i]!;
        if (term.sense === 'near' || residualOf(term, measures[term.measure]!) !== 0) counting[count++] = i;
      }
      into.fill(0);
      for (let k = 0; k < STANCE_UNKNOWNS.length; k++) {
        slopeBy(space, problem, k);
        const row = k * terms.length;
        for (let c = 0; c < count; c++) {
          const i = counting[c]!;
          const term = terms[i]!;
          into[row + i] = measureSlopes[term.measure]! / term.tolerance;
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
  return inStanceSpace(problem, (space) => {
    measureAt(space, problem, q);
    return Float64Array.from(problem.terms, (term) => distanceOf(term, space.measures[term.measure]!));
  });
}

/** How each term's distance changes per radian of each unknown: unknown by unknown, in the order of the terms. */
export function termSlopes(problem: StanceProblem, q: Float64Array): Float64Array {
  const { terms } = problem;
  const into = new Float64Array(STANCE_UNKNOWNS.length * terms.length);
  return inStanceSpace(problem, (space) => {
    const { measures, measureSlopes } = space;
    measureAt(space, problem, q);
    slopesAt(space, problem);
    for (let k = 0; k < STANCE_UNKNOWNS.length; k++) {
      slopeBy(space, problem, k);
      terms.forEach(({ sense, measure, tolerance }, t) => {
        const turned = sense === 'least' || (sense === 'within' && measures[measure]! < 0);
        into[k * terms.length + t] = ((turned ? -1 : 1) * measureSlopes[measure]!) / tolerance;
      });
    }
    return into;
  });
}
