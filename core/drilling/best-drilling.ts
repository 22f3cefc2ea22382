import type { DrillingModel } from './drilling-model.ts';
import { costOf, type DrillingPlan, planOf, tooNear, weightsOf } from './drilling-plan.ts';
import { chosenOf, drillingProgramme } from './drilling-programme.ts';

/** Result of a solver of integer programmes: each column's value, and a lower bound of the cost. */
export interface Solved {
  /** Value of the column of that name; 0 or 1 for a choice. */
  readonly value: (column: string) => number;
  /** True where the solver proved its answer the best of the programme it was given. */
  readonly optimal: boolean;
  /** No answer costs less; equal to the cost of an optimal one. */
  readonly bound: number;
}

/** Solves a programme. `none`: it has no solution. `late`: time ran out before one was found. */
export type Solve = (programme: string) => Solved | 'none' | 'late';

/**
 * A plan with its proof: `gap` is how much less another plan could cost, as a share of this one's; 0 is the best there is. `model`
 * is what the plan chooses from.
 */
export interface ProvenPlan {
  readonly plan: DrillingPlan;
  /** 0 to 1, no unit. */
  readonly gap: number;
  readonly model: DrillingModel;
}

/** A model on a coarser grid with its own solver: the fallback of a large plan when its time is up. */
export interface Coarser {
  readonly model: DrillingModel;
  readonly solve: Solve;
}

/** Most rounds of adding rules for holes that are too near; each adds at least one, and few are needed. */
const MOST_ROUNDS = 200;

/**
 * The plan with the fewest new holes, then the fewest base plates, then the least moving. Rules for holes that lie too near are
 * added as answers break them: each answer bounds the cost from below, and the first that breaks none is the best. When time runs
 * out, the best plan on the coarser grid stands in, with its gap to that bound. `none` where there is no plan at all, `late` where
 * none was found in time.
 */
export function bestDrilling(
  model: DrillingModel,
  solve: Solve,
  coarser?: Coarser,
): ProvenPlan | 'none' | 'late' {
  const { chosen, bound } = searched(model, solve);
  if (chosen === 'none') return 'none';
  if (chosen !== 'late') return proven({ model, chosen, of: model, bound });
  if (!coarser) return 'late';
  const other = searched(coarser.model, coarser.solve);
  // No plan on the coarse grid does not mean that there is none on the fine one.
  if (other.chosen === 'none' || other.chosen === 'late') return 'late';
  return proven({ model: coarser.model, chosen: other.chosen, of: model, bound });
}

/** The standing chosen for each wish; null where there is none. */
type Chosen = readonly (number | null)[];

/** The first answer that breaks no rule, with the greatest bound on the way. */
function searched(model: DrillingModel, solve: Solve): { chosen: Chosen | 'none' | 'late'; bound: number } {
  const crowds: number[][] = [];
  let bound = 0;
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const solved = solve(drillingProgramme(model, crowds));
    if (solved === 'none' || solved === 'late') return { chosen: solved, bound };
    bound = Math.max(bound, solved.bound);
    const chosen = chosenOf(model, solved.value);
    const broken = tooNear(model, chosen);
    if (broken.length === 0) return { chosen, bound };
    crowds.push(...broken);
  }
  return { chosen: 'late', bound };
}

/** Costs are those of the fine model, whose bound it is. */
function proven(given: {
  model: DrillingModel;
  chosen: Chosen;
  of: DrillingModel;
  bound: number;
}): ProvenPlan {
  const { model, chosen, of, bound } = given;
  const plan = planOf(model, chosen);
  const cost = costOf(plan, weightsOf(of));
  const gap = cost - bound <= GAP_OF_ROUNDING * cost ? 0 : (cost - bound) / cost;
  return { plan, gap, model };
}

/** Relative accuracy to which a solver proves its answer. */
const GAP_OF_ROUNDING = 1e-6;
