import type { DrillingModel } from './drilling-model.ts';
import { costOf, type DrillingPlan, planOf, tooNear } from './drilling-plan.ts';
import { chosenOf, drillingProgramme } from './drilling-programme.ts';

/** What a solver of integer programmes answers: each column's value, and the least cost that any answer could have. */
export interface Solved {
  readonly value: (column: string) => number;
  /** True where the solver proved its answer the best of the programme it was given. */
  readonly optimal: boolean;
  readonly bound: number;
}

/** Solves a programme; null where there is no answer, or none was found in time. */
export type Solve = (programme: string) => Solved | null;

/** A plan with its proof: `gap` is how much less another plan could cost, as a share of this one's; 0 is the best there is. */
export interface ProvenPlan {
  readonly plan: DrillingPlan;
  readonly gap: number;
}

/** Rounds of adding rules for holes that lie too near; each adds at least one, and few are ever needed. */
const MOST_ROUNDS = 200;

/**
 * The plan with the fewest new holes, then the least moving. Rules for holes that lie too near are added as answers break them:
 * each answer bounds the cost from below, and the first that breaks none is the best. Null where there is no plan at all.
 */
export function bestDrilling(model: DrillingModel, solve: Solve): ProvenPlan | null {
  const crowds: number[][] = [];
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const solved = solve(drillingProgramme(model, crowds));
    if (!solved) return null;
    const chosen = chosenOf(model, solved.value);
    const broken = tooNear(model, chosen);
    if (broken.length === 0) {
      const plan = planOf(model, chosen);
      const cost = costOf(plan);
      const gap = solved.optimal || cost === 0 ? 0 : Math.max(0, (cost - solved.bound) / cost);
      return { plan, gap };
    }
    crowds.push(...broken);
  }
  return null;
}
