import type { FittingCoordinate } from '../document/coordinates.ts';
import type { BoatSign, BodyPlace, Observation } from './observation.ts';

/** Likely causes of what is felt or seen, as a coach would say them; their sentences are in the catalogue of messages. */
export type Cause =
  | 'kneeCarriesMuch'
  | 'padHardOrNarrow'
  | 'recessTwists'
  | 'padTooLow'
  | 'restTooHigh'
  | 'restTooLow'
  | 'restTooClose'
  | 'restTooFar'
  | 'strapTight'
  | 'toesCarryMuch'
  | 'frontFootTooClose'
  | 'frontFootTooFar'
  | 'frontFootSlope'
  | 'leansFar'
  | 'weightTooFarForward'
  | 'weightTooFarBack'
  | 'weightOffCentre'
  | 'sitsTooHigh'
  | 'standsNarrow'
  | 'padSmooth'
  | 'kneeCarriesLittle'
  | 'floorSlippery';

/** A coordinate that a coach would move for it, and which way; 0 where the model says which. */
export interface Lever {
  readonly coordinate: FittingCoordinate;
  /** +1 raises the coordinate, −1 lowers it, 0 tries both ways. */
  readonly direction: 1 | -1 | 0;
  /** 2: the first thing to try; 1: what comes after it. */
  readonly weight: 1 | 2;
}

/** What a sign most likely comes from, and what is moved for it. */
export interface CausesAndLevers {
  /** What may lie behind it, the likeliest first. */
  readonly causes: readonly Cause[];
  /** What a coach would move, the first to try first. */
  readonly levers: readonly Lever[];
}

/** A coordinate and the way to move it. */
type Listed = readonly [coordinate: FittingCoordinate, direction: Lever['direction']];

/** Causes with their levers: those to try first, then the others. */
function entry(causes: readonly Cause[], first: readonly Listed[], then: readonly Listed[]): CausesAndLevers {
  const lever =
    (weight: Lever['weight']) =>
    ([coordinate, direction]: Listed): Lever => ({ coordinate, direction, weight });
  return { causes, levers: [...first.map(lever(2)), ...then.map(lever(1))] };
}

/** Common coaching practice, no source: place on the body → causes → levers, the first to try first. */
const OF_BODY: Readonly<Record<BodyPlace, CausesAndLevers>> = {
  kneelingKnee: entry(
    ['padHardOrNarrow', 'kneeCarriesMuch', 'recessTwists'],
    [
      ['kneePad.outM', 0],
      ['kneePad.recessTurnDeg', 0],
    ],
    [
      ['kneePad.heightM', 0],
      ['rearRest.outM', 0],
      ['frontFoot.outM', 0],
    ],
  ),
  kneelingShin: entry(
    ['padHardOrNarrow', 'recessTwists', 'restTooHigh'],
    [
      ['rearRest.heightM', 0],
      ['kneePad.recessTurnDeg', 0],
      ['rearRest.outM', 0],
    ],
    [['kneePad.outM', 0]],
  ),
  frontOfThigh: entry(
    ['padTooLow', 'restTooHigh'],
    [
      ['kneePad.heightM', 1],
      ['rearRest.heightM', -1],
    ],
    [
      ['rearRest.aftM', 1],
      ['kneePad.aftM', 0],
    ],
  ),
  kneelingHip: entry(
    ['padTooLow', 'leansFar'],
    [
      ['kneePad.heightM', 1],
      ['kneePad.aftM', -1],
    ],
    [['frontFoot.forwardM', 0]],
  ),
  lowerBack: entry(
    ['leansFar', 'padTooLow', 'frontFootTooClose'],
    [
      ['kneePad.heightM', 1],
      ['frontFoot.forwardM', 1],
    ],
    [
      ['paddle.lengthM', 1],
      ['frontFoot.heightM', -1],
    ],
  ),
  frontKnee: entry(
    ['frontFootTooClose', 'padTooLow'],
    [
      ['frontFoot.forwardM', 1],
      ['kneePad.aftM', 1],
    ],
    [
      ['kneePad.heightM', 1],
      ['frontFoot.toeOutDeg', 0],
    ],
  ),
  frontHip: entry(
    ['frontFootTooClose', 'padTooLow'],
    [
      ['frontFoot.forwardM', 1],
      ['kneePad.heightM', 1],
    ],
    [
      ['frontFoot.heightM', -1],
      ['kneePad.aftM', 1],
    ],
  ),
  rearToes: entry(
    ['restTooClose', 'strapTight', 'toesCarryMuch'],
    [
      ['rearRest.aftM', 1],
      ['rearRest.heightM', 0],
    ],
    [
      ['rearRest.outM', 0],
      ['rearRest.turnDeg', 0],
      ['kneePad.outM', 0],
    ],
  ),
  rearAnkle: entry(
    ['restTooLow', 'restTooFar', 'strapTight'],
    [
      ['rearRest.heightM', 1],
      ['rearRest.aftM', 0],
    ],
    [
      ['rearRest.turnDeg', 0],
      ['kneePad.heightM', 0],
    ],
  ),
  frontFoot: entry(
    ['frontFootSlope', 'frontFootTooFar'],
    [
      ['frontFoot.wedgeDeg', 0],
      ['frontFoot.forwardM', 0],
    ],
    [
      ['frontFoot.toeOutDeg', 0],
      ['frontFoot.outM', 0],
      ['kneePad.outM', 0],
    ],
  ),
};

