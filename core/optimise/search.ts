import { COORDINATES } from '../document/coordinates.ts';
import type { Fit } from '../document/fit-schema.ts';
import { coordinateOf, endsOf, withCoordinate } from '../document/fitting-coordinate.ts';
import type { Evaluator } from '../evaluation/evaluator.ts';
import type { Report } from '../evaluation/report.ts';
import { type Aim, aimOf, placeable, totalViolation } from './objective.ts';
import { oneSidedStep } from './one-sided-step.ts';
import type { CoordinatePlace } from './sensitivity.ts';

/** Weight of a move of one `scale` (1 cm, 3°) against one unit of trouble: small, so that findings come first. */
const MOVE_WEIGHT = 0.02;

/** Steps of a search; it ends earlier when nothing improves. */
const MOST_STEPS = 40;

/** Times that a search to the end measures slopes: one measuring costs an evaluation for each coordinate. */
const MOST_MEASURED = 3;

/** A search that lowers the cost by less than this share from one measuring of the slopes to the next has ended. */
const ENOUGH_SHARE = 0.02;

/** A step that lowers the cost by more than this share may be followed by a longer one. */
const GOOD_SHARE = 0.02;

/** A step that brings less is followed by one shorter by this factor. */
const SHRINK = 3;

/** Steps shorter than this, in scales, bring nothing: half a millimetre, 0.15°. */
const LEAST_REACH = 0.05;

/** Longest step on slopes measured anew, in scales. */
const RESTART_REACH = 2;

/** Step of the differences, in units of a coordinate's scale: 1 mm, 0.3°. */
const PROBE = 0.1;

/** Proposals keep every coordinate within this many scales of where it was: 25 cm, 75°. */
const FARTHEST = 25;

/** No step is longer than this in any coordinate, in scales: 8 cm, 24°; slopes hold no farther. */
const LONGEST_STEP = 8;

/** What is searched: the coordinates that may move, from a fit whose report (with its spreads) is held. */
export interface Search {
  readonly evaluator: Evaluator;
  readonly fit: Fit;
  readonly held: Report;
  readonly places: readonly CoordinatePlace[];
}

/** A point of the search: moves in units of each coordinate's scale, the fit there and its report with held spreads. */
export interface Found {
  readonly x: readonly number[];
  readonly fit: Fit;
  readonly report: Report;
  readonly cost: number;
}

/** Change of each judged value (SI) per scale of each coordinate, in the order of the places, by the finding's id. */
export type Slopes = ReadonlyMap<string, readonly number[]>;

/** Where a search starts: moves (none unless given) and slopes known from a search near by; `near` saves the last measuring. */
export interface SearchStart {
  readonly x?: readonly number[];
  readonly slopes?: Slopes;
  readonly near?: true;
}

/**
 * The point with the coordinates moved by `x` scales from the search's fit: one evaluation with the held doubts. A scale is 1 cm or
 * 3°, so that moves of wood and of turns weigh alike.
 */
export function pointAt(search: Search, x: readonly number[]): Found {
  const moved = x.reduce(
    (now, scales, index) => (scales ? withMove(search, now, { index, scales }) : now),
    search.fit,
  );
  const report = search.evaluator.evaluateHolding(moved, search.held);
  return { x, fit: moved, report, cost: costOf(report, x) };
}

/** A fit with one coordinate set to so many scales from where the search's fit has it. */
function withMove(
  { fit, places }: Search,
  now: Fit,
  { index, scales }: { index: number; scales: number },
): Fit {
  const place = places[index]!;
  const from = coordinateOf(fit.seats[place.seat]!, place.coordinate);
  return withCoordinate(now, place, from + scales * COORDINATES[place.coordinate].moveUnit);
}

/** What a search brings down: the squared troubles, and a little for every move. */
export function costOf(report: Report, x: readonly number[]): number {
  return totalViolation(report) + MOVE_WEIGHT ** 2 * x.reduce((sum, d) => sum + d * d, 0);
}

/**
 * The least trouble for the least moves, from `start` (no moves unless given). Every judged value is linearised and the
 * one-sided least-squares problem of its bands solved within a box around the point, which grows with steps that keep
 * what they foretell and shrinks with those that do not. Slopes are measured, carried on by Broyden's rank-one update
 * (1965), and measured again when carried ones bring no more, unless the search is only to come near. Deterministic.
 */
