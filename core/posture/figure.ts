import { plus, scale, type Vec3 } from '../frame/vec3.ts';
import { type Arms, type ArmsHold, armsAt } from './arms.ts';
import type { BodyLengths, Contacts } from './contacts.ts';
import { type Leaning, leaning } from './leaning.ts';
import { type TwoLink, twoLink, twoLinkSlope } from './two-link.ts';

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
export interface Figure {
  readonly thigh: Leaning;
  readonly trunk: Leaning;
  /** Unit vector from the kneeling to the front hip, and how it turns with the pelvis. */
  readonly across: Vec3;
  readonly acrossTurn: Vec3;
  readonly kneelingHip: Vec3;
  readonly frontHip: Vec3;
  readonly midHip: Vec3;
  readonly midShoulder: Vec3;
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
export function figureAt(q: Float64Array, { lengths, contacts, hold, paddling }: FigureParts): Figure {
  const thigh = leaning(q[0]!, q[1]!);
  const trunk = leaning(q[3]!, q[4]! * paddling);
  const sine = Math.sin(q[2]!);
  const cosine = Math.cos(q[2]!);
  const across = { x: sine, y: -cosine, z: 0 };
  const kneelingHip = plus(contacts.knee, lengths.thigh, thigh.up);
  const frontHip = plus(kneelingHip, lengths.hipSeparation, across);
  const midHip = plus(kneelingHip, lengths.hipSeparation / 2, across);
  const midShoulder = plus(midHip, lengths.trunk, trunk.up);
  const { x, y } = contacts.frontDirection;
  const bend = { x, y, z: KNEE_UPWARD };
  return {
    thigh,
    trunk,
    across,
    acrossTurn: { x: cosine, y: sine, z: 0 },
    kneelingHip,
    frontHip,
    midHip,
    midShoulder,
    headTop: plus(midShoulder, lengths.headNeck, trunk.up),
    leg: twoLink(frontHip, contacts.frontAnkle, { first: lengths.thigh, second: lengths.shank, bend }),
    arms: armsAt(trunk.up, hold),
  };
}

/**
 * How the figure changes per radian of one unknown: points in metres per radian, directions per radian. Only what terms of the
 * objective are made of; arms follow the trunk and are found where they are needed, in `centreSlope`.
 */
export interface FigureSlope {
  readonly thighUp: Vec3;
  readonly trunkUp: Vec3;
  readonly across: Vec3;
  readonly kneelingHip: Vec3;
  readonly frontHip: Vec3;
  readonly midHip: Vec3;
  readonly midShoulder: Vec3;
  readonly frontKnee: Vec3;
  /** Of the distance from front hip to front ankle. */
  readonly legApart: number;
}

const STILL: Vec3 = { x: 0, y: 0, z: 0 };

/**
 * The five slopes of a figure, in the order of the unknowns. Each unknown moves only what hangs on it: the thigh everything
 * above the knee, the pelvis the off hip and the trunk's foot, the trunk only what is above it. Exact to 1 part in 10⁶
 * (tests/core/posture/figure.test.ts).
 */
export function figureSlopes(figure: Figure, parts: FigureParts): FigureSlope[] {
  const { thigh, trunk } = figure;
  return [
    thighSlope(figure, parts, thigh.byPitch),
    thighSlope(figure, parts, thigh.byRoll),
    yawSlope(figure, parts),
    trunkSlope(trunk.byPitch, parts),
    trunkSlope(scale(trunk.byRoll, parts.paddling), parts),
  ];
}

/** The thigh carries the hips and everything above them, all alike. */
function thighSlope({ leg }: Figure, { lengths }: FigureParts, thighUp: Vec3): FigureSlope {
  const carried = scale(thighUp, lengths.thigh);
  const { middle, apart } = twoLinkSlope(leg, carried);
  return {
    thighUp,
    trunkUp: STILL,
    across: STILL,
    kneelingHip: carried,
    frontHip: carried,
    midHip: carried,
    midShoulder: carried,
    frontKnee: middle,
    legApart: apart,
  };
}

/** The pelvis turns about the kneeling hip. */
function yawSlope({ leg, acrossTurn }: Figure, { lengths }: FigureParts): FigureSlope {
  const frontHip = scale(acrossTurn, lengths.hipSeparation);
  const midHip = scale(acrossTurn, lengths.hipSeparation / 2);
  const { middle, apart } = twoLinkSlope(leg, frontHip);
  return {
    thighUp: STILL,
    trunkUp: STILL,
    across: acrossTurn,
    kneelingHip: STILL,
    frontHip,
    midHip,
    midShoulder: midHip,
    frontKnee: middle,
    legApart: apart,
  };
}

/** The trunk turns about mid-hip. */
function trunkSlope(trunkUp: Vec3, { lengths }: FigureParts): FigureSlope {
  return {
    thighUp: STILL,
    trunkUp,
    across: STILL,
    kneelingHip: STILL,
    frontHip: STILL,
    midHip: STILL,
    midShoulder: scale(trunkUp, lengths.trunk),
    frontKnee: STILL,
    legApart: 0,
  };
}
