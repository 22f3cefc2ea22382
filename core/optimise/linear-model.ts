import { costPast, type Edges } from './edges.ts';
import type { Condition } from './least-moves.ts';
import { type Point, type Slopes, sizeOf } from './moves.ts';

/** A point and the slopes there, measured or updated. */
export interface Linear {
  /** Where the values themselves were computed. */
  readonly here: Point;
  readonly slopes: Slopes;
}

/** How far each coordinate may go, in units of moves. */
export interface Box {
  /** Least value of each move. */
  readonly low: readonly number[];
  /** Greatest value of each move. */
  readonly high: readonly number[];
}

/** What a search minimises: the cost of values past their edges plus the size of the moves. */
export function meritOf(edges: readonly Edges[], { values, x }: Pick<Point, 'values' | 'x'>): number {
  return costPast(edges, values) + sizeOf(x);
}

/** The edges as linear conditions on the moves, about a point. */
export function conditionsAt(edges: readonly Edges[], { here, slopes }: Linear): Condition[] {
  const conditions: Condition[] = [];
  for (const { id, low, high, scale, weight } of edges) {
    const row = slopes.get(id);
    const value = here.values.get(id);
    if (!row || value === undefined) continue;
    const there = row.reduce((sum, slope, i) => sum + slope * here.x[i]!, 0);
    const condition = { slopes: row, scale, weight };
    if (low !== null) conditions.push({ ...condition, sign: 1, least: (low - value + there) / scale });
    if (high !== null) conditions.push({ ...condition, sign: -1, least: (value - high - there) / scale });
  }
  return conditions;
}

/** A box around a point, none of its sides farther than `reach`. */
export function boxAround({ low, high }: Box, x: readonly number[], reach: number): Box {
  return {
    low: low.map((least, i) => Math.min(x[i]!, Math.max(least, x[i]! - reach))),
    high: high.map((most, i) => Math.max(x[i]!, Math.min(most, x[i]! + reach))),
  };
}
