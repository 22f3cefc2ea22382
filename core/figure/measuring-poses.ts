import { plus, type Vec3 } from '../frame/vec3.ts';
import { twoLink } from '../posture/two-link.ts';
import { type Figure, figureOf } from './figure.ts';
import type { FigurePoints } from './limbs.ts';

/** Pose of a person who is measured with a tape. */
export type MeasuringPose = 'standing' | 'stretched' | 'sitting' | 'kneeling';

/** The stature of the person in the pictures, and lengths between joints that go with it (survey's lines, rounded). Metres. */
export const POSED = {
  stature: 1.75,
  thigh: 0.42,
  shank: 0.42,
  ankle: 0.072,
  hipsApart: 0.17,
  trunk: 0.478,
  shouldersApart: 0.36,
  upperArm: 0.285,
  forearmToGrip: 0.335,
  headNeck: 0.36,
  heelToAnkle: 0.06,
  heelToBall: 0.2,
  footLength: 0.265,
} as const;

/** Height of hip and shoulder joints of somebody standing; sitting, that of the hip joint over the floor. */
const STANDING_HIP = POSED.ankle + POSED.shank + POSED.thigh;
const SITTING_HIP = 0.5;
/** A kneeling knee's joint over the floor. */
const KNEE_OVER_FLOOR = 0.056;

/** Shorthand for a point: forward, to port, up. */
const at = (x: number, y: number, z: number): Vec3 => ({ x, y, z });
const sides = { lower: -1, top: 1 } as const;

/** The figure of a person being measured: feet on the floor at z = 0, facing along x, y to the left. */
export function measuringFigure(pose: MeasuringPose): Figure {
  const points = { standing, stretched, sitting, kneeling }[pose]();
  const body = {
    stature: POSED.stature,
    sex: 'unspecified',
    lengths: { kneeRadius: { value: 0.054 } },
  } as const;
  return figureOf(points, body, { paddle: null, fineness: 'paper' });
}

/** Upright with arms hanging: stature, heights of shoulder, crotch and shin. */
function standing(): FigurePoints {
  return upright({ hip: at(0, 0, STANDING_HIP), ...legs((y) => standingLeg(y)), arms: hanging });
}

/** Arms level to both sides: the span. */
function stretched(): FigurePoints {
  const level = (shoulder: Vec3, side: number) =>
    plus(shoulder, 0.995 * (POSED.upperArm + POSED.forearmToGrip), at(0, side, 0));
  return upright({ hip: at(0, 0, STANDING_HIP), ...legs((y) => standingLeg(y)), arms: level });
}

/** On a stool, thighs level, hands on them: sitting height, heights of knee and its hollow. */
function sitting(): FigurePoints {
  const leg = (y: number) => ({
    hip: at(-POSED.thigh, y, SITTING_HIP),
    knee: at(0, y, POSED.ankle + POSED.shank),
    ...flatFoot(0, y),
  });
  const onThigh = (shoulder: Vec3) => plus(shoulder, 1, at(0.26, 0, -0.385));
  return upright({ hip: at(-POSED.thigh, 0, SITTING_HIP), ...legs(leg), arms: onThigh });
}

/** One knee and its foot's ball on the floor: the kneeling height. */
function kneeling(): FigurePoints {
  const y = POSED.hipsApart / 2;
  const hipZ = KNEE_OVER_FLOOR + POSED.thigh;
  const ankle = at(-POSED.shank, y, 0.075);
  const knelt = {
    hip: at(0, y, hipZ),
    knee: at(0, y, KNEE_OVER_FLOOR),
    ankle,
    heel: at(-POSED.shank - 0.05, y, 0.125),
    ball: at(-POSED.shank - 0.045, y, 0),
    toe: at(-POSED.shank + 0.02, y, 0),
  };
  const front = {
    hip: at(0, -y, hipZ),
    knee: at(POSED.thigh, -y, POSED.ankle + POSED.shank),
    ...flatFoot(POSED.thigh, -y),
  };
  return upright({ hip: at(0, 0, hipZ), knelt, front, arms: hanging });
}

