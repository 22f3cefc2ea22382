import { COORDINATES, type Coordinate, type FittingCoordinate } from '../document/coordinates.ts';
import type { Fit } from '../document/fit-schema.ts';
import {
  coordinateOf,
  endsOf,
  freeCoordinates,
  holePitch,
  withCoordinate,
} from '../document/fitting-coordinate.ts';
import type { Evaluator } from './evaluator.ts';
import type { Finding, Suggestion } from './finding.ts';
import { DECIDED_SIGMAS } from './probability.ts';
import type { Report } from './report.ts';
import { sideEffectsOf } from './side-effects.ts';

/** Where a band is narrower than the value's own doubt, a change aims this share of the band inside its edge. */
const NARROW_BAND_SHARE = 0.25;

/** Secant and bisection steps along one coordinate; the answer is then rounded to the coordinate's snap step. */
const MOST_STEPS = 10;

/** Moves smaller than this share of a snap step do not matter. */
const SNAP_SHARE = 0.25;

type Move = Extract<Suggestion, { kind: 'move' }>;

interface Search {
  readonly evaluator: Evaluator;
  readonly fit: Fit;
  readonly report: Report;
  readonly finding: Finding;
}

/**
 * The smallest single move of a fitting that brings a finding's value inside its band by its own uncertainty, found
 * by solving along every free coordinate; moves are compared by `COORDINATES.scale`. A move that brings no new
 * *change* or *stop* is preferred to a smaller one that does. `kind: 'none'` when no single move clears it.
 */
export function suggestChange(search: Search): Suggestion {
  const { finding, fit } = search;
  const choice = choiceFor(finding);
  if (choice) return choice;
  if (finding.settledBy) return { kind: 'measure', what: finding.settledBy };
  const seats = finding.seat === null ? fit.seats.map((_, i) => i) : [finding.seat];
  const moves = seats.flatMap((seat) =>
    freeCoordinates(fit.seats[seat]!)
      .map((coordinate) => moveAlong(search, seat, coordinate))
      .filter((move): move is Move => move !== null),
  );
  moves.sort((a, b) => Number(b.clean) - Number(a.clean) || trouble(a) - trouble(b));
  return moves[0] ?? { kind: 'none', locked: seats.flatMap((seat) => fit.seats[seat]!.locks) };
}

/** Findings that are cleared by a choice, not by a move. */
const CHOICES = ['strapReleases', 'floorNonSlip', 'padBraced', 'kneelsOnSide'] as const;

function choiceFor({ quantity, seat }: Finding): Suggestion | null {
  if (seat === null) return null;
  const choice = CHOICES.find((c) => c === quantity);
  return choice ? { kind: 'choose', seat, choice } : null;
}

/** Size of a move in steps of trouble. */
function trouble(move: Move): number {
  return Math.abs(move.to - move.from) / COORDINATES[move.coordinate].moveUnit;
}

function moveAlong(search: Search, seat: number, coordinate: FittingCoordinate): Move | null {
  const { fit, report, evaluator } = search;
  const from = coordinateOf(fit.seats[seat]!, coordinate);
  const rule = COORDINATES[coordinate];
  const excess = (by: number) =>
    excessOf(search, evaluator.evaluateHolding(withCoordinate(fit, { seat, coordinate }, from + by), report));
  const by = leastMove(excess, rule);
  if (by === null) return null;
  const to = roundedOutward(from, by, holePitch(fit, coordinate) ?? rule.snapStep);
  const { least, most } = endsOf(fit, coordinate);
  if (to < Math.min(least, from) || to > Math.max(most, from)) return null;
  const after = evaluator.evaluateHolding(withCoordinate(fit, { seat, coordinate }, to), report);
  if (excessOf(search, after) > 0 || Math.abs(to - from) > rule.longestMove) return null;
  const sideEffects = sideEffectsOf(report, after, search.finding.id);
  const clean = sideEffects.every(
    (s) => s.severityTo === s.severityFrom || s.severityTo === 'good' || s.severityTo === 'check',
  );
  return { kind: 'move', seat, coordinate, from, to, clean, sideEffects };
}

/** How far the finding's value is from where it should come, in its unit; at most zero when it is there. */
function excessOf({ finding }: Search, report: Report): number {
  const now = report.findings.find((f) => f.id === finding.id);
  if (!now) return Number.POSITIVE_INFINITY;
  const { min, max } = now.band;
  const doubt = DECIDED_SIGMAS * (now.sd ?? 0);
  const room = min !== null && max !== null ? NARROW_BAND_SHARE * (max - min) : doubt;
  return now.distance + Math.min(doubt, room);
}

/** Least signed move that brings `excess` to zero or below: secant steps kept inside a bracket; null if none within the longest move. */
function leastMove(
  excess: (by: number) => number,
  { longestMove, snapStep }: Pick<Coordinate, 'longestMove' | 'snapStep'>,
): number | null {
  const start = excess(0);
  if (start <= 0 || !Number.isFinite(start)) return null;
  const probe = 4 * snapStep;
  const slope = (excess(probe) - excess(-probe)) / (2 * probe);
  if (Math.abs(slope) * longestMove < start / 20) return null;
  const direction = slope > 0 ? -1 : 1;
  let near = 0;
  let nearExcess = start;
  let far = Math.min(longestMove, (1.05 * start) / Math.abs(slope));
  let farExcess = excess(direction * far);
  while (farExcess > 0 && far < longestMove) {
    near = far;
    nearExcess = farExcess;
    far = Math.min(longestMove, far * 1.6);
    farExcess = excess(direction * far);
  }
  if (farExcess > 0) return null;
  for (let i = 0; i < MOST_STEPS && far - near > SNAP_SHARE * snapStep; i++) {
    const at = near + ((far - near) * nearExcess) / (nearExcess - farExcess);
    const inside = Math.min(Math.max(at, near + 0.1 * (far - near)), far - 0.1 * (far - near));
    const value = excess(direction * inside);
    if (value > 0) [near, nearExcess] = [inside, value];
    else [far, farExcess] = [inside, value];
  }
  return direction * far;
}

/** The first multiple of `step` at or beyond from + by, seen from `from`. */
function roundedOutward(from: number, by: number, step: number): number {
  const steps = (from + by) / step;
  const whole = by > 0 ? Math.ceil(steps - 1e-9) : Math.floor(steps + 1e-9);
  return Number((whole * step).toFixed(6));
}
