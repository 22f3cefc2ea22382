import type { QuantityId } from '../evaluation/quantities.ts';
import type { BoatSign, BodyPlace, Observation } from './observation.ts';

/** Degrees as radians. */
const deg = (angle: number) => (angle * Math.PI) / 180;

/** A quantity that should move, which way, and how much is a clear answer, in its SI unit. */
export interface Desire {
  readonly quantity: QuantityId;
  /** Greater, smaller, or nearer to zero from whichever side. */
  readonly direction: 1 | -1 | 'to zero';
  /** A move of this size is clearly felt: SI, radians for angles. */
  readonly clear: number;
  /** The coaching reason: the message `desire.…` says it. */
  readonly reason: string;
}

/** A wish in one line. */
const wish = (
  quantity: QuantityId,
  direction: Desire['direction'],
  clear: number,
  reason: string,
): Desire => ({
  quantity,
  direction,
  clear,
  reason,
});

/** What each place on the body asks for. Common coaching practice, no source, read through this model's quantities. */
const OF_BODY: Readonly<Record<BodyPlace, readonly Desire[]>> = {
  kneelingKnee: [wish('kneeShare', -1, 0.04, 'knee-weight'), wish('padPressure', -1, 8e3, 'knee-pressure')],
  kneelingShin: [wish('padPressure', -1, 8e3, 'pad-pressure'), wish('kneeShare', -1, 0.04, 'pad-weight')],
  frontOfThigh: [
    wish('hipFlexorStretch', -1, deg(5), 'thigh-stretch'),
    wish('kneelingKnee', 1, deg(5), 'open-knee'),
  ],
  kneelingHip: [wish('kneelingHip', -1, deg(5), 'hip-back')],
  lowerBack: [wish('trunkPitch', -1, deg(4), 'trunk-upright'), wish('frontHip', 1, deg(6), 'front-hip')],
  frontKnee: [wish('frontKnee', 1, deg(5), 'front-knee')],
  frontHip: [wish('frontHip', 1, deg(6), 'front-hip')],
  rearToes: [wish('rearShare', -1, 0.02, 'toes-weight')],
  rearAnkle: [wish('rearAnkle', -1, deg(5), 'rear-pointed')],
  frontFoot: [wish('frontShare', -1, 0.04, 'front-weight')],
};

/** The centre of mass over the centreline; 6 mm is clearly felt. */
const LEVEL = wish('offCentre', 'to zero', 0.006, 'centred');

/** What each sign of the boat asks for. Common coaching practice, no source. */
const OF_BOAT: Readonly<Record<BoatSign, readonly Desire[]>> = {
  bowDigs: [wish('trimCatch', 1, 0.008, 'bow-catch'), wish('trimRest', 1, 0.008, 'bow-up')],
  bowHigh: [wish('trimRest', -1, 0.008, 'bow-down')],
  // Which way a heeled hull turns depends on its shape and trim; level, it has no reason to turn either way.
  pullsLeft: [LEVEL],
  pullsRight: [LEVEL],
  tippy: [wish('transverseGm', 1, 0.01, 'weight-lower')],
  slidesOnPad: [wish('kneelingKnee', -1, deg(5), 'knee-less-open'), wish('kneeShare', 1, 0.04, 'more-knee')],
  kneeLifts: [wish('kneeShare', 1, 0.04, 'more-knee')],
  rearFootLifts: [wish('rearShare', 1, 0.02, 'more-rear')],
  frontFootSlips: [wish('frontShare', 1, 0.04, 'more-front')],
};

/** What an observation asks for, the main wish first. */
export function desiresOf(observation: Observation): readonly Desire[] {
  return observation.kind === 'body' ? OF_BODY[observation.place] : OF_BOAT[observation.sign];
}
