import { costPast, type Edges } from './edges.ts';
import { leastMoves } from './least-moves.ts';
import { type Box, boxAround, conditionsAt, type Linear, meritOf } from './linear-model.ts';
import {
  boxOf,
  carriedSlopes,
  judgedSlopes,
  type Point,
  PROBE,
  pointAt,
  type Search,
  sizeOf,
} from './moves.ts';
import { settledOnGrid } from './on-grid.ts';

/** Linear programs solved for one smallest change at most; 3 to 6 are usual. */
const MOST_PROGRAMS = 10;

/** Farthest that a coordinate moves from where slopes were measured, in units of moves: 6 cm, 18°. */
const LONGEST_STEP = 6;

/** Steps shorter than this are not worth setting, in units of moves: half a millimetre. */
const LEAST_STEP = 0.05;

/** After a step this long, in units of moves, the slopes are measured again: 2 mm, 0.6°. */
const FAR = 0.2;

/** Violation below this is rounding. */
const NOTHING = 1e-6;

/** What a smallest change may take: how often slopes may be measured again, and the coordinates that stay. */
export interface Allowed {
  /** Each costs an evaluation for every free coordinate. */
  readonly measurings: number;
  readonly still?: ReadonlySet<number>;
}

/** The start of every search: no moves, and the slopes there. One evaluation for each coordinate. */
export function beginning(search: Search): Linear {
  const here = pointAt(
    search,
    search.places.map(() => 0),
  );
  return { here, slopes: judgedSlopes(search, here, PROBE.coarse) };
}

/**
 * The moves of least size (1 cm, 3°) that bring every value within its edges, as far as that can be: the values are
 * linearised, the linear program solved within reach of the point, the slopes carried on, and measured again where the answer
 * settles far from where they were taken. The answer has few moves and stands on every coordinate's grid.
 */
export function smallestChange(
  search: Search,
  edges: readonly Edges[],
  { from, measurings, still }: Allowed & { readonly from: Linear },
): Linear {
  if (costPast(edges, from.here.values) <= NOTHING && sizeOf(from.here.x) === 0) return from;
  const box = boxWithout(boxOf(search), still);
  let { here, slopes } = from;
  let measuredAt = here.x;
  let left = measurings;
  let reach = LONGEST_STEP;
  for (let i = 0; i < MOST_PROGRAMS; i++) {
    const { x } = leastMoves(conditionsAt(edges, { here, slopes }), boxAround(box, here.x, reach));
    const step = longest(x, here.x);
    if (step < LEAST_STEP || reach < LEAST_STEP) {
      if (left === 0 || longest(here.x, measuredAt) < FAR) break;
      slopes = judgedSlopes(search, here, PROBE.fine);
      left--;
      measuredAt = here.x;
      reach = LONGEST_STEP / 2;
      continue;
    }
    const there: Point = pointAt(search, x, here);
    slopes = carriedSlopes(slopes, here, there);
    if (meritOf(edges, there) < meritOf(edges, here)) here = there;
    else reach = step / 3;
  }
  return settledOnGrid(search, edges, { linear: { here, slopes }, box });
}

/** The same box with some coordinates held where they are. */
function boxWithout({ low, high }: Box, still: ReadonlySet<number> = new Set()): Box {
  const held = (side: readonly number[]) => side.map((end, i) => (still.has(i) ? 0 : end));
  return { low: held(low), high: held(high) };
}

/** Greatest difference between two points, in units of moves. */
function longest(a: readonly number[], b: readonly number[]): number {
  return a.reduce((most, d, i) => Math.max(most, Math.abs(d - b[i]!)), 0);
}

/** Where a change begins, and what it may take. */
type Way = Allowed & { readonly from: Linear };

/** Moves smaller than this in all are not worth looking for another way, in units of moves. */
const WORTH_ANOTHER_WAY = 1.5;

/** So many of the largest moves are forbidden in turn. */
const OTHER_WAYS = 3;

/** A way that its first linear program makes this many times as dear as the way found (or what that one's said) is not followed. */
const TOO_DEAR = 1.5;

/** From this size on the slopes of small steps are tried too, in units of moves. */
const WORTH_MEASURING = 4;

/**
 * The smallest change, and what it would be with one of its moves forbidden: legs that are nearly straight make values bend, and
 * the first way found is not always the shortest.
 */
export function smallestOfWays(search: Search, edges: readonly Edges[], from: Linear): Linear {
  let best = smallestChange(search, edges, { from, measurings: 2 });
  if (sizeOf(best.here.x) < WORTH_ANOTHER_WAY) return best;
  const moved = best.here.x
    .flatMap((d, i) => (Math.abs(d) >= 1 ? [i] : []))
    .sort((a, b) => Math.abs(best.here.x[b]!) - Math.abs(best.here.x[a]!))
    .slice(0, OTHER_WAYS);
  const ways: Way[] = moved.map((i) => ({
    from,
    measurings: 0,
    still: new Set([i]),
  }));
  const most = TOO_DEAR * Math.max(foretold(search, edges, { from }), meritOf(edges, best.here));
  const worth = ways.filter((way) => foretold(search, edges, way) <= most);
  const fine = () => ({ here: from.here, slopes: judgedSlopes(search, from.here, PROBE.fine) });
  if (sizeOf(best.here.x) > WORTH_MEASURING) worth.push({ from: fine(), measurings: 0 });
  for (const way of worth) {
    const other = smallestChange(search, edges, way);
    if (meritOf(edges, other.here) < meritOf(edges, best.here)) best = other;
  }
  return best;
}

/** The cost that a direction's first linear program predicts for its moves and for what they leave unmet. */
function foretold(search: Search, edges: readonly Edges[], { from, still }: Omit<Way, 'measurings'>): number {
  const box = boxAround(boxWithout(boxOf(search), still), from.here.x, LONGEST_STEP);
  const { size, missing } = leastMoves(conditionsAt(edges, from), box);
  return size + missing;
}
