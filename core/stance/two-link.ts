import {
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
 * Least height of the middle joint over the line of the ends, as a share of the chain's length: a straight chain keeps
 * this hint of a bend, so that the joint's place stays differentiable. 0.1 % is under a millimetre in a leg.
 */
const LEAST_BEND = 1e-3;

/** A bend direction along the chain itself is pushed aside by this much (of a unit vector), so that nothing divides by 0. */
const LEAST_SIDE = 1e-6;

/**
 * The middle joint of a chain from `from` (link `first`) to `to` (link `second`), bent toward the direction `bend`.
 * Metres. Ends too far apart leave the chain straight, pointing at the far end; ends too near leave it folded.
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
  const span = within(apart, Math.abs(first - second), whole);
  const along = mix(0.5 * (first ** 2 - second ** 2), inverse(span), 0.5, span);
  const square = mix(-1, product(along, along), 1, fixed(first ** 2));
  const floor = (LEAST_BEND * whole) ** 2;
  const height = root(square.v > 0 ? shift(square, floor) : fixed(floor));
  const side = reach(bend, mix(-1, inner(bend, unit), 0, unit.x), unit);
  const out = stretch(side, inverse(root(shift(inner(side, side), LEAST_SIDE ** 2))));
  return { middle: reach(reach(from, along, unit), height, out), excess: shift(apart, -whole) };
}

function within(x: Jet, low: number, high: number): Jet {
  if (x.v > high) return fixed(high);
  return x.v < low ? fixed(Math.max(low, 1e-6)) : x;
}
