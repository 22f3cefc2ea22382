import type { MillimetrePoint } from './template-drawing.ts';

/**
 * The runs of an open line that lie inside something, cut where it leaves and comes back. `room` is how far a point lies inside,
 * millimetres, negative outside; it changes evenly on both sides of the boat's middle (y = 0). None where the line lies outside.
 */
export function runsInside(
  points: readonly MillimetrePoint[],
  room: (at: MillimetrePoint) => number,
): MillimetrePoint[][] {
  const runs: MillimetrePoint[][] = [[]];
  let before: MillimetrePoint | null = null;
  for (const point of withMiddles(points)) {
    const [from, to] = [before ? room(before) : 0, room(point)];
    if (before && from * to < 0) runs.at(-1)!.push(between(before, point, from / (from - to)));
    if (to >= 0) runs.at(-1)!.push(point);
    else if (runs.at(-1)!.length > 0) runs.push([]);
    before = point;
  }
  return runs.filter(({ length }) => length > 1);
}

/** A line with a point wherever it crosses the boat's middle. */
function withMiddles(points: readonly MillimetrePoint[]): MillimetrePoint[] {
  return points.flatMap((point, k) => {
    const before = points[k - 1];
    if (!before || before[1] * point[1] >= 0) return [point];
    return [between(before, point, before[1] / (before[1] - point[1])), point];
  });
}

function between(a: MillimetrePoint, b: MillimetrePoint, share: number): MillimetrePoint {
  return [a[0] + share * (b[0] - a[0]), a[1] + share * (b[1] - a[1])];
}
