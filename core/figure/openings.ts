import { isInside, type Line, lineThrough } from '../graphics/shape.ts';
import { inView, type ViewName, type ViewPoint } from '../graphics/view.ts';
import type { Opening } from './body-part.ts';

/** Directions round a joint in which a line may be left out. */
const DIRECTIONS = 20;
const COS = Array.from({ length: DIRECTIONS }, (_, k) => Math.cos((2 * Math.PI * k) / DIRECTIONS));
const SIN = Array.from({ length: DIRECTIONS }, (_, k) => Math.sin((2 * Math.PI * k) / DIRECTIONS));
/** Where a piece's own outline may lie about its round end, and how far beyond it a line is left out: shares of the radius. */
const EDGES = [1.06, 1.14, 1.22];
const WITHIN = 0.09;
const BEYOND = 0.3;
/** Nothing is left out farther from the joint than this. */
const FARTHEST = EDGES.at(-1)! + BEYOND;

/** A ring with the box round it, metres: most points lie in few boxes, and need not be looked for in the other rings. */
interface Boxed {
  readonly ring: Line;
  readonly left: number;
  readonly right: number;
  readonly low: number;
  readonly high: number;
}

function boxed(ring: Line): Boxed {
  let [left, right, low, high] = [Infinity, -Infinity, Infinity, -Infinity];
  for (let k = 0; k < ring.length; k += 2) {
    const x = ring[k]!;
    const y = ring[k + 1]!;
    if (x < left) left = x;
    if (x > right) right = x;
    if (y < low) low = y;
    if (y > high) high = y;
  }
  return { ring, left, right, low, high };
}

/** The rings that a square about a point may lie in, at least in part. */
function ringsAbout(rings: readonly Line[], [x, y]: ViewPoint, half: number): Boxed[] {
  return rings
    .map(boxed)
    .filter(
      ({ left, right, low, high }) =>
        left < x + half && right > x - half && low < y + half && high > y - half,
    );
}

function isIn(rings: readonly Boxed[], x: number, y: number): boolean {
  for (const { ring, left, right, low, high } of rings) {
    if (x < left || x > right || y < low || y > high) continue;
    if (isInside(ring, x, y)) return true;
  }
  return false;
}

/**
 * Where the round end of a piece lies on the neighbour that it grows out of: bands round the joint, to be filled with the
 * neighbour's colour, so that no line is left there. `own` and `neighbour` are both outlines, metres in the view.
 */
export function openBands(
  { at, radius }: Opening,
  view: ViewName,
  outlines: { own: readonly Line[]; neighbour: readonly Line[] },
): Line[] {
  const middle = inView(view, at);
  const [x, y] = middle;
  const neighbour = ringsAbout(outlines.neighbour, middle, radius * FARTHEST);
  if (neighbour.length === 0) return [];
  const own = ringsAbout(outlines.own, middle, radius * FARTHEST);
  const isOn = (rings: readonly Boxed[], k: number, share: number) =>
    isIn(rings, x + share * radius * COS[k]!, y + share * radius * SIN[k]!);
  /** Where the piece ends in a direction; 0 where it goes on, or where what lies there is not the neighbour. */
  const edgeIn = (k: number): number => {
    if (!isOn(neighbour, k, 1)) return 0;
    for (const edge of EDGES) {
      if (isOn(own, k, edge)) continue;
      const isOpen =
        isOn(neighbour, k, edge - WITHIN) &&
        isOn(neighbour, k, edge + BEYOND) &&
        !isOn(own, k, edge + BEYOND);
      return isOpen ? edge : 0;
    }
    return 0;
  };
  const edges = COS.map((_, k) => edgeIn(k));
  const point = (k: number, share: number): ViewPoint => [
    x + share * radius * COS[k % DIRECTIONS]!,
    y + share * radius * SIN[k % DIRECTIONS]!,
  ];
  return runs(edges.map((edge) => edge > 0)).map(([first, last]) => {
    const inner: ViewPoint[] = [];
    const outer: ViewPoint[] = [];
    for (let k = first; k <= last; k++) {
      const edge = edges[k % DIRECTIONS]!;
      inner.push(point(k, edge - WITHIN));
      outer.push(point(k, edge + BEYOND));
    }
    return lineThrough([...outer, ...inner.toReversed()]);
  });
}

/** Runs of at least two neighbours that are true in a closed row: first and last, which may count on past the end. */
function runs(row: readonly boolean[]): [number, number][] {
  const count = row.length;
  const start = row.indexOf(false);
  if (start < 0) return [[0, count]];
  const found: [number, number][] = [];
  for (let k = start + 1; k < start + count; k++) {
    if (!row[k % count]) continue;
    const first = k;
    while (k + 1 < start + count && row[(k + 1) % count]) k++;
    if (k > first) found.push([first, k]);
  }
  return found;
}
