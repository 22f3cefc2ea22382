import { COORDINATES } from '../document/coordinates.ts';
import type { Fit } from '../document/fit-schema.ts';
import {
  coordinateOf,
  endsOf,
  freeCoordinates,
  holePitch,
  withCoordinate,
} from '../document/fitting-coordinate.ts';
import type { Evaluator } from '../evaluation/evaluator.ts';
import type { Finding, Severity } from '../evaluation/finding.ts';
import type { Report } from '../evaluation/report.ts';
import { seriousCount, totalTrouble } from './objective.ts';
import { pointAt, type Search, type Slopes, searchMoves } from './search.ts';
import type { CoordinatePlace } from './sensitivity.ts';

/** One fitting's move in a proposal, in the coordinate's own unit. */
export interface ProposedMove extends CoordinatePlace {
  readonly from: number;
  readonly to: number;
}

/** Where a first search ended, and the slopes there: what the second one need not measure again. */
interface Near {
  readonly x: readonly number[];
  readonly slopes: Slopes;
}

/** A proposal: the fit with its moves made, and what could not be cleared. */
export interface Proposal {
  readonly fit: Fit;
  readonly report: Report;
  readonly moves: readonly ProposedMove[];
  /** Findings that still say change or stop. */
  readonly uncleared: readonly Finding[];
}

/**
 * The least change from today's setting that clears the findings which placing can clear: bounded least squares over
 * every unlocked fitting coordinate of the named seats (all seats if none are named), then set to the hardware's holes, the
 * rest searched again around them, rounded to each coordinate's grain, and every move that brings nothing taken back. The
 * values' doubts are computed again where the search first ends, for they grow where a leg is nearly straight.
 * Deterministic. Never worse than the fit it was given.
 */
export function propose(evaluator: Evaluator, fit: Fit, seats?: readonly number[]): Proposal {
  const held = evaluator.evaluate(fit);
  const begun: Search = { evaluator, fit, held, places: placesOf(fit, seats) };
  const near = searchMoves(begun, { near: true });
  const search = near.fit === fit ? begun : { ...begun, held: evaluator.evaluate(near.fit) };
  const moved = withoutIdleMoves(search, rounded(search, inHoles(search, near)));
  const proposed = fitAt(search, moved);
  const report = proposed === fit ? held : evaluator.evaluate(proposed);
  if (totalTrouble(report) > totalTrouble(held) && seriousCount(report) >= seriousCount(held)) {
    return { fit, report: held, moves: [], uncleared: serious(held) };
  }
  return { fit: proposed, report, moves: movesBetween(search, proposed), uncleared: serious(report) };
}

function placesOf(fit: Fit, seats?: readonly number[]): CoordinatePlace[] {
  return fit.seats.flatMap((seat, index) =>
    seat.athlete && (seats?.includes(index) ?? true)
      ? freeCoordinates(seat).map((coordinate) => ({ seat: index, coordinate }))
      : [],
  );
}

function serious(report: Report): Finding[] {
  return report.findings.filter((f) => f.severity === 'change' || f.severity === 'stop');
}

const from = ({ fit }: Search, { seat, coordinate }: CoordinatePlace) =>
  coordinateOf(fit.seats[seat]!, coordinate);

/** The fit with the moves made (in scales), every moved value written tidily; a fit without moves is the very same object. */
function fitAt(search: Search, x: readonly number[]): Fit {
  return search.places.reduce((now, place, i) => {
    if (!x[i]) return now;
    const to = from(search, place) + x[i] * COORDINATES[place.coordinate].moveUnit;
    return withCoordinate(now, place, tidy(to));
  }, search.fit);
}

const tidy = (value: number) => Number(value.toFixed(6));

function movesBetween(search: Search, to: Fit): ProposedMove[] {
  return search.places.flatMap((place) => {
    const [was, is] = [from(search, place), coordinateOf(to.seats[place.seat]!, place.coordinate)];
    return is === was ? [] : [{ ...place, from: was, to: is }];
  });
}

/**
 * A value rounded to its grain and brought to an end that it is within a scale past (1 cm, 3°); what stands farther out than
 * that was set there, and is no proposal's doing.
 */
function withinEnds(
  { fit }: Search,
  { coordinate }: CoordinatePlace,
  { at, grain }: { at: number; grain: number },
): number {
  const { least, most } = endsOf(fit, coordinate);
  const { moveUnit: scale } = COORDINATES[coordinate];
  const whole = Math.round(at / grain) * grain;
  if (at < least - scale || at > most + scale) return whole;
  return Math.min(most, Math.max(least, whole));
}

