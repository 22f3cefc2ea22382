import type { Athlete } from '../document/athlete-schema.ts';
import type { Fit } from '../document/fit-schema.ts';
import type { Evaluator } from '../evaluation/evaluator.ts';
import type { SideEffect } from '../evaluation/finding.ts';
import { sideEffectsOf, worsening } from '../evaluation/side-effects.ts';
import { athleteForFit } from './body-difference.ts';

/** Effect of a grown body on a fit whose fittings stay. */
export interface GrowthChanges {
  /** The same fittings with the athlete as measured now. */
  readonly fit: Fit;
  /** Findings that change, those that become worse first; SI. */
  readonly changes: readonly SideEffect[];
  /** Findings that keep their value and their severity. */
  readonly unmoved: number;
}

/** The predicted change in every finding of a fit when `newest` replaces the copy of an athlete in `seat`. */
export function growthChanges(
  evaluator: Evaluator,
  { fit, seat, newest }: { fit: Fit; seat: number; newest: Athlete },
): GrowthChanges {
  const seats = fit.seats.map((s, i) =>
    i === seat && s.athlete ? { ...s, athlete: athleteForFit(s.athlete, newest) } : s,
  );
  const grown = { ...fit, seats };
  const [before, after] = [evaluator.evaluate(fit), evaluator.evaluate(grown)];
  const changes = sideEffectsOf(before, after).sort((a, b) => worsening(b) - worsening(a));
  return { fit: grown, changes, unmoved: after.findings.length - changes.length };
}
