import { directionsFor, type FlatOval, hullRing, turn } from './oval.ts';
import type { Line } from './shape.ts';

/**
 * The outline round a chain of ovals of which each two neighbours are joined by their tight hull: one ring along the right
 * side, round the end and back along the left, counter-clockwise. Null where the chain is seen so much end on that the ring
 * could cross itself; its neighbours' hulls are then the outline (`chainRings`).
 */
export function chainRing(ovals: readonly FlatOval[], directions: number): Line | null {
  const ways = waysOf(ovals);
  if (!ways || !standApart(ovals, ways)) return null;
  const last = ovals.length - 1;
  const caps = [capOf(ovals[0]!, directions), capOf(ovals[last]!, directions)] as const;
  const ring = new Array<number>(4 * ovals.length + 2 * (caps[0] + caps[1]));
  let at = 0;
  const put = (oval: FlatOval, u: number, v: number) => {
    const { x, y, xx, xy, yy } = oval;
    const reach = Math.sqrt(xx * u * u + 2 * xy * u * v + yy * v * v + LEAST);
    ring[at++] = x + (xx * u + xy * v) / reach;
    ring[at++] = y + (xy * u + yy * v) / reach;
  };
  /** Round an end, from the one side over `way` to the other. */
  const round = (oval: FlatOval, cap: number, [wx, wy]: readonly [number, number]) => {
    const { cos, sin } = turn(2 * (cap + 1));
    for (let k = 1; k <= cap; k++) {
      // A quarter turn to the right of the way, and on from there.
      const u = sin[k]!;
      const v = -cos[k]!;
      put(oval, wx * u - wy * v, wy * u + wx * v);
    }
  };
  for (let k = 0; k <= last; k++) put(ovals[k]!, ways[2 * k + 1]!, -ways[2 * k]!);
  round(ovals[last]!, caps[1], [ways[2 * last]!, ways[2 * last + 1]!]);
  for (let k = last; k >= 0; k--) put(ovals[k]!, -ways[2 * k + 1]!, ways[2 * k]!);
  round(ovals[0]!, caps[0], [-ways[0]!, -ways[1]!]);
  return goesOn(ring, ways, { count: ovals.length, cap: caps[1] }) ? ring : null;
}

/** How many points round an end: half as many as all round it, without the two at its sides. */
function capOf(oval: FlatOval, directions: number): number {
  return directionsFor([oval], directions) / 2 - 1;
}

/** The same as one ring where that can be, else as the hulls of neighbours. */
export function chainRings(ovals: readonly FlatOval[], directions: number): Line[] {
  const whole = ovals.length > 2 ? chainRing(ovals, directions) : null;
  return whole ? [whole] : ovals.slice(1).map((oval, k) => hullRing([ovals[k]!, oval], directions));
}

/** Keeps a square root and a quotient finite where an oval shrinks to a point, m². */
const LEAST = 1e-12;
/** Middles nearer to each other than this have no way from one to the next, metres. */
const SHORT = 1e-4;

/** The way along the chain at each oval, as unit vectors x, y, x, y …; null where two middles coincide. */
function waysOf(ovals: readonly FlatOval[]): number[] | null {
  const ways = new Array<number>(2 * ovals.length);
  for (let k = 0; k < ovals.length; k++) {
    const from = ovals[Math.max(0, k - 1)]!;
    const to = ovals[Math.min(ovals.length - 1, k + 1)]!;
    const x = to.x - from.x;
    const y = to.y - from.y;
    const length = Math.sqrt(x * x + y * y);
    if (length < SHORT) return null;
    ways[2 * k] = x / length;
    ways[2 * k + 1] = y / length;
  }
  return ways;
}

/** An oval may grow along the chain by this much more than the way to it: a ball at the end of a limb does. */
const GROWTH = 0.6;

/** How far an oval reaches from its middle in a direction, metres. */
function reachIn({ xx, xy, yy }: FlatOval, u: number, v: number): number {
  return Math.sqrt(Math.max(0, xx * u * u + 2 * xy * u * v + yy * v * v));
}

/** Whether no oval of a chain swallows its neighbour, as they do where the chain is seen end on. */
function standApart(ovals: readonly FlatOval[], ways: readonly number[]): boolean {
  for (let k = 0; k + 1 < ovals.length; k++) {
    const a = ovals[k]!;
    const b = ovals[k + 1]!;
    const u = ways[2 * k]!;
    const v = ways[2 * k + 1]!;
    const growth = Math.abs(reachIn(b, u, v) - reachIn(a, u, v));
    if ((b.x - a.x) * u + (b.y - a.y) * v < GROWTH * growth) return false;
  }
  return true;
}

/** Whether both sides of a ring go on along the chain from each oval to the next. */
function goesOn(
  ring: Line,
  ways: readonly number[],
  { count, cap }: { count: number; cap: number },
): boolean {
  const left = 2 * (2 * count + cap - 1);
  for (let k = 0; k < 2 * (count - 1); k += 2) {
    const wx = ways[k]! + ways[k + 2]!;
    const wy = ways[k + 1]! + ways[k + 3]!;
    if ((ring[k + 2]! - ring[k]!) * wx + (ring[k + 3]! - ring[k + 1]!) * wy <= 0) return false;
    const back = left - k;
    if ((ring[back - 2]! - ring[back]!) * wx + (ring[back - 1]! - ring[back + 1]!) * wy <= 0) return false;
  }
  return true;
}
