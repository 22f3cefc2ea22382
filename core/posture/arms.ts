import type { Seat } from '../document/seat-schema.ts';
import { dot, plus, type Vec3 } from '../frame/vec3.ts';
import { addTimes, blank, copyTo, type MutableVec3, scaleTo } from '../frame/vec3-in-place.ts';
import { toRadians } from '../units/angle.ts';
import type { Mutable } from '../units/mutable.ts';
import { type BodyLengths, paddlingSign } from './contacts.ts';
import { STROKE_POSTURE } from './neutral-posture.ts';
import type { Phase } from './stance.ts';
import {
  aimTwoLink,
  bendTwoLink,
  blankTwoLink,
  type Links,
  type MutableLinkSlope,
  type MutableTwoLink,
  type TwoLink,
  twoLinkSlopeTo,
} from './two-link.ts';

/**
 * How the hands hold the paddle: the top hand from mid-shoulder in arm lengths, and the shaft's direction from the top hand
 * down; both as (forward, toward the paddling side, up). When ready the top hand is ahead of the face, its elbow nearly
 * straight, and the shaft leans 11° from upright in the side view; the blade leads at the catch and trails at the exit.
 */
interface Hold {
  /** Top hand from mid-shoulder, in arm lengths. */
  readonly top: readonly [number, number, number];
  /** Direction of the shaft from the top hand down. */
  readonly shaft: readonly [number, number, number];
}

/**
 * Estimates from the look of a stroke, not measured. The top hand passes 0.235 of an arm over the shoulders in the middle of
 * the drive (half way between catch and exit), 14 cm for an adult of median size: with that hand, a lean of 35° and a nearly
 * straight lower arm the usual rule for a paddle's length holds in a usual single (see `paddle/mid-drive.ts`). They move the
 * centre of mass by under a centimetre.
 */
const HOLD: Readonly<Record<Phase, Hold>> = {
  ready: { top: [0.68, 0.24, 0.285], shaft: [-0.2, 0.12, -1] },
  catch: { top: [0.53, 0.22, 0.4], shaft: [0.5, 0.12, -1] },
  exit: { top: [0.46, 0.26, 0.07], shaft: [-0.45, 0.18, -1] },
};

/**
 * How far shoulder blade and ribs move the lower shoulder toward its hand, in arm lengths (forward, toward the paddling side,
 * up): 9 cm for an adult of median size, mostly down. An estimate: without it a nearly straight arm holds the shaft 31 cm over
 * the blade's neck, where practice (no source) is 15 to 25 cm.
 */
const LOWER_SHOULDER_TRAVEL = [0.05, 0.02, -0.13] as const;

/** Elbows point outward, the lower one also back and down, the top one up. */
const LOWER_BEND = { x: -0.6, y: 0.7, z: -0.3 };
const TOP_BEND = { x: 0.1, y: -1, z: 0.15 };

/** Keeps shoulders turned along the trunk from dividing by nothing, square metres. */
const LEAST = 1e-12;

/** What does not change during a solve, metres from mid-shoulder in the paddler's frame. */
export interface ArmsHold {
  /** Direction from the top to the lower shoulder with the trunk upright. */
  readonly square: Vec3;
  /** Half the distance between the shoulder joints. */
  readonly half: number;
  /** How far the shoulder blade moves the lower shoulder toward its hand. */
  readonly travel: Vec3;
  /** Place of the top hand. */
  readonly topHand: Vec3;
  /** Place of the lower hand. */
  readonly lowerHand: Vec3;
  readonly top: Links;
  readonly lower: Links;
}

/** Both arms, metres from mid-shoulder. */
export interface Arms {
  readonly hold: ArmsHold;
  /** Unit vector of the trunk, from hips to shoulders. */
  readonly up: Vec3;
  /** Unit vector from the top to the lower shoulder, square to the trunk. */
  readonly line: Vec3;
  /** Length of `line` before it was made a unit vector. */
  readonly length: number;
  /** Joint of the arm whose hand is low on the shaft. */
  readonly lowerShoulder: Vec3;
  /** Joint of the arm whose hand is on the grip. */
  readonly topShoulder: Vec3;
  readonly lower: TwoLink;
  readonly top: TwoLink;
}

/**
 * How the hands hold the paddle in one phase, and how the shoulders are turned; metres from mid-shoulder, paddler's frame.
 * Mirrored for a paddler who kneels on the off side.
 */
