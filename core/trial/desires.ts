import type { QuantityId } from '../evaluation/quantities.ts';
import type { BoatSign, BodyPlace, Observation } from './observation.ts';

const deg = (angle: number) => (angle * Math.PI) / 180;

/** A quantity that should move, which way, and how much is a clear answer, in its SI unit. */
export interface Desire {
  readonly quantity: QuantityId;
  /** Greater, smaller, or nearer to nought from whichever side. */
  readonly direction: 1 | -1 | 'to nought';
  readonly clear: number;
  /** The coaching reason, in a half-sentence. */
  readonly reason: string;
}

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
  kneelingKnee: [
    wish('kneeShare', -1, 0.04, 'less weight on the knee'),
    wish('padPressure', -1, 8e3, 'less pressure under the knee'),
  ],
  kneelingShin: [
    wish('padPressure', -1, 8e3, 'less pressure on the pad'),
    wish('kneeShare', -1, 0.04, 'less weight on the pad'),
  ],
  frontOfThigh: [
    wish('hipFlexorStretch', -1, deg(5), 'less stretch over the front of the thigh'),
    wish('kneelingKnee', 1, deg(5), 'a more open kneeling knee'),
  ],
  kneelingHip: [wish('kneelingHip', -1, deg(5), 'the hip bent back less')],
  lowerBack: [
    wish('trunkPitch', -1, deg(4), 'the trunk more upright'),
    wish('frontHip', 1, deg(6), 'more room in the front hip'),
  ],
  frontKnee: [wish('frontKnee', 1, deg(5), 'a more open front knee')],
  frontHip: [wish('frontHip', 1, deg(6), 'more room in the front hip')],
  rearToes: [wish('rearShare', -1, 0.02, 'less weight on the toes')],
  rearAnkle: [wish('rearAnkle', -1, deg(5), 'the rear foot pointed less')],
  frontFoot: [wish('frontShare', -1, 0.04, 'less weight on the front foot')],
};

const LEVEL = wish('offCentre', 'to nought', 0.006, 'the weight over the centreline, the boat level');

/** What each sign of the boat asks for. Common coaching practice, no source. */
const OF_BOAT: Readonly<Record<BoatSign, readonly Desire[]>> = {
  bowDigs: [
    wish('trimCatch', 1, 0.008, 'the bow higher at the catch'),
    wish('trimRest', 1, 0.008, 'the bow higher'),
  ],
  bowHigh: [wish('trimRest', -1, 0.008, 'the bow lower')],
  // Which way a heeled hull turns depends on its shape and trim; level, it has no reason to turn either way.
  pullsLeft: [LEVEL],
  pullsRight: [LEVEL],
  tippy: [wish('transverseGm', 1, 0.01, 'the weight lower')],
  slidesOnPad: [
    wish('kneelingKnee', -1, deg(5), 'the kneeling knee less open'),
    wish('kneeShare', 1, 0.04, 'more weight on the knee'),
  ],
  kneeLifts: [wish('kneeShare', 1, 0.04, 'more weight on the knee')],
  rearFootLifts: [wish('rearShare', 1, 0.02, 'more weight on the rear foot')],
  frontFootSlips: [wish('frontShare', 1, 0.04, 'more weight on the front foot')],
};

/** What an observation asks for, the main wish first. */
export function desiresOf(observation: Observation): readonly Desire[] {
  return observation.kind === 'body' ? OF_BODY[observation.place] : OF_BOAT[observation.sign];
}
