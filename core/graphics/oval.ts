import type { Vec3 } from '../frame/vec3.ts';
import type { Line } from './shape.ts';
import { VIEW_AXES, type ViewName } from './view.ts';

/** An ellipsoid in the boat frame, metres: its centre and its three semi-axes, any of which may be nothing. */
export interface Oval {
  /** Centre, metres. */
  readonly at: Vec3;
  /** Square to each other; each as long as the oval reaches that way. */
  readonly axes: readonly [Vec3, Vec3, Vec3];
}

/** An oval as a view shows it: its centre, and the sums that give how far it reaches in a direction. */
export interface FlatOval {
  /** Centre, to the right of the view, metres. */
  readonly x: number;
  /** Centre, up in the view, metres. */
  readonly y: number;
  /** Sum of the axes' x components squared, m². */
  readonly xx: number;
  /** Sum of the products of x and y components, m². */
  readonly xy: number;
  /** Sum of the axes' y components squared, m². */
  readonly yy: number;
}

/** An oval seen in a view. The outline of an ellipsoid is an ellipse from anywhere. */
export function flatOval({ at, axes }: Oval, view: ViewName): FlatOval {
  const { right, rightSign, up } = VIEW_AXES[view];
  let xx = 0;
  let xy = 0;
  let yy = 0;
  for (const axis of axes) {
    const x = axis[right] * rightSign;
    const y = axis[up];
    xx += x * x;
    xy += x * y;
    yy += y * y;
  }
  return { x: at[right] * rightSign, y: at[up], xx, xy, yy };
}

/** Cosines and sines of evenly spread directions, made once for each count. */
const turns = new Map<number, { cos: Float64Array; sin: Float64Array }>();

/** Cosines and sines of a whole turn in so many steps, made once. */
export function turn(count: number): { cos: Float64Array; sin: Float64Array } {
  const known = turns.get(count);
  if (known) return known;
  const at = (of: (angle: number) => number) =>
    Float64Array.from({ length: count }, (_, k) => of((2 * Math.PI * k) / count));
  const made = { cos: at(Math.cos), sin: at(Math.sin) };
  turns.set(count, made);
  return made;
}

/** An oval of this mean radius gets all directions, metres; smaller ones fewer, evenly with the root of their size. */
const WHOLE = 0.06;

/** Number of directions for sampling some ovals' outline, even: small ones need fewer. */
export function directionsFor(ovals: readonly FlatOval[], most: number): number {
  let largest = 0;
  for (const { xx, yy } of ovals) largest = Math.max(largest, xx + yy);
  const share = Math.sqrt(Math.sqrt(largest / 2) / WHOLE);
  return Math.max(10, 2 * Math.round((most / 2) * Math.min(1, share)));
}

/** Below this an oval is a point, square metres. */
const POINT = 1e-12;

/**
 * The tight outline round some ovals as a convex ring, counter-clockwise: the farthest point of any oval in each of at most
 * `most` directions, fewer where it is small. It never crosses itself.
 */
export function hullRing(ovals: readonly FlatOval[], most: number): Line {
  const directions = directionsFor(ovals, most);
  const { cos, sin } = turn(directions);
  const ring = new Array<number>(2 * directions);
  for (let k = 0; k < directions; k++) {
    const u = cos[k]!;
    const v = sin[k]!;
    let farthest = Number.NEGATIVE_INFINITY;
    for (const { x, y, xx, xy, yy } of ovals) {
      const reach = Math.sqrt(xx * u * u + 2 * xy * u * v + yy * v * v + POINT);
      const far = x * u + y * v + reach;
      if (far <= farthest) continue;
      farthest = far;
      ring[2 * k] = x + (xx * u + xy * v) / reach;
      ring[2 * k + 1] = y + (xy * u + yy * v) / reach;
    }
  }
  return ring;
}

/** How far an oval reaches from its centre along each axis, metres. */
export function reachOf({ axes: [a, b, c] }: Oval): Vec3 {
  return { x: Math.hypot(a.x, b.x, c.x), y: Math.hypot(a.y, b.y, c.y), z: Math.hypot(a.z, b.z, c.z) };
}
