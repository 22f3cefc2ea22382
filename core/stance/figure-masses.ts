import type { BodyEstimate, BodySegment } from '../body/body.ts';
import type { Seat } from '../fit/seat-schema.ts';
import { along, type Vec3 } from '../frame/vec3.ts';
import type { Contacts } from './contacts.ts';
import type { Figure } from './figure.ts';
import { fixed, type Jet, type JetVec, valueOfVec } from './jet.ts';

/** Where along the paddle its own centre lies, from the grip (a blade is heavier than the shaft; estimate). */
const PADDLE_CENTRE_SHARE = 0.58;

/** Joints of the figure that move with the unknowns and carry mass. */
const MOVING = [
  'headTop',
  'midShoulder',
  'midHip',
  'kneelingHip',
  'frontHip',
  'frontKnee',
  'lowerShoulder',
  'lowerElbow',
  'lowerHand',
  'topShoulder',
  'topElbow',
  'topHand',
] as const;
/** Joints that the fittings hold. */
const HELD = ['knee', 'rearAnkle', 'rearHeel', 'rearBall', 'frontAnkle', 'frontHeel', 'frontToe'] as const;

type Moving = (typeof MOVING)[number];
type Held = (typeof HELD)[number];
type Joint = Moving | Held;

/** One mass between two joints: kilograms, and how far its centre lies from the first to the second. */
export interface Spanned {
  readonly segment: string;
  readonly massKg: number;
  readonly from: Joint;
  readonly to: Joint;
  readonly share: number;
}

/** Every segment of body and paddle between its joints; the endpoints are those of `body/segment-masses.ts`. */
export function massesBetweenJoints(body: BodyEstimate, seat: Seat): Spanned[] {
  const { forearm, hand } = body.lengths;
  const wrist = forearm.value / (forearm.value + hand.value);
  const span = (segment: string, kind: BodySegment, from: Joint, to: Joint): Spanned => {
    const { massKg, centreFraction } = body.segments[kind];
    return { segment, massKg, from, to, share: centreFraction };
  };
  const forearmOf = (segment: string, elbow: Joint, grip: Joint) => {
    const whole = span(segment, 'forearm', elbow, grip);
    return { ...whole, share: whole.share * wrist };
  };
  const handOf = (segment: string, elbow: Joint, grip: Joint) => {
    const whole = span(segment, 'hand', elbow, grip);
    return { ...whole, share: wrist + whole.share * (1 - wrist) };
  };
  return [
    span('headNeck', 'headNeck', 'midShoulder', 'headTop'),
    span('trunk', 'trunk', 'midShoulder', 'midHip'),
    span('lowerUpperArm', 'upperArm', 'lowerShoulder', 'lowerElbow'),
    span('topUpperArm', 'upperArm', 'topShoulder', 'topElbow'),
    forearmOf('lowerForearm', 'lowerElbow', 'lowerHand'),
    forearmOf('topForearm', 'topElbow', 'topHand'),
    handOf('lowerHand', 'lowerElbow', 'lowerHand'),
    handOf('topHand', 'topElbow', 'topHand'),
    span('kneelingThigh', 'thigh', 'kneelingHip', 'knee'),
    span('frontThigh', 'thigh', 'frontHip', 'frontKnee'),
    span('kneelingShank', 'shank', 'knee', 'rearAnkle'),
    span('frontShank', 'shank', 'frontKnee', 'frontAnkle'),
    rearFoot(span('rearFoot', 'foot', 'rearHeel', 'rearBall'), body),
    span('frontFoot', 'foot', 'frontHeel', 'frontToe'),
    {
      segment: 'paddle',
      massKg: seat.paddle.massKg,
      from: 'topHand',
      to: 'lowerHand',
      share: (PADDLE_CENTRE_SHARE * seat.paddle.lengthM) / seat.paddle.lowerHandM,
    },
  ];
}

/** The rear foot's toes are tucked: its centre, given from heel to toe, is laid off from heel to ball. */
function rearFoot(foot: Spanned, { lengths }: BodyEstimate): Spanned {
  return { ...foot, share: (foot.share * lengths.footLength.value) / lengths.heelToBall.value };
}

/** The common centre as fixed shares of the joints: what the held joints bring, and the weight of each moving one. */
export interface CentreWeights {
  readonly massKg: number;
  readonly held: Vec3;
  readonly moving: readonly { readonly joint: Moving; readonly weight: number }[];
}

/** Gathers segment masses into one weight for each joint, so that the centre of mass is a single weighted sum. */
export function centreWeights(masses: readonly Spanned[], contacts: Contacts): CentreWeights {
  const massKg = masses.reduce((sum, m) => sum + m.massKg, 0);
  const weights = new Map<Joint, number>();
  const add = (joint: Joint, weight: number) => weights.set(joint, (weights.get(joint) ?? 0) + weight);
  for (const { massKg: mass, from, to, share } of masses) {
    add(from, ((1 - share) * mass) / massKg);
    add(to, (share * mass) / massKg);
  }
  let held: Vec3 = { x: 0, y: 0, z: 0 };
  for (const joint of HELD) {
    const { x, y, z } = contacts[joint];
    const w = weights.get(joint) ?? 0;
    held = { x: held.x + w * x, y: held.y + w * y, z: held.z + w * z };
  }
  return { massKg, held, moving: MOVING.map((joint) => ({ joint, weight: weights.get(joint) ?? 0 })) };
}

/** Centre of mass of body and paddle with its derivatives, paddler's frame, metres. */
export function centreOfFigure(figure: Figure, { held, moving }: CentreWeights): JetVec {
  const sum = (axis: 'x' | 'y' | 'z'): Jet => {
    let { v, a, b, c, d, e } = fixed(held[axis]);
    for (const { joint, weight } of moving) {
      const part = figure[joint][axis];
      v += weight * part.v;
      a += weight * part.a;
      b += weight * part.b;
      c += weight * part.c;
      d += weight * part.d;
      e += weight * part.e;
    }
    return { v, a, b, c, d, e };
  };
  return { x: sum('x'), y: sum('y'), z: sum('z') };
}

/** Where each mass lies in a figure, paddler's frame, metres. */
export function placedMasses(masses: readonly Spanned[], figure: Figure, contacts: Contacts) {
  const at = (joint: Joint): Vec3 =>
    joint in contacts ? contacts[joint as Held] : valueOfVec(figure[joint as Moving]);
  return masses.map(({ segment, massKg, from, to, share }) => ({
    segment,
    massKg,
    centre: along(at(from), at(to), share),
  }));
}
