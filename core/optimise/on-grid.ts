import { COORDINATES } from '../document/coordinates.ts';
import { endsOf, holePitch } from '../document/fitting-coordinate.ts';
import type { Edges } from './edges.ts';
import { failing, type LeastMoves, leastMoves } from './least-moves.ts';
import { type Box, conditionsAt, type Linear, meritOf } from './linear-model.ts';
import { carriedSlopes, type Point, pointAt, type Search, startOf } from './moves.ts';

/** A coordinate stays where it is if that costs at most this much more, in units of moves: fewer fittings to move. */
const ONE_SCREW = 0.15;

/** Holes and grid lines within this distance count as met. */
const SLACK = 1e-6;

/** Times that moves are brought onto the grid before the best is taken. */
const MOST_TRIES = 3;

/**
 * Moves brought to whole millimetres, half degrees and holes: as few coordinates as possible, each set in turn to the cheaper
 * grid line beside it while the others are solved again. The result is verified and, where a value left its edges, done again
 * with corrected slopes. Last, moves that nothing needs are undone.
 */
export function settledOnGrid(
  search: Search,
  edges: readonly Edges[],
  { linear, box }: { linear: Linear; box: Box },
): Linear {
  let { here, slopes } = linear;
  let best: Point | null = null;
  for (let i = 0; i < MOST_TRIES; i++) {
    const x = dived(search, edges, { linear: { here, slopes }, box });
    const there = pointAt(search, x, here);
    slopes = carriedSlopes(slopes, here, there);
    const better = best === null || meritOf(edges, there) < meritOf(edges, best) - SLACK;
    if (better) best = there;
    if (!better) break;
    here = there;
  }
  return { here: withoutIdle(search, edges, best ?? here), slopes };
}

/** The moves on the grid, by linear programs alone. */
function dived(
  search: Search,
  edges: readonly Edges[],
  { linear, box }: { linear: Linear; box: Box },
): readonly number[] {
  const whole = failing(conditionsAt(edges, linear), box);
  const begun = leastMoves(whole, box);
  const moving = begun.x.flatMap((d, i) => (d === 0 ? [] : [i]));
  const of = (all: readonly number[]) => moving.map((i) => all[i]!);
  const low = of(box.low);
  const high = of(box.high);
  const conditions = failing(
    whole.map(({ slopes, ...rest }) => ({ ...rest, slopes: of(slopes) })),
    { low, high },
  );
  const fix = (i: number, to: number) => {
    low[i] = to;
    high[i] = to;
  };
  const solved = (i: number, to: number) => {
    const [l, h] = [low[i]!, high[i]!];
    fix(i, to);
    const answer = leastMoves(conditions, { low, high });
    low[i] = l;
    high[i] = h;
    return answer;
  };
  const cost = ({ size, missing }: LeastMoves) => size + missing;
  let now: LeastMoves = { ...begun, x: of(begun.x) };
  for (const i of smallestFirst(now.x)) {
    const without = solved(i, 0);
    if (cost(without) > cost(now) + ONE_SCREW) continue;
    fix(i, 0);
    now = without;
  }
  const order = smallestFirst(now.x).reverse();
  const drilled = (i: number) => holePitch(search.fit, search.places[moving[i]!]!.coordinate) !== null;
  for (const i of [...order.filter(drilled), ...order.filter((k) => !drilled(k))]) {
    const tried = gridBeside(search, moving[i]!, now.x[i]!).map((to) => ({ to, answer: solved(i, to) }));
    const least = tried.reduce((a, b) => (cost(b.answer) < cost(a.answer) - SLACK ? b : a));
    fix(i, least.to);
    now = least.answer;
  }
  const x = begun.x.map(() => 0);
  moving.forEach((i, k) => {
    x[i] = now.x[k]!;
  });
  return x;
}

/** Places of the moves that are not 0, the smallest move first: it is the likeliest to be left out. */
function smallestFirst(x: readonly number[]): number[] {
  return x.flatMap((d, i) => (d === 0 ? [] : [i])).sort((a, b) => Math.abs(x[a]!) - Math.abs(x[b]!));
}

/** The moves to the grid lines (millimetres, half degrees, holes) on either side of a move, those past its ends left out. */
export function gridBeside(search: Search, i: number, x: number): number[] {
  const place = search.places[i]!;
  const { moveUnit, snapStep } = COORDINATES[place.coordinate];
  const step = holePitch(search.fit, place.coordinate) ?? snapStep;
  const from = startOf(search, place);
  const at = (from + x * moveUnit) / step;
  const { least, most } = endsOf(search.fit, place.coordinate);
  const lines = [...new Set([Math.floor(at + SLACK), Math.ceil(at - SLACK)])];
  const within = lines.filter(
    (k) => k * step >= Math.min(least, from) - SLACK && k * step <= Math.max(most, from) + SLACK,
  );
  return within.length > 0 ? within.map((k) => (k * step - from) / moveUnit) : [0];
}

/** Puts back, the smallest first, each move without which nothing falls out of its edges. */
function withoutIdle(search: Search, edges: readonly Edges[], from: Point): Point {
  let here = from;
  for (const i of smallestFirst(from.x)) {
    const without = pointAt(
      search,
      here.x.map((d, k) => (k === i ? 0 : d)),
      here,
    );
    if (meritOf(edges, without) <= meritOf(edges, here)) here = without;
  }
  return here;
}