export function armsHold(body: BodyLengths, seat: Seat, phase: Phase): ArmsHold {
  const side = paddlingSign(seat);
  const { top, shaft } = HOLD[phase];
  const [ahead, out, up] = LOWER_SHOULDER_TRAVEL;
  const arm = body.upperArm + body.forearm + body.hand;
  const topHand = { x: arm * top[0], y: arm * top[1] * side, z: arm * top[2] };
  const spacing = seat.paddle.lowerHandM / Math.hypot(...shaft);
  const turn = shoulderTurn(seat, phase);
  const links = { first: body.upperArm, second: body.forearm + body.hand };
  return {
    square: { x: Math.sin(turn), y: Math.cos(turn) * side, z: 0 },
    half: body.shoulderSeparation / 2,
    travel: { x: arm * ahead, y: arm * out * side, z: arm * up },
    topHand,
    lowerHand: plus(topHand, spacing, { x: shaft[0], y: shaft[1] * side, z: shaft[2] }),
    top: { ...links, bend: { ...TOP_BEND, y: TOP_BEND.y * side } },
    lower: { ...links, bend: { ...LOWER_BEND, y: LOWER_BEND.y * side } },
  };
}

/** How far a phase's hold has the top hand over mid-shoulder, metres: 0.285 of an arm when ready, 0.4 at the catch. */
export function topHandOver(body: Pick<BodyLengths, 'upperArm' | 'forearm' | 'hand'>, phase: Phase): number {
  return HOLD[phase].top[2] * (body.upperArm + body.forearm + body.hand);
}

/** How far the shoulders are turned, paddling side forward, radians: the athlete's own at catch and exit if set. */
function shoulderTurn({ stroke }: Seat, phase: Phase): number {
  const own = phase === 'catch' ? stroke.catchRotationDeg : stroke.exitRotationDeg;
  if (phase !== 'ready' && own !== undefined) return toRadians(own);
  return STROKE_POSTURE[`${phase}Rotation`];
}

/**
 * Both arms for the trunk's direction up (a unit vector), metres from mid-shoulder. The hands stay where the phase holds them
 * while the trunk leans; the elbows make up the difference.
 */
export function armsAt(up: Vec3, hold: ArmsHold): Arms {
  return armsTo(blankArms(hold), up);
}

/** Arms to be written over. */
export interface MutableArms extends Mutable<Arms> {
  /** Unit vector, as in `Arms`. */
  readonly line: MutableVec3;
  /** Metres from mid-shoulder. */
  readonly lowerShoulder: MutableVec3;
  /** Metres from mid-shoulder. */
  readonly topShoulder: MutableVec3;
  readonly lower: MutableTwoLink;
  readonly top: MutableTwoLink;
}

/** Arms with this hold; `armsTo` places them for a trunk. */
export function blankArms(hold: ArmsHold): MutableArms {
  return {
    hold,
    up: blank(),
    line: blank(),
    length: 0,
    lowerShoulder: blank(),
    topShoulder: blank(),
    lower: blankTwoLink(hold.lowerHand, hold.lower),
    top: blankTwoLink(hold.topHand, hold.top),
  };
}

/** The same arms for another hold. */
export function holdWith(arms: MutableArms, hold: ArmsHold): void {
  arms.hold = hold;
  aimTwoLink(arms.lower, hold.lowerHand, hold.lower);
  aimTwoLink(arms.top, hold.topHand, hold.top);
}

/** Places the arms for the trunk's direction up. */
export function armsTo(arms: MutableArms, up: Vec3): MutableArms {
  const { hold, line, lowerShoulder, topShoulder } = arms;
  arms.up = up;
  addTimes(copyTo(line, hold.square), -dot(hold.square, up), up);
  arms.length = Math.sqrt(dot(line, line) + LEAST);
  scaleTo(line, line, 1 / arms.length);
  addTimes(copyTo(lowerShoulder, hold.travel), hold.half, line);
  scaleTo(topShoulder, line, -hold.half);
  bendTwoLink(arms.lower, lowerShoulder);
  bendTwoLink(arms.top, topShoulder);
  return arms;
}

/** How the arms' joints change while the hands stay; to be overwritten. */
export interface MutableArmsSlope {
  /** Metres per radian of the unknown. */
  readonly lowerShoulder: MutableVec3;
  /** Metres per radian of the unknown. */
  readonly topShoulder: MutableVec3;
  readonly lower: MutableLinkSlope;
  readonly top: MutableLinkSlope;
}

/** Room for a slope of the arms. */
export function blankArmsSlope(): MutableArmsSlope {
  return {
    lowerShoulder: blank(),
    topShoulder: blank(),
    lower: { middle: blank(), apart: 0 },
    top: { middle: blank(), apart: 0 },
  };
}

/** How the arms' joints change while the trunk's direction up changes by `up`. The hands stay. */
export function armsSlopeTo(into: MutableArmsSlope, arms: Arms, up: Vec3): MutableArmsSlope {
  const { hold, up: at, line, length, lower, top } = arms;
  const { lowerShoulder, topShoulder } = into;
  addTimes(scaleTo(lowerShoulder, at, -dot(hold.square, up)), -dot(hold.square, at), up);
  addTimes(lowerShoulder, -dot(line, lowerShoulder), line);
  scaleTo(lowerShoulder, lowerShoulder, hold.half / length);
  scaleTo(topShoulder, lowerShoulder, -1);
  twoLinkSlopeTo(into.lower, lower, lowerShoulder);
  twoLinkSlopeTo(into.top, top, topShoulder);
  return into;
}
