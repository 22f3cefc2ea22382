import type { BodyEstimate, BodySegment } from '../body/body.ts';
import type { Seat } from '../document/seat-schema.ts';
import { along, type Vec3 } from '../frame/vec3.ts';
import { addTimes, blank, copyTo, type MutableVec3, scaleTo } from '../frame/vec3-in-place.ts';
import { armsSlopeTo, blankArmsSlope, type MutableArmsSlope } from './arms.ts';
import type { Contacts } from './contacts.ts';
import type { SolverFigure } from './figure.ts';
import type { FigureSlope } from './figure-slopes.ts';
import type { FigurePoint } from './stance.ts';

/** Where along the paddle its own centre lies, from the grip (a blade is heavier than the shaft; estimate). */
const PADDLE_CENTRE_SHARE = 0.58;

/** One mass between two points of the figure: kilograms, and how far its centre lies from the first to the second. */
export interface Spanned {
  readonly segment: string;
  /** Kilograms, one side's where there are two. */
  readonly massKg: number;
  /** First point of the segment. */
  readonly from: FigurePoint;
  /** Second point. */
  readonly to: FigurePoint;
  /** 0 at the first point, 1 at the second. */
  readonly share: number;
}

/**
 * Every segment of body and paddle between its joints: kilograms, and shares from the first joint. The endpoints are those of
 * `body/segment-masses.ts`. Shares above 1 lie beyond the second joint, as the blade does beyond the lower hand. Fifteen
 * masses: head, trunk, two of each arm and leg segment, and the paddle. The same list while body and paddle are the same objects.
 */
export function massesBetweenJoints(
  body: BodyEstimate,
  { paddle }: Pick<Seat, 'paddle'>,
): readonly Spanned[] {
  const before = known.get(body);
  if (before?.paddle === paddle) return before.masses;
  const masses = newMasses(body, paddle);
  known.set(body, { paddle, masses });
  return masses;
}

/** The masses of each body that were asked for last. */
const known = new WeakMap<BodyEstimate, { paddle: Seat['paddle']; masses: readonly Spanned[] }>();

function newMasses({ lengths, segments }: BodyEstimate, paddle: Seat['paddle']): Spanned[] {
  const { forearm, hand, footLength, heelToBall } = lengths;
  const wrist = forearm.value / (forearm.value + hand.value);
  const span = (segment: string, kind: BodySegment, [from, to]: [FigurePoint, FigurePoint]): Spanned => {
    const { massKg, centreFraction } = segments[kind];
    return { segment, massKg, from, to, share: centreFraction };
  };
  const armOf = (which: 'lower' | 'top'): Spanned[] => {
    const ends: [FigurePoint, FigurePoint] = [`${which}Elbow`, `${which}Hand`];
    const upper = span(`${which}UpperArm`, 'upperArm', [`${which}Shoulder`, `${which}Elbow`]);
    const fore = span(`${which}Forearm`, 'forearm', ends);
    const fist = span(`${which}Hand`, 'hand', ends);
    return [
      upper,
      { ...fore, share: fore.share * wrist },
      { ...fist, share: wrist + fist.share * (1 - wrist) },
    ];
  };
  const rearFoot = span('rearFoot', 'foot', ['rearHeel', 'rearBall']);
  const { massKg, lengthM, lowerHandM } = paddle;
  const paddleShare = (PADDLE_CENTRE_SHARE * lengthM) / lowerHandM;
  return [
    span('headNeck', 'headNeck', ['midShoulder', 'headTop']),
    span('trunk', 'trunk', ['midShoulder', 'midHip']),
    ...armOf('lower'),
    ...armOf('top'),
    span('kneelingThigh', 'thigh', ['kneelingHip', 'kneelingKnee']),
    span('frontThigh', 'thigh', ['frontHip', 'frontKnee']),
    span('kneelingShank', 'shank', ['kneelingKnee', 'kneelingAnkle']),
    span('frontShank', 'shank', ['frontKnee', 'frontAnkle']),
    // The table runs from heel to toe. The rear foot's toes are tucked, so its share counts from heel to ball.
    { ...rearFoot, share: (rearFoot.share * footLength.value) / heelToBall.value },
    span('frontFoot', 'foot', ['frontHeel', 'frontToe']),
    { segment: 'paddle', massKg, from: 'topHand', to: 'lowerHand', share: paddleShare },
  ];
}

/** Weights of the joints in the common centre: share × mass over the whole, summed for each joint. */
interface JointWeights {
  /** Body and paddle together. */
  readonly massKg: number;
  /** Shares of the joints; no unit. */
  readonly of: Readonly<Partial<Record<FigurePoint, number>>>;
  /** Share that hangs on mid-shoulder; no unit. From there the hands do not move. */
  readonly upper: number;
}

/** The common centre as fixed shares of the joints, so that it is one weighted sum. */
export interface CentreWeights extends JointWeights {
  /** Sum of share × place of the joints that the fittings hold, metres. */
  readonly held: Vec3;
}

/** Joints that the fittings hold, by their names among the figure's points. */
const HELD: readonly [FigurePoint, keyof Contacts][] = [
  ['kneelingKnee', 'knee'],
  ['kneelingAnkle', 'rearAnkle'],
  ['rearHeel', 'rearHeel'],
  ['rearBall', 'rearBall'],
  ['frontAnkle', 'frontAnkle'],
  ['frontHeel', 'frontHeel'],
  ['frontToe', 'frontToe'],
];

