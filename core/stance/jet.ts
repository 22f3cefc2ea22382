import type { Vec3 } from '../frame/vec3.ts';

/**
 * A number together with its exact derivatives to the five unknowns of the stance (order of `STANCE_UNKNOWNS`). Every
 * operation below carries the derivatives along by the chain rule, so the whole figure comes with its Jacobian and no
 * difference quotient is ever taken. Unit: that of the number; derivatives per radian.
 */
export interface Jet {
  readonly v: number;
  readonly a: number;
  readonly b: number;
  readonly c: number;
  readonly d: number;
  readonly e: number;
}

/** A point or vector of jets, metres. */
export interface JetVec {
  readonly x: Jet;
  readonly y: Jet;
  readonly z: Jet;
}

/** The five unknowns as jets: each has derivative 1 to itself. */
export function unknowns(q: readonly number[]): [Jet, Jet, Jet, Jet, Jet] {
  return [
    { v: q[0]!, a: 1, b: 0, c: 0, d: 0, e: 0 },
    { v: q[1]!, a: 0, b: 1, c: 0, d: 0, e: 0 },
    { v: q[2]!, a: 0, b: 0, c: 1, d: 0, e: 0 },
    { v: q[3]!, a: 0, b: 0, c: 0, d: 1, e: 0 },
    { v: q[4]!, a: 0, b: 0, c: 0, d: 0, e: 1 },
  ];
}

/** A number that does not depend on the unknowns. */
export function fixed(v: number): Jet {
  return { v, a: 0, b: 0, c: 0, d: 0, e: 0 };
}

/** f(x) from its value and slope at x: the chain rule for one argument. */
export function chain(x: Jet, value: number, slope: number): Jet {
  return { v: value, a: slope * x.a, b: slope * x.b, c: slope * x.c, d: slope * x.d, e: slope * x.e };
}

/** p·x + q·y for numbers p, q. */
export function mix(p: number, x: Jet, q: number, y: Jet): Jet {
  return {
    v: p * x.v + q * y.v,
    a: p * x.a + q * y.a,
    b: p * x.b + q * y.b,
    c: p * x.c + q * y.c,
    d: p * x.d + q * y.d,
    e: p * x.e + q * y.e,
  };
}

/** x + k for a number k. */
export function shift(x: Jet, k: number): Jet {
  return { v: x.v + k, a: x.a, b: x.b, c: x.c, d: x.d, e: x.e };
}

/** x·k for a number k. */
export function times(x: Jet, k: number): Jet {
  return chain(x, x.v * k, k);
}

/** x·y. */
export function product(x: Jet, y: Jet): Jet {
  return {
    v: x.v * y.v,
    a: x.a * y.v + x.v * y.a,
    b: x.b * y.v + x.v * y.b,
    c: x.c * y.v + x.v * y.c,
    d: x.d * y.v + x.v * y.d,
    e: x.e * y.v + x.v * y.e,
  };
}

/** 1/x; x must not be 0. */
export function inverse(x: Jet): Jet {
  const v = 1 / x.v;
  return chain(x, v, -v * v);
}

/** √x; x must be above 0. */
export function root(x: Jet): Jet {
  const v = Math.sqrt(x.v);
  return chain(x, v, 0.5 / v);
}

/** The angle of (x, y) as `Math.atan2(y, x)` gives it; not both 0. */
export function angleOf(y: Jet, x: Jet): Jet {
  const square = x.v * x.v + y.v * y.v;
  const angle = mix(x.v / square, y, -y.v / square, x);
  return { ...angle, v: Math.atan2(y.v, x.v) };
}

/** A vector that does not depend on the unknowns. */
export function fixedVec({ x, y, z }: Vec3): JetVec {
  return { x: fixed(x), y: fixed(y), z: fixed(z) };
}

/** p·u + q·w for numbers p, q. */
export function mixVec(p: number, u: JetVec, q: number, w: JetVec): JetVec {
  return { x: mix(p, u.x, q, w.x), y: mix(p, u.y, q, w.y), z: mix(p, u.z, q, w.z) };
}

/** u + k·w for a jet k. */
export function reach(u: JetVec, k: Jet, w: JetVec): JetVec {
  return {
    x: mix(1, u.x, 1, product(k, w.x)),
    y: mix(1, u.y, 1, product(k, w.y)),
    z: mix(1, u.z, 1, product(k, w.z)),
  };
}

/** k·u for a jet k. */
export function stretch(u: JetVec, k: Jet): JetVec {
  return { x: product(u.x, k), y: product(u.y, k), z: product(u.z, k) };
}

/** Scalar product. */
export function inner(u: JetVec, w: JetVec): Jet {
  return mix(1, mix(1, product(u.x, w.x), 1, product(u.y, w.y)), 1, product(u.z, w.z));
}

/** Vector product u × w. */
export function outer(u: JetVec, w: JetVec): JetVec {
  return {
    x: mix(1, product(u.y, w.z), -1, product(u.z, w.y)),
    y: mix(1, product(u.z, w.x), -1, product(u.x, w.z)),
    z: mix(1, product(u.x, w.y), -1, product(u.y, w.x)),
  };
}

/** The values without their derivatives. */
export function valueOfVec({ x, y, z }: JetVec): Vec3 {
  return { x: x.v, y: y.v, z: z.v };
}
