import { dot, plus, scale, subtract, type Vec3 } from '../frame/vec3.ts';

/**
 * A solved two-link chain, metres. `middle` is its middle joint and `apart` the distance of its ends; the other fields
 * are what `twoLinkSlope` needs again.
 */
export interface TwoLink {
  readonly middle: Vec3;
  readonly apart: number;
  /** `apart` less the chain's whole length: positive is missing length. */
  readonly excess: number;
  /** Unit vector from the first end to the second, and the unit vector square to it that the middle stands out along. */
  readonly unit: Vec3;
  readonly out: Vec3;
  readonly bend: Vec3;
  /** Length of the bend's part square to `unit`. */
  readonly side: number;
  /** How far along `unit` and `out` the middle lies, and how both change with `apart`. */
  readonly along: number;
  readonly height: number;
  readonly alongSlope: number;
  readonly heightSlope: number;
}

/** The two links' lengths, metres, and which way the middle joint bends (any vector; its part along the chain is idle). */
export interface Links {
  readonly first: number;
  readonly second: number;
  readonly bend: Vec3;
}

/**
 * A straight chain keeps this hint of a bend, as a share of its length, and comes to it smoothly: the middle joint of a
 * chain at full stretch would otherwise jump, and with it the centre of mass. 5 % leaves a straight leg at 172° and takes 0.3°
 * from one of 160°. With 3 % the knee still swung so fast near full stretch that 6 of 90 000 random stances had two least
 * costs, up to 2.5° apart; with 5 %, none.
 */
const STRAIGHT_BEND = 0.05;

/** A bend direction along the chain itself is pushed aside by this much (of a unit vector), so that nothing divides by 0. */
const LEAST_SIDE = 1e-6;

/** Ends that meet are held this share of the chain's length apart, for the same reason. */
const LEAST_APART = 1e-6;

/**
 * The middle joint of a chain from `from` (link `first`) to `to` (link `second`), bent toward `bend`. Metres. Ends too far
 * apart leave the chain straight, both links stretched alike; ends too near leave it folded. Links of 3 and 4 with their
 * ends 5 apart bend square.
 */
export function twoLink(from: Vec3, to: Vec3, { first, second, bend }: Links): TwoLink {
  const whole = first + second;
  const line = subtract(to, from);
  const apart = Math.sqrt(dot(line, line) + (LEAST_APART * whole) ** 2);
  const unit = scale(line, 1 / apart);
  const { along, height, alongSlope, heightSlope } = triangle(apart, first, second);
  const square = plus(bend, -dot(bend, unit), unit);
  const side = Math.sqrt(dot(square, square) + LEAST_SIDE ** 2);
  const out = scale(square, 1 / side);
  const middle = plus(plus(from, along, unit), height, out);
  return {
    middle,
    apart,
    excess: apart - whole,
    unit,
    out,
    bend,
    side,
    along,
    height,
    alongSlope,
    heightSlope,
  };
}

/** The middle joint in the chain's own plane by the law of cosines, softened at full stretch, with slopes to `apart`. */
function triangle(apart: number, first: number, second: number) {
  const low = Math.max(Math.abs(first - second), LEAST_APART * (first + second));
  const folded = apart < low;
  const span = folded ? low : apart;
  const along = 0.5 * ((first ** 2 - second ** 2) / span + span);
  const alongSlope = folded ? 0 : 0.5 * (1 - (first ** 2 - second ** 2) / span ** 2);
  const soft = (STRAIGHT_BEND * (first + second)) ** 2;
  const square = first ** 2 - along ** 2;
  const curve = Math.sqrt(square ** 2 + soft ** 2);
  const height = Math.sqrt((square + curve) / 2);
  const heightSlope = (-along * alongSlope * (1 + square / curve)) / (2 * height);
  return { along, height, alongSlope, heightSlope };
}

/** How the middle joint and the distance of the ends change when the first end moves by `motion`, the second standing. */
export function twoLinkSlope(link: TwoLink, motion: Vec3): { middle: Vec3; apart: number } {
  const { unit, out, bend, side } = link;
  const apart = -dot(unit, motion);
  // How the way between the ends turns, and with it the bend's part square to that way.
  const turn = scale(plus(motion, apart, unit), -1 / link.apart);
  const square = sum(unit, turn, { a: -dot(bend, turn), b: -dot(bend, unit) });
  const swing = link.height / side;
  const alongUnit = link.alongSlope * apart;
  const alongOut = link.heightSlope * apart - swing * dot(out, square);
  const middle = {
    x: motion.x + alongUnit * unit.x + alongOut * out.x + link.along * turn.x + swing * square.x,
    y: motion.y + alongUnit * unit.y + alongOut * out.y + link.along * turn.y + swing * square.y,
    z: motion.z + alongUnit * unit.z + alongOut * out.z + link.along * turn.z + swing * square.z,
  };
  return { middle, apart };
}

/** a·p + b·q. */
function sum(p: Vec3, q: Vec3, { a, b }: { a: number; b: number }): Vec3 {
  return { x: a * p.x + b * q.x, y: a * p.y + b * q.y, z: a * p.z + b * q.z };
}
