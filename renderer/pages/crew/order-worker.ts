import { compareOrders, permutations, type SeatingOrder } from '../../../core/crew/compare-orders.ts';
import { createEvaluator } from '../../../core/fit/evaluator.ts';
import type { Fit } from '../../../core/fit/fit-schema.ts';

/** One order judged, and how far the work is. */
export interface OrderAnswer {
  readonly order: SeatingOrder;
  readonly done: number;
  readonly all: number;
}

/** Judges every seating order of a fit, one message each; the page ends the worker to cancel. */
self.onmessage = ({ data }: MessageEvent<Fit>) => {
  const all = permutations(data.seats.length).length;
  let done = 0;
  for (const order of compareOrders(createEvaluator(), data)) {
    done += 1;
    self.postMessage({ order, done, all } satisfies OrderAnswer);
  }
};
