declare const frame: unique symbol;

/** Three components, metres unless said otherwise. */
export interface Vec3 {
  /** Forward in the boat frame. */
  readonly x: number;
  /** To port in the boat frame. */
  readonly y: number;
  /** Up in the boat frame. */
  readonly z: number;
}

/**
 * A point in the boat frame, metres: origin at mid-length on the centreline at the lowest point of the keel line,
 * x forward, y to port (the paddler's left), z up. Frame after ITTC practice.
 */
export type BoatPoint = Vec3 & { readonly [frame]?: 'boat' };

/**
 * A point in a paddler's own frame, metres: origin at the seat's datum on the centreline at the floorboard's top,
 * x forward, y **toward the kneeling side**, z up. The same numbers serve both sides; `mirror.ts` turns them into
 * the boat frame.
 */
export type PaddlerPoint = Vec3 & { readonly [frame]?: 'paddler' };

/** Sum of two vectors. */
export function add(a: Vec3, b: Vec3): Vec3 {
  return { x: a.x + b.x, y: a.y + b.y, z: a.z + b.z };
}

/** Difference a − b. */
export function subtract(a: Vec3, b: Vec3): Vec3 {
  return { x: a.x - b.x, y: a.y - b.y, z: a.z - b.z };
}

/** Vector a times the number k. */
export function scale(a: Vec3, k: number): Vec3 {
  return { x: a.x * k, y: a.y * k, z: a.z * k };
}

/** a + k·b: a point moved k times along a vector. */
export function plus(a: Vec3, k: number, b: Vec3): Vec3 {
  return { x: a.x + k * b.x, y: a.y + k * b.y, z: a.z + k * b.z };
}

/** Scalar product. */
export function dot(a: Vec3, b: Vec3): number {
  return a.x * b.x + a.y * b.y + a.z * b.z;
}

/** Vector product a × b. */
export function cross(a: Vec3, b: Vec3): Vec3 {
  return { x: a.y * b.z - a.z * b.y, y: a.z * b.x - a.x * b.z, z: a.x * b.y - a.y * b.x };
}

/** Euclidean length. Not `Math.hypot`, which guards against overflow at many times the cost. */
export function norm(a: Vec3): number {
  return Math.sqrt(a.x * a.x + a.y * a.y + a.z * a.z);
}

/** Length of a vector in a plane. */
export function planeNorm(x: number, y: number): number {
  return Math.sqrt(x * x + y * y);
}

/** The point a fraction `t` of the way from `a` to `b`; `t` may lie outside 0–1. */
export function along(a: Vec3, b: Vec3, t: number): Vec3 {
  return { x: a.x + (b.x - a.x) * t, y: a.y + (b.y - a.y) * t, z: a.z + (b.z - a.z) * t };
}
