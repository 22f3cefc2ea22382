import type { FittingCoordinate, Quantity } from '../findings/finding.ts';
import type { QuantityId } from '../findings/quantities.ts';
import type { Evaluator } from '../fit/evaluator.ts';
import type { Fit } from '../fit/fit-schema.ts';
import {
  COORDINATE_RULES,
  coordinateOf,
  freeCoordinates,
  holePitch,
  withCoordinate,
} from '../fit/fitting-coordinate.ts';
import type { Report } from '../fit/report.ts';
import { excessTrouble, placeable } from '../proposal/objective.ts';
import { type Desire, desiresOf } from './desires.ts';
import type { Trial } from './observation.ts';

/** How a change answers one observation: index in the trial, and how fully (1 is a clear answer, negative is worse). */
export interface Answer {
  readonly observation: number;
  readonly answered: number;
  readonly reason: string;
}

/** One change that answers a trial, with what it costs elsewhere. */
export interface RankedChange {
  readonly coordinate: FittingCoordinate;
  /** In the coordinate's own unit: metres or degrees. */
  readonly from: number;
  readonly to: number;
  readonly answers: readonly Answer[];
  /** Findings that become worse: quantity ids. */
  readonly worsens: readonly QuantityId[];
  readonly score: number;
}

/** Moves tried along each coordinate, in its scale (1 cm, 3°): small ones first. */
const TRIED = [-2, -1, 1, 2] as const;

/** Trouble that a change brings elsewhere counts against it this much (this project's weighing). */
const TROUBLE_WEIGHT = 0.4;

/** Bigger moves must earn it: cost of one scale of movement. */
const MOVE_COST = 0.05;

/** An answer beyond this is no better: there is such a thing as enough. */
const ENOUGH = 1.5;

/**
 * Fitting changes that answer a trial's observations, best first; empty when no observation has an answer in the
 * fittings. Every unlocked coordinate of the seat is tried by whole steps through the model; each observation's wishes
 * are weighed by its strength. Hole pitch is respected.
 */
export function rankChanges(evaluator: Evaluator, fit: Fit, trial: Trial): RankedChange[] {
  const seat = fit.seats[trial.seat];
  if (!seat?.athlete || trial.observations.length === 0) return [];
  const before = evaluator.evaluate(fit);
  const changes = freeCoordinates(seat).flatMap((coordinate) => {
    const tried = TRIED.map((steps) => tryMove({ evaluator, fit, trial, before }, coordinate, steps));
    const best = tried.filter((c) => c !== null).sort((a, b) => b.score - a.score)[0];
    return best ? [best] : [];
  });
  return changes.filter((c) => c.score > 0).sort((a, b) => b.score - a.score);
}

interface Work {
  readonly evaluator: Evaluator;
  readonly fit: Fit;
  readonly trial: Trial;
  readonly before: Report;
}

function tryMove(work: Work, coordinate: FittingCoordinate, steps: number): RankedChange | null {
  const { evaluator, fit, trial, before } = work;
  const from = coordinateOf(fit.seats[trial.seat]!, coordinate);
  const grain = holePitch(fit, coordinate) ?? COORDINATE_RULES[coordinate].grain;
  const wanted = from + steps * COORDINATE_RULES[coordinate].scale;
  const to = Number((Math.round(wanted / grain) * grain).toFixed(6));
  const { least, most } = COORDINATE_RULES[coordinate];
  if (to === from || to < Math.min(least, from) || to > Math.max(most, from)) return null;
  const after = evaluator.evaluateHolding(withCoordinate(fit, { seat: trial.seat, coordinate }, to), before);
  const answers = trial.observations.map((o, observation) => ({
    observation,
    ...answerTo(desiresOf(o), { before, after, seat: trial.seat }),
  }));
  const gain = answers.reduce(
    (sum, a) => sum + Math.min(a.answered, ENOUGH) * trial.observations[a.observation]!.strength,
    0,
  );
  const worse = worsened(before, after);
  const score = gain - TROUBLE_WEIGHT * worse.trouble - MOVE_COST * Math.abs(steps);
  return { coordinate, from, to, answers, worsens: worse.ids, score };
}

/** The main wish counts whole, each further one half. */
function answerTo(
  desires: readonly Desire[],
  { before, after, seat }: { before: Report; after: Report; seat: number },
): { answered: number; reason: string } {
  let answered = 0;
  desires.forEach(({ quantity, direction, clear }, i) => {
    const was = readQuantity(before.quantities, quantity, seat);
    const is = readQuantity(after.quantities, quantity, seat);
    if (was === null || is === null) return;
    answered += ((is - was) * direction) / clear / 2 ** i;
  });
  return { answered, reason: desires[0]?.reason ?? '' };
}

function readQuantity(quantities: readonly Quantity[], id: QuantityId, seat: number): number | null {
  return quantities.find((q) => q.id === id && (q.seat === seat || q.seat === null))?.value ?? null;
}

function worsened(before: Report, after: Report): { trouble: number; ids: QuantityId[] } {
  const was = new Map(placeable(before.findings).map((f) => [f.id, excessTrouble(f)]));
  let trouble = 0;
  const ids: QuantityId[] = [];
  for (const finding of placeable(after.findings)) {
    const more = excessTrouble(finding) - (was.get(finding.id) ?? 0);
    if (more <= 0) continue;
    trouble += more;
    if (finding.severity === 'change' || finding.severity === 'stop')
      ids.push(finding.quantity as QuantityId);
  }
  return { trouble, ids };
}