/** Joints and ends of one leg, metres. */
interface Leg {
  /** Joint centre. */
  readonly hip: Vec3;
  /** Joint centre. */
  readonly knee: Vec3;
  /** Joint centre. */
  readonly ankle: Vec3;
  /** Lowest point of the heel, on the sole. */
  readonly heel: Vec3;
  /** Ball of the foot, on the sole. */
  readonly ball: Vec3;
  /** Tip of the longest toe, on the sole. */
  readonly toe: Vec3;
}

/** Both legs alike, half the hips' distance to each side. */
function legs(leg: (y: number) => Leg): { knelt: Leg; front: Leg } {
  return { knelt: leg(POSED.hipsApart / 2), front: leg(-POSED.hipsApart / 2) };
}

/** A leg of somebody standing: the knee hardly bent, so that it has a front. */
function standingLeg(y: number): Leg {
  // The right leg stands a hair behind, so that from behind it is drawn as near as the left one, which is one body with the seat.
  const x = y < 0 ? -0.004 : 0;
  return {
    hip: at(x, y, STANDING_HIP),
    knee: at(x + 0.012, y, POSED.ankle + POSED.shank),
    ...flatFoot(x, y),
  };
}

function flatFoot(ankleX: number, y: number): Pick<Leg, 'ankle' | 'heel' | 'ball' | 'toe'> {
  const heel = ankleX - POSED.heelToAnkle;
  return {
    ankle: at(ankleX, y, POSED.ankle),
    heel: at(heel, y, 0),
    ball: at(heel + POSED.heelToBall, y, 0),
    toe: at(heel + POSED.footLength, y, 0),
  };
}

/** Where a hand hangs from a shoulder. */
const hanging = (shoulder: Vec3) =>
  plus(shoulder, 0.985 * (POSED.upperArm + POSED.forearmToGrip), at(0.06, 0, -1));

/** An upright trunk on the hips, with head and arms. */
function upright(given: {
  hip: Vec3;
  knelt: Leg;
  front: Leg;
  arms: (shoulder: Vec3, side: number) => Vec3;
}): FigurePoints {
  const { hip, knelt, front, arms } = given;
  const midShoulder = plus(hip, POSED.trunk, at(0, 0, 1));
  const headTop = plus(midShoulder, POSED.headNeck, at(0, 0, 1));
  const arm = (which: 'lower' | 'top') => {
    const side = sides[which];
    const shoulder = plus(midShoulder, (side * POSED.shouldersApart) / 2, at(0, 1, 0));
    const hand = arms(shoulder, side);
    const links = { first: POSED.upperArm, second: POSED.forearmToGrip, bend: at(-1, side * 0.3, 0) };
    return { shoulder, hand, elbow: twoLink(shoulder, hand, links).middle };
  };
  const [lower, top] = [arm('lower'), arm('top')];
  return {
    kneelingHip: knelt.hip,
    kneelingKnee: knelt.knee,
    kneeContact: plus(knelt.knee, -KNEE_OVER_FLOOR, at(0, 0, 1)),
    kneelingAnkle: knelt.ankle,
    rearHeel: knelt.heel,
    rearBall: knelt.ball,
    rearToe: knelt.toe,
    frontHip: front.hip,
    frontKnee: front.knee,
    frontAnkle: front.ankle,
    frontHeel: front.heel,
    frontBall: front.ball,
    frontToe: front.toe,
    midHip: hip,
    midShoulder,
    neck: plus(midShoulder, 0.1, at(0, 0, 1)),
    headCentre: plus(midShoulder, 0.23, at(0, 0, 1)),
    headTop,
    lowerShoulder: lower.shoulder,
    lowerElbow: lower.elbow,
    lowerHand: lower.hand,
    topShoulder: top.shoulder,
    topElbow: top.elbow,
    topHand: top.hand,
  };
}
