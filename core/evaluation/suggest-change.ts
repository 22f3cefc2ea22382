import { COORDINATES, type FittingCoordinate } from '../document/coordinates.ts';
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
import type { JudgedValues } from './judged-values.ts';
import { DECIDED_SIGMAS, distanceToBand } from './probability.ts';
import type { Report } from './report.ts';
import { sideEffectsOf } from './side-effects.ts';

/** Where a band is narrower than the value's own doubt, a change aims this share of the band inside its edge. */
const NARROW_BAND_SHARE = 0.25;

/** Secant and bisection steps along one coordinate; the answer is then rounded to the coordinate's snap step. */
const MOST_STEPS = 10;

/** Moves smaller than this share of a snap step do not matter. */
const SNAP_SHARE = 0.25;

/** A suggestion to move a fitting. */
type Move = Extract<Suggestion, { kind: 'move' }>;

/** Input of the search for one finding. */
interface Search {
  readonly evaluator: Evaluator;
  readonly fit: Fit;
  readonly report: Report;
  readonly finding: Finding;
  /** Values at places asked for before: searches for several findings of one fit share them. */
  readonly known?: KnownValues;
}

/** Judged values of one fit with one coordinate moved, by seat, coordinate and move. */
export type KnownValues = Map<string, JudgedValues>;

/** A coordinate of a seat, and how the finding's value responds to it. */
interface Direction extends Along {
  /** Change of the excess for each unit of the coordinate. */
  readonly slope: number;
  /** Length of the move by the slope alone, in units of cost. */
  readonly foretold: number;
}

/** A coordinate of a seat. */
interface Along {
  /** Index of the seat, bow first. */
  readonly seat: number;
  readonly coordinate: FittingCoordinate;
}

/**
 * The smallest single move of a fitting that brings a finding's value inside its band by its own uncertainty, found
 * by solving along every free coordinate; moves are compared in units of `moveUnit`. A move that brings no new
 * *change* or *stop* is preferred to a smaller one that does. `kind: 'none'` when no single move clears it. Coordinates are
 * tried in the order in which they promise to be short, none farther than the best clean move so far.
 */
export function suggestChange(given: Search): Suggestion {
  const { finding, fit } = given;
  const choice = choiceFor(finding);
  if (choice) return choice;
  if (finding.settledBy) return { kind: 'measure', what: finding.settledBy };
  const search = { ...given, known: given.known ?? new Map() };
  const seats = finding.seat === null ? fit.seats.map((_, i) => i) : [finding.seat];
  const directions = seats.flatMap((seat) =>
    freeCoordinates(fit.seats[seat]!).flatMap(
      (coordinate) => directionAlong(search, { seat, coordinate }) ?? [],
    ),
  );
  let best: Move | null = null;
  for (const direction of directions.toSorted((a, b) => a.foretold - b.foretold)) {
    const move = moveAlong(search, direction, best?.clean ? moveCost(best) : Number.POSITIVE_INFINITY);
    if (move && (!best || isBetter(move, best))) best = move;
  }
  return best ?? { kind: 'none', locked: seats.flatMap((seat) => fit.seats[seat]!.locks) };
}

/** A clean move comes first, then the smaller one. */
function isBetter(a: Move, b: Move): boolean {
  return (Number(b.clean) - Number(a.clean) || moveCost(a) - moveCost(b)) < 0;
}

/** Findings that are cleared by a choice, not by a move. */
const CHOICES = ['strapReleases', 'floorNonSlip', 'padBraced', 'kneelsOnSide'] as const;

/** What is chosen instead of moved, such as a strap that releases; null for everything else. */
function choiceFor({ quantity, seat }: Finding): Suggestion | null {
  if (seat === null) return null;
  const choice = CHOICES.find((c) => c === quantity);
  return choice ? { kind: 'choose', seat, choice } : null;
}

/** Size of a move in units of cost. */
function moveCost(move: Move): number {
  return Math.abs(move.to - move.from) / COORDINATES[move.coordinate].moveUnit;
}

