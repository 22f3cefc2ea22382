import type { FittingCoordinate } from '../document/coordinates.ts';

/** What moves when a coordinate changes, as sentences name it: the end of a message's key. */
export type MovedPart =
  | 'kneePad'
  | 'recess'
  | 'rearRest'
  | 'frontFoot'
  | 'toes'
  | 'wedge'
  | 'paddle'
  | 'blade'
  | 'lowerHand';

/** How it moves: the end of a message's key. */
export type Movement =
  | 'aft'
  | 'forward'
  | 'out'
  | 'in'
  | 'kneeling-side'
  | 'off-side'
  | 'higher'
  | 'lower'
  | 'turned-more'
  | 'turned-less'
  | 'toes-out'
  | 'toes-in'
  | 'steeper'
  | 'flatter'
  | 'longer'
  | 'shorter'
  | 'down'
  | 'up';

/** The part, how it moves when the coordinate grows, and when it falls. */
type Moves = readonly [part: MovedPart, more: Movement, less: Movement];

/** Each coordinate's movement; across the boat it is given by side. */
export const MOVES: Readonly<Record<FittingCoordinate, Moves>> = {
  'kneePad.aftM': ['kneePad', 'aft', 'forward'],
  'kneePad.outM': ['kneePad', 'out', 'in'],
  'kneePad.heightM': ['kneePad', 'higher', 'lower'],
  'kneePad.recessTurnDeg': ['recess', 'turned-more', 'turned-less'],
  'rearRest.aftM': ['rearRest', 'aft', 'forward'],
  'rearRest.outM': ['rearRest', 'kneeling-side', 'off-side'],
  'rearRest.heightM': ['rearRest', 'higher', 'lower'],
  'rearRest.turnDeg': ['rearRest', 'turned-more', 'turned-less'],
  'frontFoot.forwardM': ['frontFoot', 'forward', 'aft'],
  'frontFoot.outM': ['frontFoot', 'kneeling-side', 'off-side'],
  'frontFoot.heightM': ['frontFoot', 'higher', 'lower'],
  'frontFoot.toeOutDeg': ['toes', 'toes-out', 'toes-in'],
  'frontFoot.wedgeDeg': ['wedge', 'steeper', 'flatter'],
  'paddle.lengthM': ['paddle', 'longer', 'shorter'],
  'paddle.bladeLengthM': ['blade', 'longer', 'shorter'],
  'paddle.lowerHandM': ['lowerHand', 'down', 'up'],
};
