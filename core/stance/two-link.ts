import { add, cross, dot, norm, scale, subtract, type Vec3 } from '../frame/vec3.ts';

/** A solved two-link chain: the middle joint, and by how much the chain is too short for its ends (0 when it reaches). */
export interface TwoLink {
  readonly middle: Vec3;
  readonly shortfall: number;
}

/** A bend direction closer to the chain's own line than this (sine) is turned aside, so that the joint never flips. */
const PARALLEL = 1e-9;

/**
 * The middle joint of a chain from `a` (link `first`) to `b` (link `second`), bent toward `bend`. Metres. Where the
 * ends are too far apart the chain lies straight and `shortfall` is what is missing; too near, it folds.
 */
export function twoLink(
  a: Vec3,
  b: Vec3,
  { first, second, bend }: { first: number; second: number; bend: Vec3 },
): TwoLink {
  const line = subtract(b, a);
  const apart = Math.max(norm(line), 1e-9);
  const along = scale(line, 1 / apart);
  const reach = Math.min(Math.max(apart, Math.abs(first - second) + 1e-9), first + second);
  const foot = (first ** 2 - second ** 2 + reach ** 2) / (2 * reach);
  const height = Math.sqrt(Math.max(0, first ** 2 - foot ** 2));
  const side = subtract(bend, scale(along, dot(bend, along)));
  const length = norm(side);
  const out = length > PARALLEL ? scale(side, 1 / length) : cross(along, { x: 0, y: 1, z: 0 });
  return {
    middle: add(a, add(scale(along, foot), scale(out, height))),
    shortfall: Math.max(0, apart - first - second),
  };
}
