import type { Fit } from '../document/fit-schema.ts';
import { withCoordinate } from '../document/fitting-coordinate.ts';
import type { Search } from './moves.ts';
import { seriousCount } from './objective.ts';
import { offersFor } from './offers.ts';

/** Offers taken at most; more than two are rare. */
const MOST_TAKEN = 4;

/**
 * The fit of a search after its offers are taken, the cheapest first, until no check is left that a change would clear without
 * making another finding worse. The same object where nothing is offered. Deterministic.
 */
export function withOffersTaken({ evaluator, fit, places }: Omit<Search, 'held'>): Fit {
  let best = fit;
  for (let taken = 0; taken < MOST_TAKEN; taken++) {
    const held = evaluator.evaluate(best);
    const [cheapest] = offersFor({ evaluator, fit: best, held, places }).sort((a, b) => a.size - b.size);
    if (!cheapest) break;
    const there = cheapest.moves.reduce((now, move) => withCoordinate(now, move, move.to), best);
    if (seriousCount(evaluator.evaluate(there)) > seriousCount(held)) break;
    best = there;
  }
  return best;
}
