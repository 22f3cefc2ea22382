import { dot, type Vec3 } from '../frame/vec3.ts';
import { addTimes, blank, copyTo, type MutableVec3, scaleTo, subtractTo } from '../frame/vec3-in-place.ts';
import type { Mutable } from '../units/mutable.ts';

/**
 * A solved two-link chain, metres. `middle` is its middle joint and `apart` the distance of its ends; the other fields
 * are what `twoLinkSlope` needs again.
 */
export interface TwoLink {
  /** Where its second end stands, and its links. */
  readonly to: Vec3;
  readonly links: Links;
  /** Place of the middle joint. */
  readonly middle: Vec3;
  /** From the first end to the second. */
  readonly apart: number;
  /** `apart` less the chain's whole length: positive is missing length. */
  readonly excess: number;
  /** Unit vector from the first end to the second, and the unit vector square to it that the middle stands out along. */
  readonly unit: Vec3;
  /** Square to `unit`: the joint bends that way. */
  readonly out: Vec3;
  /** Length of the bend's part square to `unit`. */
  readonly side: number;
  /** How far along `unit` and `out` the middle lies, and how both change with `apart`. */
  readonly along: number;
  /** Along `out`. */
  readonly height: number;
  /** Change of `along` per metre of `apart`. */
  readonly alongSlope: number;
  /** Change of `height` per metre of `apart`. */
  readonly heightSlope: number;
}

/** The two links' lengths, metres, and which way the middle joint bends (any vector; its part along the chain is idle). */
export interface Links {
  /** Length of the link at the first end. */
  readonly first: number;
  /** Length of the link at the second end. */
  readonly second: number;
  /** Any length but zero. */
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
export function twoLink(from: Vec3, to: Vec3, links: Links): TwoLink {
  return bendTwoLink(blankTwoLink(to, links), from);
}

/** A chain that `bendTwoLink` overwrites. */
export interface MutableTwoLink extends Mutable<TwoLink> {
  /** Metres, as in `TwoLink`. */
  readonly middle: MutableVec3;
  /** Unit vector. */
  readonly unit: MutableVec3;
  /** Unit vector. */
  readonly out: MutableVec3;
}

/** A chain that ends at `to`, not yet bent. */
export function blankTwoLink(to: Vec3, links: Links): MutableTwoLink {
  const none = { apart: 0, excess: 0, side: 0, along: 0, height: 0, alongSlope: 0, heightSlope: 0 };
  return { to, links, middle: blank(), unit: blank(), out: blank(), ...none };
}

/** The same chain for another end and other links. */
export function aimTwoLink(link: MutableTwoLink, to: Vec3, links: Links): void {
  link.to = to;
  link.links = links;
}

/** Solves a chain that ends where it did, from another `from`. Written in plain numbers: a search does this a thousand times. */
export function bendTwoLink(link: MutableTwoLink, from: Vec3): MutableTwoLink {
  const { to, unit, out, links } = link;
  const { first, second, bend } = links;
  const whole = first + second;
  subtractTo(unit, to, from);
  link.apart = Math.sqrt(dot(unit, unit) + (LEAST_APART * whole) ** 2);
  link.excess = link.apart - whole;
  scaleTo(unit, unit, 1 / link.apart);
  bendTriangle(link, first, second);
  addTimes(copyTo(out, bend), -dot(bend, unit), unit);
  link.side = Math.sqrt(dot(out, out) + LEAST_SIDE ** 2);
  scaleTo(out, out, 1 / link.side);
  addTimes(addTimes(copyTo(link.middle, from), link.along, unit), link.height, out);
  return link;
}

/** The middle joint in the chain's own plane by the law of cosines, softened at full stretch, with slopes to `apart`. */
function bendTriangle(link: MutableTwoLink, first: number, second: number): void {
  const low = Math.max(Math.abs(first - second), LEAST_APART * (first + second));
  const folded = link.apart < low;
  const span = folded ? low : link.apart;
  const along = 0.5 * ((first * first - second * second) / span + span);
  const alongSlope = folded ? 0 : 0.5 * (1 - (first * first - second * second) / (span * span));
  const soft = (STRAIGHT_BEND * (first + second)) ** 2;
  const square = first * first - along * along;
  const curve = Math.sqrt(square * square + soft * soft);
  const height = Math.sqrt((square + curve) / 2);
  link.along = along;
  link.height = height;
  link.alongSlope = alongSlope;
  link.heightSlope = (-along * alongSlope * (1 + square / curve)) / (2 * height);
}

/** How a chain's middle joint and the distance of its ends change. */
export interface MutableLinkSlope {
  /** Metres per radian of the unknown. */
  readonly middle: MutableVec3;
  /** Metres per radian of the unknown. */
  apart: number;
}

/** How the middle joint and the distance of the ends change when the first end moves by `motion`, the second standing. */
export function twoLinkSlope(link: TwoLink, motion: Vec3): { middle: Vec3; apart: number } {
  return twoLinkSlopeTo({ middle: blank(), apart: 0 }, link, motion);
}

/** The same, written over an earlier one. */
export function twoLinkSlopeTo(into: MutableLinkSlope, link: TwoLink, motion: Vec3): MutableLinkSlope {
  const { unit, out, links, side, along } = link;
  const { bend } = links;
  const apart = -dot(unit, motion);
  // How the way between the ends turns, and with it the bend's part square to that way.
  const share = -1 / link.apart;
  const turnX = (motion.x + apart * unit.x) * share;
  const turnY = (motion.y + apart * unit.y) * share;
  const turnZ = (motion.z + apart * unit.z) * share;
  const a = -(bend.x * turnX + bend.y * turnY + bend.z * turnZ);
  const b = -dot(bend, unit);
  const squareX = a * unit.x + b * turnX;
  const squareY = a * unit.y + b * turnY;
  const squareZ = a * unit.z + b * turnZ;
  const swing = link.height / side;
  const alongUnit = link.alongSlope * apart;
  const alongOut = link.heightSlope * apart - swing * (out.x * squareX + out.y * squareY + out.z * squareZ);
  into.middle.x = motion.x + alongUnit * unit.x + alongOut * out.x + along * turnX + swing * squareX;
  into.middle.y = motion.y + alongUnit * unit.y + alongOut * out.y + along * turnY + swing * squareY;
  into.middle.z = motion.z + alongUnit * unit.z + alongOut * out.z + along * turnZ + swing * squareZ;
  into.apart = apart;
  return into;
}
