import { equationsFor, type NormalEquations } from '../../../core/posture/normal-equations.ts';
import { stanceObjective, termSlopes } from '../../../core/posture/objective.ts';
import { STANCE_UNKNOWNS } from '../../../core/posture/stance.ts';
import type { StanceProblem } from '../../../core/posture/stance-problem.ts';
import type { ObjectiveTerm } from '../../../core/posture/stance-terms.ts';

/** Residuals of a stance problem at some unknowns (radians), in the order of `STANCE_TERMS`. */
export function residualsAt(q: readonly number[], problem: StanceProblem): number[] {
  const objective = stanceObjective(problem);
  const into = new Float64Array(objective.terms);
  objective.residualsAt(Float64Array.from(q), into);
  return [...into];
}

/** Their derivatives to each unknown: `[unknown][term]`, per radian. */
export function slopesAt(q: readonly number[], problem: StanceProblem): number[][] {
  const { terms } = problem;
  const residuals = residualsAt(q, problem);
  const slopes = termSlopes(problem, Float64Array.from(q));
  const slopeOf = ({ sense }: ObjectiveTerm, t: number, k: number) => {
    const slope = slopes[k * terms.length + t]!;
    if (sense === 'near') return slope;
    // A one-sided term counts past its limit only; there its distance grows, while its residual has a sign.
    return Math.sign(residuals[t]!) * slope;
  };
  return STANCE_UNKNOWNS.map((_, k) => terms.map((term, t) => slopeOf(term, t, k)));
}

/** The equations that a search solves there: the lower half of JᵀJ, row by row, and Jᵀr. */
export function equationsAt(
  q: readonly number[],
  problem: StanceProblem,
): Pick<NormalEquations, 'normal' | 'gradient'> {
  const objective = stanceObjective(problem);
  const residuals = new Float64Array(objective.terms);
  const equations = equationsFor(STANCE_UNKNOWNS.length);
  objective.residualsAt(Float64Array.from(q), residuals);
  objective.equationsThere(equations, residuals);
  return equations;
}