/** Holes this near a coordinate or an end, in holes or metres, are taken to be there: rounding. */
const SLACK = 1e-6;

/**
 * The moves, in scales, that bring a coordinate to the multiples of `step` (metres) on either side of where `x` has it, those
 * past its ends left out.
 */
function neighbours(search: Search, place: CoordinatePlace, x: number, step: number): number[] {
  const { moveUnit: scale } = COORDINATES[place.coordinate];
  const at = (from(search, place) + x * scale) / step;
  const { least, most } = endsOf(search.fit, place.coordinate);
  const around = [...new Set([Math.floor(at + SLACK), Math.ceil(at - SLACK)])];
  const within = around.filter((k) => k * step >= least - SLACK && k * step <= most + SLACK);
  return within.map((k) => (k * step - from(search, place)) / scale);
}

/**
 * Coordinates on drilled rails brought to the better of the two holes beside each, then the others searched to the end
 * with those held.
 */
function inHoles(search: Search, near: Near): readonly number[] {
  const drilled = search.places.map((place) => holePitch(search.fit, place.coordinate));
  let x = [...near.x];
  drilled.forEach((pitch, i) => {
    if (pitch === null) return;
    const tried = neighbours(search, search.places[i]!, x[i]!, pitch).map((to) => replaced(x, i, to));
    x = tried.length > 0 ? best(search, tried) : replaced(x, i, 0);
  });
  const free = search.places.flatMap((_, i) => (drilled[i] === null ? [i] : []));
  const only = (row: readonly number[]) => free.map((i) => row[i]!);
  const held = x.map((d, i) => (drilled[i] === null ? 0 : d));
  const rest: Search = { ...search, fit: fitAt(search, held), places: free.map((i) => search.places[i]!) };
  const slopes = new Map([...near.slopes].map(([id, row]) => [id, only(row)]));
  const found = searchMoves(rest, { x: only(x), slopes });
  free.forEach((i, k) => {
    x[i] = found.x[k]!;
  });
  return x;
}

function replaced(x: readonly number[], index: number, to: number): number[] {
  return x.map((d, i) => (i === index ? to : d));
}

/** The candidate with the least cost; the first of equal ones, so that two runs choose alike. */
function best(search: Search, candidates: readonly number[][]): number[] {
  if (candidates.length === 1) return candidates[0]!;
  const costs = candidates.map((x) => pointAt(search, x).cost);
  return candidates[costs.indexOf(Math.min(...costs))]!;
}

/**
 * Moves rounded to each coordinate's grain (a millimetre, half a degree), because nobody sets wood finer; those on drilled rails
 * stand in holes already, and what moved less than half a grain did not move.
 */
function rounded(search: Search, x: readonly number[]): number[] {
  return x.map((d, i) => {
    const place = search.places[i]!;
    if (d === 0 || holePitch(search.fit, place.coordinate) !== null) return d;
    const { snapStep: grain, moveUnit: scale } = COORDINATES[place.coordinate];
    if (Math.abs(d * scale) < grain / 2) return 0;
    const at = from(search, place);
    const to = withinEnds(search, place, { at: at + d * scale, grain });
    return (to - at) / scale;
  });
}

/** Counts of *stop*, *change* and *check* in one number, the graver first. */
function worryOf({ findings }: Report): number {
  const count = (severity: Severity) => findings.filter((f) => f.severity === severity).length;
  return count('stop') * 1e6 + count('change') * 1e3 + count('check');
}

/** Trouble (squared units) that is not worth one more screw turned, in a whole proposal. */
const IDLE_TROUBLE = 0.03;

/**
 * Takes back, the smallest first, every move without which no finding reads worse and the proposal costs hardly more: least
 * squares spread a cure thinly over all coordinates, and a coach wants to turn as few screws as will do.
 */
function withoutIdleMoves(search: Search, moves: readonly number[]): readonly number[] {
  let x = moves;
  const whole = pointAt(search, x);
  const most = whole.cost + IDLE_TROUBLE;
  let worry = worryOf(whole.report);
  const order = moves
    .flatMap((d, i) => (d === 0 ? [] : [i]))
    .sort((a, b) => Math.abs(moves[a]!) - Math.abs(moves[b]!));
  for (const index of order) {
    const pitch = holePitch(search.fit, search.places[index]!.coordinate);
    if (pitch !== null) continue;
    const without = pointAt(search, replaced(x, index, 0));
    const left = worryOf(without.report);
    if (without.cost > most || left > worry) continue;
    x = without.x;
    worry = left;
  }
  return x;
}
