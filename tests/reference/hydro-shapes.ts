import type { Hull, Station } from '../../core/hull/hull.ts';
import { toRadians } from '../../core/units/angle.ts';
import { madeHull } from '../core/hull/made-hull.ts';

/** Half-section through a function of its own parameter, 0 keel to 1 sheer. */
type Curve = (s: number) => [y: number, z: number];

export interface Fineness {
  readonly stations: number;
  readonly points: number;
}

const even = (count: number) => Array.from({ length: count }, (_, i) => i / (count - 1));

/** Places from −half to half, close together at the ends, as tables crowd their end stations. */
export const cosinePlaces = (half: number, count: number): number[] =>
  even(count).map((u) => -half * Math.cos(Math.PI * u));

export const evenPlaces = (half: number, count: number): number[] =>
  even(count).map((u) => half * (2 * u - 1));

export function sampled(xs: readonly number[], points: number, curveAt: (x: number) => Curve): Station[] {
  return xs.map((x) => ({ x, section: even(points).map(curveAt(x)) }));
}

/** Box of length L, breadth B, depth D, keel at 0: exact with three stations of two points. */
export function box(L = 5, B = 0.5, D = 0.4): Hull {
  const section: [number, number][] = [
    [B / 2, 0],
    [B / 2, D],
  ];
  return madeHull({ name: 'box', stations: [-L / 2, 0, L / 2].map((x) => ({ x, section })) });
}

/** V wedge of length L, half angle alpha, depth D, keel at 0. */
export function wedge(L: number, alpha: number, D: number): Hull {
  const section: [number, number][] = [
    [0, 0],
    [D * Math.tan(alpha), D],
  ];
  return madeHull({ name: 'wedge', stations: [-L / 2, 0, L / 2].map((x) => ({ x, section })) });
}

/** Horizontal cylinder of radius R, its lowest line at 0, as a polygon of `points` points a side. */
export function cylinder(L: number, R: number, points: number): Hull {
  const stations = sampled([-L / 2, 0, L / 2], points, () => (s) => [
    R * Math.abs(Math.sin(Math.PI * s)),
    R * (1 - Math.cos(Math.PI * s)),
  ]);
  return madeHull({ name: 'cylinder', stations });
}

/** Ellipsoid of half-axes a, b, c, centre at the origin: a closed body with blunt ends. */
export function ellipsoid(
  xs: readonly number[],
  points: number,
  [a, b, c] = [2.5, 0.25, 0.15] as const,
): Hull {
  const stations = sampled(xs, points, (x) => {
    const r = Math.sqrt(Math.max(0, 1 - (x / a) ** 2));
    return (s) => [b * r * Math.max(0, Math.sin(Math.PI * s)), -c * r * Math.cos(Math.PI * s)];
  });
  return madeHull({ name: 'ellipsoid', stations });
}

/**
 * A hull given by half-breadths y(x, depth under the waterline over draught), wall-sided above; keel at 0, waterline at T.
 * Points crowd toward the keel, where the lines of these forms turn fastest.
 */
export function draughtForm(
  { L, T, above = 0 }: { L: number; T: number; above?: number },
  { stations, points }: Fineness,
  breadth: (x: number, depth: number) => number,
): Hull {
  const lines = sampled(evenPlaces(L / 2, stations), points, (x) => (s) => {
    const height = s ** 1.5;
    return [Math.max(0, breadth(x, 1 - height)), T * height];
  });
  const walls = lines.map(({ x, section }) => ({
    x,
    section: above > 0 ? [...section, [section.at(-1)![0], T + above] as const] : section,
  }));
  return madeHull({ name: 'form', stations: walls });
}

/** Wigley's parabolic hull, B/2 · (1 − (2x/L)²)(1 − (z/T)²). */
export function wigley(size: { L: number; B: number; T: number; above?: number }, fineness: Fineness): Hull {
  const { L, B } = size;
  return draughtForm(size, fineness, (x, d) => (B / 2) * (1 - ((2 * x) / L) ** 2) * (1 - d ** 2));
}

/** A plane n·x = d of the closed-form table (bow-down and port-down degrees) as an attitude of the project. */
export function attitudeOfPlane(portDown: number, bowDown: number, d: number) {
  const [a, b] = [Math.tan(toRadians(bowDown)), Math.tan(toRadians(portDown))];
  return {
    draft: d * Math.hypot(1, a, b),
    trim: -toRadians(bowDown),
    heel: -toRadians(portDown),
    normal: { x: -a / Math.hypot(1, a, b), y: -b / Math.hypot(1, a, b), z: 1 / Math.hypot(1, a, b) },
  };
}
