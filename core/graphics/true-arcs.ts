import type { ViewPoint } from './view.ts';

/** Points of an arc lie on its circle within this, in the drawing's own unit (millimetres of a template): rounding and no more. */
const ON_CIRCLE = 1e-4;
/** Fewer points may lie on one circle by chance: three always do. */
const LEAST_POINTS = 7;
/** Longest arc, radians: the bulge of a full circle would be infinite. */
const MOST_SWEEP = 1.9 * Math.PI;

/** A corner of a line and how its next stretch runs: straight (0), or as an arc, the tangent of a quarter of the angle it turns by. */
export interface ArcCorner {
  /** Place of the corner. */
  readonly at: ViewPoint;
  /** Positive where the arc turns counter-clockwise, as in DXF. */
  readonly bulge: number;
}

/**
 * A line through points with its arcs recognised: where seven points or more lie on one circle, their ends are kept and the
 * stretch between is an arc. All else stays.
 */
export function withTrueArcs(points: readonly ViewPoint[]): ArcCorner[] {
  const corners: ArcCorner[] = [];
  for (let k = 0; k < points.length; ) {
    const arc = arcFrom(points, k);
    corners.push({ at: points[k]!, bulge: arc?.bulge ?? 0 });
    k = arc ? arc.end : k + 1;
  }
  return corners;
}

/** The longest arc that begins at a point; null where there is none. */
function arcFrom(points: readonly ViewPoint[], from: number): { end: number; bulge: number } | null {
  const circle = circleThrough(points[from], points[from + 1], points[from + 2]);
  if (!circle) return null;
  let [end, sweep] = [from, 0];
  for (let k = from + 1; k < points.length; k++) {
    const turn = turnAbout(circle.middle, points[k - 1]!, points[k]!);
    const off = Math.abs(distance(points[k]!, circle.middle) - circle.radius);
    const isOn = off <= ON_CIRCLE && turn * circle.sense > 0 && Math.abs(sweep + turn) <= MOST_SWEEP;
    if (!isOn) break;
    [end, sweep] = [k, sweep + turn];
  }
  return end - from + 1 < LEAST_POINTS ? null : { end, bulge: Math.tan(sweep / 4) };
}

/** The circle through three points and the way round it; null where they lie on a straight line. */
function circleThrough(a?: ViewPoint, b?: ViewPoint, c?: ViewPoint) {
  if (!a || !b || !c) return null;
  const [bx, by, cx, cy] = [b[0] - a[0], b[1] - a[1], c[0] - a[0], c[1] - a[1]];
  const area = 2 * (bx * cy - by * cx);
  if (Math.abs(area) < 1e-9) return null;
  const [bb, cc] = [bx * bx + by * by, cx * cx + cy * cy];
  const [x, y] = [(cy * bb - by * cc) / area, (bx * cc - cx * bb) / area];
  return { middle: [a[0] + x, a[1] + y] as const, radius: Math.hypot(x, y), sense: Math.sign(area) };
}

/** Between two points of the drawing. */
function distance(a: ViewPoint, b: ViewPoint): number {
  return Math.hypot(a[0] - b[0], a[1] - b[1]);
}

/** The angle from one point to another about a middle, radians, counter-clockwise. */
function turnAbout([x, y]: ViewPoint, from: ViewPoint, to: ViewPoint): number {
  const [ax, ay, bx, by] = [from[0] - x, from[1] - y, to[0] - x, to[1] - y];
  return Math.atan2(ax * by - ay * bx, ax * bx + ay * by);
}
