import { COORDINATES, type FittingCoordinate } from '../document/coordinates.ts';
import type { Fit } from '../document/fit-schema.ts';
import {
  coordinateOf,
  endsOf,
  freeCoordinates,
  holePitch,
  withCoordinate,
} from '../document/fitting-coordinate.ts';
import type { Evaluator } from '../evaluation/evaluator.ts';
import type { SideEffect } from '../evaluation/finding.ts';
import type { Report } from '../evaluation/report.ts';
import { sideEffectsOf } from '../evaluation/side-effects.ts';
import { placeable, violation } from '../optimise/objective.ts';
import { type Answer, answersOf } from './answers.ts';
import { desiresOf } from './desires.ts';
import type { Trial } from './observation.ts';

/** One change that answers a trial, with what it costs elsewhere. */
export interface RankedChange {
  readonly coordinate: FittingCoordinate;
  /** In the coordinate's own unit: metres or degrees. */
  readonly from: number;
  readonly to: number;
  /** How fully each observation would be answered, against the setting that was tried. */
  readonly answers: readonly Answer[];
  /** How much each observation is answered more than it is now; in the trial's order. */
  readonly gains: readonly number[];
  /** Findings that it moves and no observation asked to be moved. */
  readonly sideEffects: readonly SideEffect[];
  /** True where it brings something into *change* or *stop*, or deeper into it. */
  readonly worsens: boolean;
  readonly score: number;
}

/** What a trial has to say of the setting as it stands. */
export interface TrialAnswers {
  /** How fully what has been changed since answers each observation already. */
  readonly soFar: readonly Answer[];
  /** Single changes that answer more, best first. */
  readonly changes: readonly RankedChange[];
}

/** Moves tried along each coordinate, in its scale (1 cm, 3°): small ones first. */
const TRIED = [-2, -1, 1, 2] as const;

/** Trouble that a change brings elsewhere counts against it this much (this project's weighing). */
const TROUBLE_WEIGHT = 0.4;

/** Bigger moves must earn it: cost of one scale of movement. */
const MOVE_COST = 0.05;

/** An answer beyond this is no better: there is such a thing as enough. */
const ENOUGH = 1.5;

/** A change must answer at least one observation by this much more to be worth saying (this project's weighing). */
const WORTH_SAYING = 0.15;

/**
 * Fitting changes that answer a trial's observations, best first, and how far the setting as it stands answers them
 * already. `tried` is the setting the trial was held on, of the same boat and crew. Every unlocked coordinate of the seat is
 * tried by whole steps through the model; each observation's wishes are weighed by its strength. Hole pitch is respected.
 * Empty where nobody kneels in the seat or no observation was made.
 */
export function rankChanges(
  evaluator: Evaluator,
  { fit, tried = fit, trial }: { fit: Fit; tried?: Fit; trial: Trial },
): TrialAnswers {
  const seat = fit.seats[trial.seat];
  if (!seat?.athlete || trial.observations.length === 0) return { soFar: [], changes: [] };
  const before = evaluator.evaluate(fit);
  const triedReport = tried === fit ? before : evaluator.evaluateHolding(tried, before);
  const soFar = answersOf(trial, { tried: triedReport, now: before });
  const work = { evaluator, fit, trial, before, tried: triedReport, soFar };
  const changes = freeCoordinates(seat).flatMap((coordinate) => {
    const moves = TRIED.map((steps) => tryMove(work, coordinate, steps)).filter((c) => c !== null);
    const best = moves.sort((a, b) => b.score - a.score)[0];
    return best ? [best] : [];
  });
  const worth = changes.filter((c) => c.score > 0 && c.gains.some((gain) => gain >= WORTH_SAYING));
  return { soFar, changes: worth.sort((a, b) => b.score - a.score) };
}

interface Work {
  readonly evaluator: Evaluator;
  readonly fit: Fit;
  readonly trial: Trial;
  readonly before: Report;
  readonly tried: Report;
  readonly soFar: readonly Answer[];
}

function tryMove(work: Work, coordinate: FittingCoordinate, steps: number): RankedChange | null {
  const { evaluator, fit, trial, before } = work;
  const from = coordinateOf(fit.seats[trial.seat]!, coordinate);
  const grain = holePitch(fit, coordinate) ?? COORDINATES[coordinate].snapStep;
  const wanted = from + steps * COORDINATES[coordinate].moveUnit;
  const to = Number((Math.round(wanted / grain) * grain).toFixed(6));
  const { least, most } = endsOf(fit, coordinate);
  if (to === from || to < Math.min(least, from) || to > Math.max(most, from)) return null;
  const after = evaluator.evaluateHolding(withCoordinate(fit, { seat: trial.seat, coordinate }, to), before);
  const answers = answersOf(trial, { tried: work.tried, now: after });
  const enough = (answered: number) => Math.min(answered, ENOUGH);
  const gains = answers.map((a, i) => enough(a.answered) - enough(work.soFar[i]!.answered));
  const gain = gains.reduce((sum, g, i) => sum + g * trial.observations[i]!.strength, 0);
  const worse = troubleAdded(before, after);
  const score = gain - TROUBLE_WEIGHT * worse.trouble - MOVE_COST * Math.abs(steps);
  const sideEffects = askedForLeftOut(sideEffectsOf(before, after), trial);
  return { coordinate, from, to, answers, gains, sideEffects, worsens: worse.serious, score };
}

/** What an observation asked to be moved is no side effect of moving it, unless it turned for the worse. */
function askedForLeftOut(effects: readonly SideEffect[], trial: Trial): SideEffect[] {
  const asked = new Set<string>(trial.observations.flatMap((o) => desiresOf(o).map((d) => d.quantity)));
  return effects.filter((e) => !asked.has(e.id) || e.severityFrom !== e.severityTo);
}

/** Trouble that `after` has more than `before`, finding by finding; serious where one of them says change or stop. */
function troubleAdded(before: Report, after: Report): { trouble: number; serious: boolean } {
  const was = new Map(placeable(before.findings).map((f) => [f.id, violation(f)]));
  let trouble = 0;
  let serious = false;
  for (const finding of placeable(after.findings)) {
    const more = violation(finding) - (was.get(finding.id) ?? 0);
    if (more <= 0) continue;
    trouble += more;
    if (finding.severity === 'change' || finding.severity === 'stop') serious = true;
  }
  return { trouble, serious };
}