/** How the finding responds to a coordinate; null where its longest move hardly changes it. */
function directionAlong(search: Search, along: Along): Direction | null {
  const { snapStep, longestMove, moveUnit } = COORDINATES[along.coordinate];
  const start = excessAt(search, along, 0);
  if (start <= 0 || !Number.isFinite(start)) return null;
  const probe = 4 * snapStep;
  const slope = (excessAt(search, along, probe) - excessAt(search, along, -probe)) / (2 * probe);
  if (Math.abs(slope) * longestMove < start / 20) return null;
  return { ...along, slope, foretold: start / Math.abs(slope) / moveUnit };
}

/** The least move along one coordinate that clears the finding; null where none does within its rule. */
function moveAlong(search: Search, direction: Direction, most: number): Move | null {
  const { fit, report, evaluator, finding } = search;
  const { seat, coordinate } = direction;
  const from = coordinateOf(fit.seats[seat]!, coordinate);
  const rule = COORDINATES[coordinate];
  const longest = Math.min(rule.longestMove, most * rule.moveUnit);
  const by = leastMove((move) => excessAt(search, direction, move), {
    slope: direction.slope,
    longest,
    step: rule.snapStep,
  });
  if (by === null) return null;
  const to = roundedOutward(from, by, holePitch(fit, coordinate) ?? rule.snapStep);
  const { least, most: end } = endsOf(fit, coordinate);
  if (to < Math.min(least, from) || to > Math.max(end, from)) return null;
  const after = evaluator.evaluateHolding(withCoordinate(fit, { seat, coordinate }, to), report);
  const now = after.findings.find((f) => f.id === finding.id);
  if (!now || pastEdge(now, now.distance) > 0 || Math.abs(to - from) > rule.longestMove) return null;
  const sideEffects = sideEffectsOf(report, after, finding.id);
  const clean = sideEffects.every(
    (s) => s.severityTo === s.severityFrom || s.severityTo === 'good' || s.severityTo === 'check',
  );
  return { kind: 'move', seat, coordinate, from, to, clean, sideEffects };
}

/** How far the finding's value is from where it should come after a move, in its unit; at most zero when it is there. */
function excessAt(search: Search, { seat, coordinate }: Along, by: number): number {
  const { evaluator, fit, report, finding, known } = search;
  const key = `${seat} ${by === 0 ? '' : coordinate} ${by}`;
  const to = coordinateOf(fit.seats[seat]!, coordinate) + by;
  const values =
    known?.get(key) ?? evaluator.judgedHolding(withCoordinate(fit, { seat, coordinate }, to), report);
  known?.set(key, values);
  const value = values.get(finding.id);
  return value === undefined
    ? Number.POSITIVE_INFINITY
    : pastEdge(finding, distanceToBand(value, finding.band));
}

/** A distance to a band's edge, plus the doubt by which a value should be inside. */
function pastEdge({ band: { min, max }, sd }: Pick<Finding, 'band' | 'sd'>, distance: number): number {
  const doubt = DECIDED_SIGMAS * (sd ?? 0);
  const room = min !== null && max !== null ? NARROW_BAND_SHARE * (max - min) : doubt;
  return distance + Math.min(doubt, room);
}

/** Least signed move that brings `excess` to zero or below: secant steps kept inside a bracket; null if none within the longest move. */
function leastMove(
  excess: (by: number) => number,
  { slope, longest, step }: { slope: number; longest: number; step: number },
): number | null {
  const start = excess(0);
  const direction = slope > 0 ? -1 : 1;
  let near = 0;
  let nearExcess = start;
  let far = Math.min(longest, (1.05 * start) / Math.abs(slope));
  let farExcess = excess(direction * far);
  while (farExcess > 0 && far < longest) {
    near = far;
    nearExcess = farExcess;
    far = Math.min(longest, far * 1.6);
    farExcess = excess(direction * far);
  }
  if (farExcess > 0) return null;
  for (let i = 0; i < MOST_STEPS && far - near > SNAP_SHARE * step; i++) {
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
