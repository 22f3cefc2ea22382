import type { ViewPoint } from './view.ts';

/**
 * The tight convex ring around points, counter-clockwise (Andrew's monotone chain, 1979). Same unit in and out. Points on
 * an edge are no corners.
 */
export function convexRing(points: readonly ViewPoint[]): ViewPoint[] {
  const sorted = [...points].sort(([ax, ay], [bx, by]) => ax - bx || ay - by);
  const half = (from: readonly ViewPoint[]): ViewPoint[] => {
    const chain: ViewPoint[] = [];
    for (const point of from) {
      while (chain.length > 1 && !turnsLeft(chain.at(-2)!, chain.at(-1)!, point)) chain.pop();
      chain.push(point);
    }
    return chain.slice(0, -1);
  };
  return [...half(sorted), ...half(sorted.reverse())];
}

/** Whether the way from a over b to c turns to the left. */
function turnsLeft(a: ViewPoint, b: ViewPoint, c: ViewPoint): boolean {
  return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]) > 0;
}