/** What to look at where a boat pulls to either side. */
const OFF_CENTRE = entry(
  ['weightOffCentre'],
  [['kneePad.outM', 0]],
  [
    ['frontFoot.outM', 0],
    ['rearRest.outM', 0],
  ],
);

/** Common coaching practice, no source: sign of the boat → causes → levers. */
const OF_BOAT: Readonly<Record<BoatSign, CausesAndLevers>> = {
  bowDigs: entry(
    ['weightTooFarForward'],
    [['kneePad.aftM', 1]],
    [
      ['frontFoot.forwardM', -1],
      ['rearRest.aftM', 1],
    ],
  ),
  bowHigh: entry(
    ['weightTooFarBack'],
    [['kneePad.aftM', -1]],
    [
      ['frontFoot.forwardM', 1],
      ['rearRest.aftM', -1],
    ],
  ),
  pullsLeft: OFF_CENTRE,
  pullsRight: OFF_CENTRE,
  tippy: entry(['sitsTooHigh', 'standsNarrow'], [['kneePad.heightM', -1]], [['frontFoot.outM', -1]]),
  slidesOnPad: entry(
    ['padSmooth', 'kneeCarriesLittle', 'restTooFar'],
    [
      ['rearRest.aftM', -1],
      ['kneePad.outM', 0],
    ],
    [
      ['kneePad.heightM', -1],
      ['kneePad.recessTurnDeg', 0],
    ],
  ),
  kneeLifts: entry(
    ['kneeCarriesLittle', 'padTooLow'],
    [['kneePad.outM', 0]],
    [
      ['kneePad.heightM', 0],
      ['frontFoot.outM', 0],
    ],
  ),
  rearFootLifts: entry(
    ['restTooFar', 'restTooLow'],
    [
      ['rearRest.aftM', -1],
      ['rearRest.heightM', 1],
    ],
    [
      ['kneePad.outM', 0],
      ['rearRest.outM', 0],
    ],
  ),
  frontFootSlips: entry(
    ['floorSlippery', 'frontFootSlope'],
    [
      ['frontFoot.wedgeDeg', 1],
      ['frontFoot.forwardM', -1],
    ],
    [['frontFoot.outM', 0]],
  ),
};

/** What an observation most likely comes from, and what a coach moves for it. */
export function causesAndLevers(observation: Observation): CausesAndLevers {
  return observation.kind === 'body' ? OF_BODY[observation.place] : OF_BOAT[observation.sign];
}

/** How much a move of a coordinate belongs to an observation: 2, 1, or 0 where no coach would name it or it goes the other way. */
export function leverWeight(
  observation: Observation,
  { coordinate, by }: { coordinate: FittingCoordinate; by: number },
): 0 | 1 | 2 {
  const lever = causesAndLevers(observation).levers.find((one) => one.coordinate === coordinate);
  return lever && (lever.direction === 0 || lever.direction === Math.sign(by)) ? lever.weight : 0;
}
