import type { Fit } from '../document/fit-schema.ts';
import { freeCoordinates } from '../document/fitting-coordinate.ts';
import { createEvaluator } from '../evaluation/evaluator.ts';
import { middleEdges } from './edges.ts';
import { seriousCount } from './objective.ts';
import { propose } from './propose.ts';
import { beginning, smallestChange } from './smallest-change.ts';

/**
 * A crew whose seats have each their first setting, moved all together as little as brings the whole boat's values well inside their
 * bands too: even trim, heel, room between the seats. A fit of one seat, with an empty seat or nothing to mend is the very same
 * object. Deterministic.
 */
export function levelledFit(fit: Fit): Fit {
  if (fit.seats.length < 2 || fit.seats.some((seat) => seat.athlete === null)) return fit;
  const evaluator = createEvaluator();
  const held = evaluator.evaluate(fit);
  if (held.findings.every(({ severity }) => severity === 'good')) return fit;
  const places = fit.seats.flatMap((seat, index) =>
    freeCoordinates(seat)
      .filter((coordinate) => !coordinate.startsWith('paddle'))
      .map((coordinate) => ({ seat: index, coordinate })),
  );
  const search = { evaluator, fit, held, places };
  const edges = middleEdges(held, () => true);
  const levelled = smallestChange(search, edges, { from: beginning(search), measurings: 0 }).here.fit;
  // Values that bend may leave something to change after all: that is put right as in any fit.
  return seriousCount(evaluator.evaluate(levelled)) > 0 ? propose(evaluator, levelled).fit : levelled;
}
