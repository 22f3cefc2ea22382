import { stanceObjective } from '../../../core/posture/objective.ts';
import { STANCE_UNKNOWNS } from '../../../core/posture/stance.ts';
import type { StanceProblem } from '../../../core/posture/stance-problem.ts';

/** Residuals of a stance problem at some unknowns (radians), in the order of `STANCE_TERMS`. */
export function residualsAt(q: readonly number[], problem: StanceProblem): number[] {
  const objective = stanceObjective(problem);
  const into = new Float64Array(objective.terms);
  objective.residualsAt(Float64Array.from(q), into);
  return [...into];
}

/** Their derivatives to each unknown: `[unknown][term]`, per radian. */
export function slopesAt(q: readonly number[], problem: StanceProblem): number[][] {
  const objective = stanceObjective(problem);
  objective.residualsAt(Float64Array.from(q), new Float64Array(objective.terms));
  const into = new Float64Array(objective.terms * STANCE_UNKNOWNS.length);
  objective.slopesThere(into);
  return STANCE_UNKNOWNS.map((_, k) => [...into.subarray(k * objective.terms, (k + 1) * objective.terms)]);
}
