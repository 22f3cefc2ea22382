import type { ProvenPlan } from '../../core/drilling/best-drilling.ts';
import type { DrillingRules } from '../../core/drilling/drilling-model.ts';
import type { DrillingWish } from '../../core/drilling/drilling-wish.ts';

/** What the planner of holes is asked. */
export interface DrillingQuestion {
  readonly wishes: readonly DrillingWish[];
  readonly rules: DrillingRules;
}

/** Its answer: the plan; or that there is none, and by how much more everybody would have to move for one; or why it failed. */
export type DrillingAnswer =
  | { readonly kind: 'plan'; readonly proven: ProvenPlan }
  | { readonly kind: 'none'; readonly moreM: number | null }
  | { readonly kind: 'late' }
  | { readonly kind: 'failed'; readonly why: string };

/** One board for several fits. The solver is large: the worker loads it for this job alone. */
// biome-ignore lint/correctness/useYield: it is over in one step
export async function* planDrilling(question: DrillingQuestion): AsyncGenerator<never, DrillingAnswer, void> {
  try {
    const { solveDrilling } = await import('./solve-drilling.ts');
    return await solveDrilling(question);
  } catch (error) {
    return { kind: 'failed', why: String(error) };
  }
}
