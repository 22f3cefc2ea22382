import type { Fit } from '../document/fit-schema.ts';
import { freeCoordinates } from '../document/fitting-coordinate.ts';
import { createEvaluator } from '../evaluation/evaluator.ts';
import { middleEdges } from './edges.ts';
import { seriousCount } from './objective.ts';
import { propose } from './propose.ts';
import { beginning, smallestChange } from './smallest-change.ts';

/**
 * A crew whose seats each have their first setting, with the smallest common change that also brings the whole boat's values
 * well inside their bands: trim, heel, room between the seats. A fit of one seat, with an empty seat or with nothing to improve
 * is returned as the same object. Deterministic.
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
  // Nonlinear values may still leave something to change: that is changed as in any fit.
  return seriousCount(evaluator.evaluate(levelled)) > 0 ? propose(evaluator, levelled).fit : levelled;
}
