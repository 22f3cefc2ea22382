import {
  chain,
  fixed,
  inner,
  inverse,
  type Jet,
  type JetVec,
  mix,
  mixVec,
  product,
  reach,
  root,
  shift,
  stretch,
} from './jet.ts';

/** A solved two-link chain, metres: its middle joint, and the distance of its ends less its whole length (may be negative). */
export interface TwoLink {
  readonly middle: JetVec;
  readonly excess: Jet;
}

/**
 * A straight chain keeps this hint of a bend, as a share of its length, and comes to it smoothly: the middle joint of a
 * chain at full stretch would otherwise jump, and with it the centre of mass. 3 % leaves a straight leg at 175°.
 */
const STRAIGHT_BEND = 0.03;

/** A bend direction along the chain itself is pushed aside by this much (of a unit vector), so that nothing divides by 0. */
const LEAST_SIDE = 1e-6;

/**
 * The middle joint of a chain from `from` (link `first`) to `to` (link `second`), bent toward the direction `bend`.
 * Metres. Ends too far apart leave the chain straight, both links stretched alike; ends too near leave it folded.
 */
export function twoLink(
  from: JetVec,
  to: JetVec,
  { first, second, bend }: { first: number; second: number; bend: JetVec },
): TwoLink {
  const line = mixVec(1, to, -1, from);
  const apart = root(shift(inner(line, line), 1e-12));
  const unit = stretch(line, inverse(apart));
  const whole = first + second;
  const span = atLeast(apart, Math.abs(first - second));
  const along = mix(0.5 * (first ** 2 - second ** 2), inverse(span), 0.5, span);
  const square = mix(-1, product(along, along), 1, fixed(first ** 2));
  const height = root(softened(square, (STRAIGHT_BEND * whole) ** 2));
  const side = reach(bend, mix(-1, inner(bend, unit), 0, unit.x), unit);
  const out = stretch(side, inverse(root(shift(inner(side, side), LEAST_SIDE ** 2))));
  return { middle: reach(reach(from, along, unit), height, out), excess: shift(apart, -whole) };
}

/** max(0, x), rounded off over a width of `soft`: (x + √(x² + soft²))/2. */
function softened(x: Jet, soft: number): Jet {
  const curve = Math.sqrt(x.v ** 2 + soft ** 2);
  return chain(x, (x.v + curve) / 2, (1 + x.v / curve) / 2);
}

function atLeast(x: Jet, low: number): Jet {
  return x.v < low ? fixed(Math.max(low, 1e-6)) : x;
}
