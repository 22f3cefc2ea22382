import { compareOrders, permutations, type SeatingOrder } from '../../core/crew/compare-orders.ts';
import type { Fit } from '../../core/document/fit-schema.ts';
import type { JobTools } from './job.ts';

/** One seating order judged, and how many of all are done. */
export interface JudgedOrder {
  readonly order: SeatingOrder;
  readonly done: number;
  readonly all: number;
}

/** Judges every seating order of a fit, one step each. */
export function* compareSeatingOrders(
  fit: Fit,
  { evaluator }: JobTools<JudgedOrder>,
): Generator<JudgedOrder, void, void> {
  const all = permutations(fit.seats.length).length;
  let done = 0;
  for (const order of compareOrders(evaluator, fit)) {
    done += 1;
    yield { order, done, all };
  }
}
