import type { Seat } from '../document/seat-schema.ts';
import { otherSide } from '../frame/mirror.ts';
import type { FigurePoint } from '../posture/stance.ts';
import type { Pixel } from './camera.ts';

/** A landmark of a pose model: pixels, and how sure the model is that it can be seen (0 to 1). */
export interface Landmark extends Pixel {
  readonly visibility: number;
}

/** A joint that a pose model proposes, to be confirmed by a person. */
export interface ProposedJoint {
  /** Which joint of the model it would be. */
  readonly joint: FigurePoint;
  /** Where it is proposed. */
  readonly pixel: Pixel;
  /** 0 to 1, as the pose model has it. */
  readonly confidence: number;
}

/** Landmarks of one side, by their numbers in the topology of 33 points that BlazePose has (left, right). */
const ARM = { shoulder: [11, 12], elbow: [13, 14], hand: [19, 20] } as const;
const LEG = { hip: [23, 24], knee: [25, 26], ankle: [27, 28], toe: [31, 32] } as const;
/** Landmarks that the pose model tells of one person. */
const LANDMARKS = 33;
/** A landmark that is less sure than this is not proposed. */
const LEAST_VISIBILITY = 0.3;

/** A joint and its landmark on the body's left. */
type Named = readonly [joint: FigurePoint, left: number];

/** The kneeling leg. */
const KNEELING: readonly Named[] = [
  ['kneelingHip', LEG.hip[0]],
  ['kneelingKnee', LEG.knee[0]],
  ['kneelingAnkle', LEG.ankle[0]],
];
/** The leg with its foot forward. */
const FRONT: readonly Named[] = [
  ['frontHip', LEG.hip[0]],
  ['frontKnee', LEG.knee[0]],
  ['frontAnkle', LEG.ankle[0]],
  ['frontToe', LEG.toe[0]],
];
/** The arm of the lower hand. */
const LOWER: readonly Named[] = [
  ['lowerShoulder', ARM.shoulder[0]],
  ['lowerElbow', ARM.elbow[0]],
  ['lowerHand', ARM.hand[0]],
];
/** The arm of the top hand. */
const TOP: readonly Named[] = [
  ['topShoulder', ARM.shoulder[0]],
  ['topElbow', ARM.elbow[0]],
  ['topHand', ARM.hand[0]],
];

/**
 * Joints of a kneeling paddler from the landmarks of a pose model, pixels. A pose model takes left for right, from behind or where
 * legs cross: with the plan's figure in the picture (`plan`, pixels) legs and arms are each given the side that lies nearer to it.
 * Empty where the model found nobody.
 */
export function jointsFromLandmarks(
  landmarks: readonly Landmark[],
  seat: Pick<Seat, 'side' | 'kneels'>,
  plan: Readonly<Partial<Record<FigurePoint, Pixel>>> | null = null,
): ProposedJoint[] {
  if (landmarks.length < LANDMARKS) return [];
  const kneels = seat.kneels ?? seat.side;
  const pick = (near: readonly Named[], far: readonly Named[], side: 'left' | 'right') => {
    const plain = [...sided(landmarks, near, side), ...sided(landmarks, far, otherSide(side))];
    const swapped = [...sided(landmarks, near, otherSide(side)), ...sided(landmarks, far, side)];
    return plan && distance(swapped, plan) < distance(plain, plan) ? swapped : plain;
  };
  const found = [...pick(KNEELING, FRONT, kneels), ...pick(LOWER, TOP, seat.side), ...middle(landmarks)];
  return found.filter(({ confidence }) => confidence >= LEAST_VISIBILITY);
}

/** Joints of one side. */
function sided(
  landmarks: readonly Landmark[],
  names: readonly Named[],
  side: 'left' | 'right',
): ProposedJoint[] {
  return names.map(([joint, left]) => {
    const { u, v, visibility } = landmarks[side === 'left' ? left : left + 1]!;
    return { joint, pixel: { u, v }, confidence: visibility };
  });
}

/** The middle of the shoulders, as sure as the less sure of the two. */
function middle(landmarks: readonly Landmark[]): ProposedJoint[] {
  const [a, b] = [landmarks[ARM.shoulder[0]]!, landmarks[ARM.shoulder[1]]!];
  const pixel = { u: (a.u + b.u) / 2, v: (a.v + b.v) / 2 };
  return [{ joint: 'midShoulder', pixel, confidence: Math.min(a.visibility, b.visibility) }];
}

/** Sum of distances between proposed joints and those of the plan, pixels: it tells left from right. */
function distance(
  joints: readonly ProposedJoint[],
  plan: Readonly<Partial<Record<FigurePoint, Pixel>>>,
): number {
  return joints.reduce((sum, { joint, pixel }) => {
    const at = plan[joint];
    return at ? sum + Math.hypot(at.u - pixel.u, at.v - pixel.v) : sum;
  }, 0);
}
