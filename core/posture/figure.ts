import type { Vec3 } from '../frame/vec3.ts';
import { addTimes, blank, copyTo, type MutableVec3 } from '../frame/vec3-in-place.ts';
import { type Arms, type ArmsHold, armsTo, blankArms, holdWith, type MutableArms } from './arms.ts';
import type { BodyLengths, Contacts } from './contacts.ts';
import { blankLeaning, type Leaning, leanTo, type MutableLeaning } from './leaning.ts';
import {
  aimTwoLink,
  bendTwoLink,
  blankTwoLink,
  type Links,
  type MutableTwoLink,
  type TwoLink,
} from './two-link.ts';

/** What a figure is built from: fixed for one solve. Metres, paddler's frame. */
export interface FigureParts {
  readonly lengths: BodyLengths;
  readonly contacts: Contacts;
  readonly hold: ArmsHold;
  /** +1 when the paddling side is the kneeling side, else −1. */
  readonly paddling: 1 | -1;
}

/**
 * The joints that move with the unknowns, paddler's frame, metres: one chain from the kneeling knee up (thigh, pelvis, trunk,
 * head, arms) and one from the front hip down to the foot that stands still.
 */
export interface SolverFigure {
  readonly thigh: Leaning;
  readonly trunk: Leaning;
  /** Unit vector from the kneeling to the front hip, and how it turns with the pelvis. */
  readonly across: Vec3;
  /** Slope of `across` per radian of the pelvis's turn. */
  readonly acrossTurn: Vec3;
  /** Joint over the kneeling knee. */
  readonly kneelingHip: Vec3;
  /** Joint of the front leg. */
  readonly frontHip: Vec3;
  /** Half way between the hip joints. */
  readonly midHip: Vec3;
  /** Half way between the shoulder joints. */
  readonly midShoulder: Vec3;
  /** Crown of the head. */
  readonly headTop: Vec3;
  /** Front hip to front ankle; its middle is the front knee. */
  readonly leg: TwoLink;
  /** From mid-shoulder. */
  readonly arms: Arms;
}

/** The front knee bends along the foot and somewhat upward: a knee follows its toes, and a raised leg bends skyward. */
const KNEE_UPWARD = 0.25;

/**
 * The figure for the five unknowns: thigh pitch and roll, pelvis yaw, trunk pitch and roll, radians, in that order. Lengths
 * and fixed joints come from `parts`; the result is finite for any finite unknowns. With all five at 0 hips, shoulders and head
 * stand in one upright plane over the kneeling knee.
 */
export function figureAt(q: Float64Array, parts: FigureParts): SolverFigure {
  return figureTo(blankFigure(parts), q, parts);
}

/** A figure to be written over. */
export interface MutableFigure extends SolverFigure {
  readonly thigh: MutableLeaning;
  readonly trunk: MutableLeaning;
  /** As in `SolverFigure`, and all the others too. */
  readonly across: MutableVec3;
  readonly acrossTurn: MutableVec3;
  readonly kneelingHip: MutableVec3;
  readonly frontHip: MutableVec3;
  readonly midHip: MutableVec3;
  readonly midShoulder: MutableVec3;
  readonly headTop: MutableVec3;
  readonly leg: MutableTwoLink;
  readonly arms: MutableArms;
}

/** A figure of these parts, its joints still to be found. */
export function blankFigure(parts: FigureParts): MutableFigure {
  return {
    thigh: blankLeaning(),
    trunk: blankLeaning(),
    across: blank(),
    acrossTurn: blank(),
    kneelingHip: blank(),
    frontHip: blank(),
    midHip: blank(),
    midShoulder: blank(),
    headTop: blank(),
    leg: blankTwoLink(parts.contacts.frontAnkle, legLinks(parts)),
    arms: blankArms(parts.hold),
  };
}

/** Makes a figure one of other parts, its joints still to be found. */
export function refit(figure: MutableFigure, parts: FigureParts): void {
  aimTwoLink(figure.leg, parts.contacts.frontAnkle, legLinks(parts));
  holdWith(figure.arms, parts.hold);
}

/** The front leg as two links; its knee bends forward and up. */
function legLinks({ lengths, contacts }: FigureParts): Links {
  const { x, y } = contacts.frontDirection;
  return { first: lengths.thigh, second: lengths.shank, bend: { x, y, z: KNEE_UPWARD } };
}

/** Finds every joint of a figure of these parts for other unknowns, written over the ones before. */
export function figureTo(
  figure: MutableFigure,
  q: Float64Array,
  { lengths, contacts, paddling }: FigureParts,
): MutableFigure {
  const { thigh, trunk, across, acrossTurn, kneelingHip, frontHip, midHip, midShoulder, headTop } = figure;
  leanTo(thigh, q[0]!, q[1]!);
  leanTo(trunk, q[3]!, q[4]! * paddling);
  across.x = Math.sin(q[2]!);
  across.y = -Math.cos(q[2]!);
  acrossTurn.x = -across.y;
  acrossTurn.y = across.x;
  addTimes(copyTo(kneelingHip, contacts.knee), lengths.thigh, thigh.up);
  addTimes(copyTo(frontHip, kneelingHip), lengths.hipSeparation, across);
  addTimes(copyTo(midHip, kneelingHip), lengths.hipSeparation / 2, across);
  addTimes(copyTo(midShoulder, midHip), lengths.trunk, trunk.up);
  addTimes(copyTo(headTop, midShoulder), lengths.headNeck, trunk.up);
  bendTwoLink(figure.leg, frontHip);
  armsTo(figure.arms, trunk.up);
  return figure;
}
