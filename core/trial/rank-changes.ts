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
import { sideEffectsOf, worsening } from '../evaluation/side-effects.ts';
import { placeable, violation } from '../optimise/objective.ts';
import { ANSWERED, type Answer, answersOf } from './answers.ts';
import { desiresOf } from './desires.ts';
import { HELPS } from './helps.ts';
import { causesAndLevers, leverWeight } from './levers.ts';
import type { Observation, Trial } from './observation.ts';

/** One change that answers a trial, with what it costs elsewhere. */
export interface RankedChange {
  readonly coordinate: FittingCoordinate;
  /** In the coordinate's own unit: metres or degrees. */
  readonly from: number;
  /** After the change. */
  readonly to: number;
  /** How fully each observation would be answered, against the setting that was tried. */
  readonly answers: readonly Answer[];
  /** How much each observation is answered more than it is now; in the trial's order. */
  readonly gains: readonly number[];
  /** Findings that it moves and no observation asked to be moved. */
  readonly sideEffects: readonly SideEffect[];
  /** True where it brings something into *change* or *stop*, or deeper into it. */
  readonly worsens: boolean;
  /** How much a coach would think of it first: levers by the strength of what was observed, half where it worsens. 0: none. */
  readonly relevance: number;
  /** What it rests on: the model, or practice alone where the model sees no clear effect on what was observed. */
  readonly basis: 'model' | 'practice';
  /** Observations that practice alone moves it for, by their place in the trial; none where the model answers. */
  readonly practiceFor: readonly number[];
  /**
   * What it gains over all observations, less what it costs elsewhere; of equal relevance, the higher is listed
   * first.
   */
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

/** Violation that a change brings elsewhere counts against it this much (this project's weighing). */
const VIOLATION_WEIGHT = 0.4;

/** Bigger moves must earn it: cost of one scale of movement. */
const MOVE_COST = 0.05;

/** An answer beyond this is no better: there is such a thing as enough. */
const ENOUGH = 1.5;

/** A change must answer at least one observation by this much more to be worth saying (this project's weighing). */
const WORTH_SAYING = 0.15;

/** A lever that coaches use for it is worth saying from this much more on, even where it costs something elsewhere. */
const LEVER_WORTH = HELPS;

/** Beyond this cost not even a lever is worth it (this project's weighing). */
const MOST_COST = 2;

/**
 * Fitting changes that answer a trial's observations, and how far the setting as it stands answers them already. What coaches
 * move for such a sign (`causesAndLevers`) comes before what merely moves the numbers; within that the larger answer first.
 * A first lever on which the model sees no clear effect is told in its smallest step, as practice alone. `tried` is the setting the trial was held on, of the same boat and crew. Every unlocked coordinate of the seat is
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
    const best = moves.filter(isWorthSaying).sort(relevantFirst)[0] ?? byPractice(moves, work);
    return best ? [best] : [];
  });
  return { soFar, changes: changes.sort(relevantFirst) };
}

/** Relevance before size; of equal relevance what brings nothing into *change* first. */
function relevantFirst(a: RankedChange, b: RankedChange): number {
  return b.relevance - a.relevance || Number(a.worsens) - Number(b.worsens) || b.score - a.score;
}

/** Changes that gain next to nothing, or cost more than they bring, are not offered. */
function isWorthSaying({ score, gains, relevance }: RankedChange): boolean {
  const most = Math.max(...gains);
  return (score > 0 && most >= WORTH_SAYING) || (relevance > 0 && most >= LEVER_WORTH && score > -MOST_COST);
}

/** The smallest move of a first lever in its own direction, where the model sees no clear effect and nothing is worsened. */
function byPractice(moves: readonly RankedChange[], { trial, soFar }: Work): RankedChange | null {
  const small = moves.filter(({ gains, worsens }) => !worsens && gains.every((gain) => gain > -HELPS));
  for (const move of small.sort((a, b) => Math.abs(a.to - a.from) - Math.abs(b.to - b.from))) {
    const practiceFor = trial.observations.flatMap((observation, i) =>
      soFar[i]!.answered < ANSWERED && isFirstLever(observation, move) ? [i] : [],
    );
    const relevance = practiceFor.reduce((sum, i) => sum + 2 * trial.observations[i]!.strength, 0);
    if (relevance > 0) return { ...move, relevance, basis: 'practice', practiceFor };
  }
  return null;
}

/** A move by practice alone needs to know which way: a lever without a direction of its own is left to the model. */
function isFirstLever(observation: Observation, { coordinate, from, to }: RankedChange): boolean {
  const lever = causesAndLevers(observation).levers.find((one) => one.coordinate === coordinate);
  return lever !== undefined && lever.weight === 2 && lever.direction === Math.sign(to - from);
}

/** What every trial move is judged by. */
interface Work {
  readonly evaluator: Evaluator;
  readonly fit: Fit;
  readonly trial: Trial;
  /** The report of the setting as it is now. */
  readonly before: Report;
  /** The report of the setting that was on the water. */
  readonly tried: Report;
  /** What has been answered between the two. */
  readonly soFar: readonly Answer[];
}

/**
 * One coordinate moved by some of its steps, onto its step or hole; null where it would pass an end of its rule or
 * rail.
 */
function tryMove(work: Work, coordinate: FittingCoordinate, steps: number): RankedChange | null {
  const { evaluator, fit, trial, before } = work;
  const from = coordinateOf(fit.seats[trial.seat]!, coordinate);
  const step = holePitch(fit, coordinate) ?? COORDINATES[coordinate].snapStep;
  const wanted = from + steps * COORDINATES[coordinate].moveUnit;
  const to = Number((Math.round(wanted / step) * step).toFixed(6));
  const { least, most } = endsOf(fit, coordinate);
  if (to === from || to < Math.min(least, from) || to > Math.max(most, from)) return null;
  const after = evaluator.evaluateHolding(withCoordinate(fit, { seat: trial.seat, coordinate }, to), before);
  const answers = answersOf(trial, { tried: work.tried, now: after });
  const enough = (answered: number) => Math.min(answered, ENOUGH);
  const gains = answers.map((a, i) => enough(a.answered) - enough(work.soFar[i]!.answered));
  const gain = gains.reduce((sum, g, i) => sum + g * trial.observations[i]!.strength, 0);
  const worse = violationAdded(before, after);
  const score = gain - VIOLATION_WEIGHT * worse.added - MOVE_COST * Math.abs(steps);
  const sideEffects = askedForLeftOut(sideEffectsOf(before, after), trial).filter(
    (effect) => !isMoveItself(effect, { from, to }),
  );
  const relevance = trial.observations.reduce((sum, observation, i) => {
    const weight = gains[i]! >= HELPS ? leverWeight(observation, { coordinate, by: to - from }) : 0;
    return sum + weight * observation.strength;
  }, 0);
  const worsens = worse.serious;
  return {
    coordinate,
    from,
    to,
    answers,
    gains,
    sideEffects,
    worsens,
    relevance: worsens ? relevance / 2 : relevance,
    basis: 'model',
    practiceFor: [],
    score,
  };
}

/** What an observation asked to be moved is no side effect of moving it, unless it turned for the worse. */
function askedForLeftOut(effects: readonly SideEffect[], trial: Trial): SideEffect[] {
  const asked = new Set<string>(trial.observations.flatMap((o) => desiresOf(o).map((d) => d.quantity)));
  return effects.filter((e) => !asked.has(e.id) || worsening(e) > 0);
}

/** Whether an effect is the moved setting's own value, which the move says already; not where it is judged otherwise now. */
function isMoveItself(effect: SideEffect, { from, to }: Pick<RankedChange, 'from' | 'to'>): boolean {
  const isSame = (a: number, b: number) => Math.abs(a - b) < 1e-9;
  return isSame(effect.from, from) && isSame(effect.to, to) && effect.severityFrom === effect.severityTo;
}

/** Violation that `after` has more than `before`, finding by finding; serious where one of them says change or stop. */
function violationAdded(before: Report, after: Report): { added: number; serious: boolean } {
  const was = new Map(placeable(before.findings).map((f) => [f.id, violation(f)]));
  let added = 0;
  let serious = false;
  for (const finding of placeable(after.findings)) {
    const more = violation(finding) - (was.get(finding.id) ?? 0);
    if (more <= 0) continue;
    added += more;
    if (finding.severity === 'change' || finding.severity === 'stop') serious = true;
  }
  return { added, serious };
}
