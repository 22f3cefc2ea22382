import { COORDINATES } from '../document/coordinates.ts';
import type { Fit } from '../document/fit-schema.ts';
import { coordinateOf, endsOf, withCoordinate } from '../document/fitting-coordinate.ts';
import type { Evaluator } from '../evaluation/evaluator.ts';
import type { Report } from '../evaluation/report.ts';
import type { CoordinatePlace } from './sensitivity.ts';

/** What is searched: the coordinates that may move, from a fit, with the spreads of a report that are held. */
export interface Search {
  readonly evaluator: Evaluator;
  readonly fit: Fit;
  readonly held: Report;
  readonly places: readonly CoordinatePlace[];
}

/** A point of the search: moves in each coordinate's unit of moves, the fit there and its judged values. */
export interface Point {
  /** One move for each free coordinate; zeros are the fit as given. */
  readonly x: readonly number[];
  readonly fit: Fit;
  readonly values: ReadonlyMap<string, number>;
}

/** Change of each judged value (SI) for one unit of moves of each coordinate, by the finding's id. */
export type Slopes = ReadonlyMap<string, readonly number[]>;

/**
 * Steps of the differences, in units of moves: 1 mm and 0.3° near an answer; 1 cm and 3° where a search begins, because values
 * that are the least of several (the support margin) are not linear: their slope at the start does not show the effect of a
 * long move.
 */
export const PROBE = { fine: 0.1, coarse: 1 } as const;

/** No coordinate goes farther than this from where it was, in units of moves: 25 cm, 75°. */
const FARTHEST = 25;

/** Where a coordinate stands in the search's fit. */
export function startOf({ fit }: Pick<Search, 'fit'>, { seat, coordinate }: CoordinatePlace): number {
  return coordinateOf(fit.seats[seat]!, coordinate);
}

/**
 * The fit with the coordinates moved by `x` units (1 cm, 3°); without moves it is the same object. Seats that are as at a point
 * `near` are the same objects as there, so that the evaluator's caches serve.
 */
export function fitAt(
  search: Pick<Search, 'fit' | 'places'>,
  x: readonly number[],
  near?: Pick<Point, 'fit' | 'x'>,
): Fit {
  const moved = search.places.reduce((now, place, i) => {
    if (!x[i]) return now;
    const to = startOf(search, place) + x[i] * COORDINATES[place.coordinate].moveUnit;
    return withCoordinate(now, place, Number(to.toFixed(6)));
  }, search.fit);
  if (!near) return moved;
  const others = new Set(search.places.flatMap(({ seat }, i) => (x[i] === near.x[i] ? [] : [seat])));
  return { ...moved, seats: moved.seats.map((seat, i) => (others.has(i) ? seat : near.fit.seats[i]!)) };
}

/** The point after moves `x`: one evaluation with the held doubts. */
export function pointAt(search: Search, x: readonly number[], near?: Point): Point {
  const fit = fitAt(search, x, near);
  return { x, fit, values: search.evaluator.judgedHolding(fit, search.held) };
}

/** Slopes at a point by forward differences over `probe` units of moves: one evaluation for each coordinate. */
export function judgedSlopes({ evaluator, held, places }: Search, here: Point, probe: number): Slopes {
  const columns = places.map((place, i) => {
    const { moveUnit } = COORDINATES[place.coordinate];
    const by = here.x[i]! > 0 ? -probe : probe;
    const at = coordinateOf(here.fit.seats[place.seat]!, place.coordinate);
    // One seat moves; the others stay the same objects, so that the evaluator's caches serve.
    const after = evaluator.judgedHolding(withCoordinate(here.fit, place, at + by * moveUnit), held);
    return new Map([...here.values].map(([id, value]) => [id, ((after.get(id) ?? value) - value) / by]));
  });
  return new Map([...here.values.keys()].map((id) => [id, columns.map((column) => column.get(id)!)]));
}

/** Broyden's rank-one update (1965): the least change of the slopes that agrees with a step just taken. */
export function carriedSlopes(slopes: Slopes, from: Point, to: Point): Slopes {
  const step = to.x.map((d, i) => d - from.x[i]!);
  const square = step.reduce((sum, d) => sum + d * d, 0);
  if (square === 0) return slopes;
  return new Map(
    [...slopes].map(([id, row]) => {
      const before = from.values.get(id) ?? 0;
      const predicted = row.reduce((sum, slope, i) => sum + slope * step[i]!, 0);
      const missed = (to.values.get(id) ?? before) - before - predicted;
      return [id, row.map((slope, i) => slope + (missed * step[i]!) / square)];
    }),
  );
}

/** How far each coordinate may go: to its ends, or where it stands beyond them. Units of moves. */
export function boxOf(search: Search): { low: number[]; high: number[] } {
  const ends = search.places.map((place) => {
    const { moveUnit } = COORDINATES[place.coordinate];
    const { least, most } = endsOf(search.fit, place.coordinate);
    const from = startOf(search, place);
    return [Math.min(0, (least - from) / moveUnit), Math.max(0, (most - from) / moveUnit)] as const;
  });
  return {
    low: ends.map(([low]) => Math.max(-FARTHEST, low)),
    high: ends.map(([, high]) => Math.min(FARTHEST, high)),
  };
}

/** Sum of |x|: the size of moves. */
export function sizeOf(x: readonly number[]): number {
  return x.reduce((sum, d) => sum + Math.abs(d), 0);
}