const HANGING: readonly FigurePoint[] = [
  'headTop',
  'midShoulder',
  'lowerShoulder',
  'lowerElbow',
  'lowerHand',
  'topShoulder',
  'topElbow',
  'topHand',
];

/**
 * Gathers segment masses into one weight for each joint, so that the centre of mass is a weighted sum of a dozen joints instead of
 * fifteen centres. The fittings' own joints are summed once, here.
 */
export function centreWeights(masses: readonly Spanned[], contacts: Contacts): CentreWeights {
  const { massKg, of, upper } = jointWeights(masses);
  const held = blank();
  for (const [point, contact] of HELD) addTimes(held, of[point] ?? 0, contacts[contact] as Vec3);
  return { massKg, held, of, upper };
}

/** The weights of a list of masses, made once. */
const weighed = new WeakMap<readonly Spanned[], JointWeights>();

function jointWeights(masses: readonly Spanned[]): JointWeights {
  const before = weighed.get(masses);
  if (before) return before;
  let massKg = 0;
  for (const mass of masses) massKg += mass.massKg;
  const of: Partial<Record<FigurePoint, number>> = {};
  for (const { massKg: mass, from, to, share } of masses) {
    of[from] = (of[from] ?? 0) + ((1 - share) * mass) / massKg;
    of[to] = (of[to] ?? 0) + (share * mass) / massKg;
  }
  let upper = 0;
  for (const point of HANGING) upper += of[point] ?? 0;
  const weights = { massKg, of, upper };
  weighed.set(masses, weights);
  return weights;
}

/**
 * Centre of mass of body and paddle, paddler's frame, metres; `headNeck` is that length in metres. The same as the mean of the
 * segments' own centres to 1e-10 (tests/core/posture/figure-masses.test.ts).
 */
export function centreOf(figure: SolverFigure, weighing: Weighing): Vec3 {
  return centreTo(blank(), figure, weighing);
}

/** The weights of joints, with the length of head and neck, metres. */
export interface Weighing {
  readonly weights: CentreWeights;
  /** From mid-shoulder to the crown. */
  readonly headNeck: number;
}

/** The same, written into `into`. */
export function centreTo(
  into: MutableVec3,
  { kneelingHip, frontHip, midHip, midShoulder, trunk, leg, arms }: SolverFigure,
  { weights: { held, of, upper }, headNeck }: Weighing,
): MutableVec3 {
  copyTo(into, held);
  addTimes(into, of.kneelingHip ?? 0, kneelingHip);
  addTimes(into, of.frontHip ?? 0, frontHip);
  addTimes(into, of.midHip ?? 0, midHip);
  addTimes(into, of.frontKnee ?? 0, leg.middle);
  addTimes(into, upper, midShoulder);
  addTimes(into, (of.headTop ?? 0) * headNeck, trunk.up);
  addTimes(into, of.lowerShoulder ?? 0, arms.lowerShoulder);
  addTimes(into, of.topShoulder ?? 0, arms.topShoulder);
  addTimes(into, of.lowerElbow ?? 0, arms.lower.middle);
  addTimes(into, of.topElbow ?? 0, arms.top.middle);
  addTimes(into, of.lowerHand ?? 0, arms.hold.lowerHand);
  return addTimes(into, of.topHand ?? 0, arms.hold.topHand);
}

/** Room for the slope of a centre of mass, and of the arms on the way. */
export interface CentreSlope {
  /** Metres per radian of the unknown. */
  readonly centre: MutableVec3;
  readonly arms: MutableArmsSlope;
}

/** Room for a slope of the centre of mass. */
export function blankCentreSlope(): CentreSlope {
  return { centre: blank(), arms: blankArmsSlope() };
}

/**
 * How the centre of mass moves with one unknown, metres per radian, written over an earlier one. Where the trunk does not turn,
 * head and arms only follow mid-shoulder.
 */
export function centreSlopeTo(
  { centre, arms: moved }: CentreSlope,
  { figure: { arms }, slope }: { figure: SolverFigure; slope: FigureSlope },
  { weights: { of, upper }, headNeck }: Weighing,
): MutableVec3 {
  const { trunkUp } = slope;
  scaleTo(centre, slope.kneelingHip, of.kneelingHip ?? 0);
  addTimes(centre, of.frontHip ?? 0, slope.frontHip);
  addTimes(centre, of.midHip ?? 0, slope.midHip);
  addTimes(centre, of.frontKnee ?? 0, slope.leg.middle);
  addTimes(centre, upper, slope.midShoulder);
  if (trunkUp.x === 0 && trunkUp.y === 0 && trunkUp.z === 0) return centre;
  armsSlopeTo(moved, arms, trunkUp);
  addTimes(centre, (of.headTop ?? 0) * headNeck, trunkUp);
  addTimes(centre, of.lowerShoulder ?? 0, moved.lowerShoulder);
  addTimes(centre, of.topShoulder ?? 0, moved.topShoulder);
  addTimes(centre, of.lowerElbow ?? 0, moved.lower.middle);
  return addTimes(centre, of.topElbow ?? 0, moved.top.middle);
}

/** Where each mass lies between the points of a figure, metres in the points' own frame: boat or paddler's, as given. */
export function placedMasses(masses: readonly Spanned[], points: Readonly<Record<FigurePoint, Vec3>>) {
  return masses.map(({ segment, massKg, from, to, share }) => ({
    segment,
    massKg,
    centre: along(points[from], points[to], share),
  }));
}