export function searchMoves(search: Search, start: SearchStart = {}): Found & { readonly slopes: Slopes } {
  const most = start.near ? 1 : MOST_MEASURED;
  let here = pointAt(search, start.x ?? search.places.map(() => 0));
  let slopes = start.slopes ?? measuredSlopes(search, here);
  let measured = start.slopes ? 0 : 1;
  let reach = start.slopes ? RESTART_REACH : LONGEST_STEP;
  let costThen = Number.POSITIVE_INFINITY;
  for (let i = 0; i < MOST_STEPS && totalViolation(here.report) > 0; i++) {
    const step = stepWithin(search, { here, slopes }, reach);
    const there = pointAt(search, plus(here.x, step));
    slopes = carried(slopes, here, there);
    const gain = (here.cost - there.cost) / here.cost;
    const longest = Math.max(...step.map(Math.abs));
    reach = gain > GOOD_SHARE ? Math.min(LONGEST_STEP, Math.max(reach, 2 * longest)) : longest / SHRINK;
    if (gain > 0) here = there;
    if (reach > LEAST_REACH) continue;
    if (measured >= most || here.cost > (1 - ENOUGH_SHARE) * costThen) break;
    slopes = measuredSlopes(search, here);
    measured++;
    costThen = here.cost;
    reach = RESTART_REACH;
  }
  return { ...here, slopes };
}

function plus(x: readonly number[], step: readonly number[]): number[] {
  return x.map((d, i) => d + step[i]!);
}

function valuesOf(report: Report): Map<string, number> {
  return new Map(placeable(report.findings).map((f) => [f.id, f.value]));
}

/** Forward differences: half the work of central ones, and a step that fails on them is shortened. */
function measuredSlopes(search: Search, here: Found): Slopes {
  const before = valuesOf(here.report);
  const columns = here.x.map((_, index) => {
    const by = here.x[index]! > 0 ? -PROBE : PROBE;
    // One seat moves and the others stay the same objects, which the evaluator knows.
    const moved = withMove(search, here.fit, { index, scales: here.x[index]! + by });
    const after = valuesOf(search.evaluator.evaluateHolding(moved, search.held));
    return new Map([...before].map(([id, value]) => [id, ((after.get(id) ?? value) - value) / by]));
  });
  return new Map([...before.keys()].map((id) => [id, columns.map((column) => column.get(id)!)]));
}

/** Broyden's update: the least change of the slopes that agrees with the step just taken. */
function carried(slopes: Slopes, from: Found, to: Found): Slopes {
  const step = to.x.map((d, i) => d - from.x[i]!);
  const square = step.reduce((sum, d) => sum + d * d, 0);
  const [before, after] = [valuesOf(from.report), valuesOf(to.report)];
  return new Map(
    [...slopes].map(([id, row]) => {
      const foretold = row.reduce((sum, slope, i) => sum + slope * step[i]!, 0);
      const missed = (after.get(id) ?? 0) - (before.get(id) ?? 0) - foretold;
      return [id, square > 0 ? row.map((slope, i) => slope + (missed * step[i]!) / square) : row];
    }),
  );
}

/** The linearised problem's step, none of its moves longer than `reach` scales. */
function stepWithin(
  search: Search,
  { here, slopes }: { here: Found; slopes: Slopes },
  reach: number,
): number[] {
  const aims = placeable(here.report.findings).map(aimOf);
  const rows = aims.flatMap((aim) => rowsOf(aim, slopes.get(aim.id) ?? here.x.map(() => 0)));
  return oneSidedStep(
    {
      residuals: rows.map((row) => row.residual),
      jacobian: rows.map((row) => row.slopes),
      at: here.x,
      weight: MOVE_WEIGHT,
    },
    limitsAt(search, here.x, reach),
  );
}

/** One row for each edge that a value should keep, in units of trouble: positive is trouble. */
function rowsOf({ value, unit, edges }: Aim, slopes: readonly number[]) {
  const rows: { residual: number; slopes: number[] }[] = [];
  for (const { low, high, weight } of edges) {
    const by = weight / unit;
    if (low !== null) rows.push({ residual: (low - value) * by, slopes: slopes.map((s) => -s * by) });
    if (high !== null) rows.push({ residual: (value - high) * by, slopes: slopes.map((s) => s * by) });
  }
  return rows;
}

/** How far each coordinate may still go: to its ends (or where it stood beyond them), and no longer than the step. */
function limitsAt({ fit, places }: Search, x: readonly number[], reach: number) {
  const ends = places.map(({ seat, coordinate }) => {
    const { moveUnit: scale } = COORDINATES[coordinate];
    const { least, most } = endsOf(fit, coordinate);
    const from = coordinateOf(fit.seats[seat]!, coordinate);
    return [Math.min(0, (least - from) / scale), Math.max(0, (most - from) / scale)] as const;
  });
  return {
    low: ends.map(([low], i) => Math.min(0, Math.max(-reach, Math.max(low, -FARTHEST) - x[i]!))),
    high: ends.map(([, high], i) => Math.max(0, Math.min(reach, Math.min(high, FARTHEST) - x[i]!))),
  };
}
