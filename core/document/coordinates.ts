import { keysOf } from '../units/entries.ts';
/** What is set in a seat. Each may be locked. */
export const FITTINGS = ['kneePad', 'rearRest', 'frontFoot', 'paddle'] as const;
/** What is set: pad, rest, foot or paddle. */
export type Fitting = (typeof FITTINGS)[number];

/**
 * What a coordinate is measured along, in the paddler's frame: `forward` x, `across` y toward the kneeling side, `height`
 * z over the floorboard, `turn` about the vertical, `wedge` about the line across the boat, `paddle` along the shaft.
 */
export type CoordinateAxis = 'forward' | 'across' | 'height' | 'turn' | 'wedge' | 'paddle';

/** The constant properties of one coordinate of a fitting. Limits are in its own unit: metres or degrees. */
export interface Coordinate<F extends Fitting = Fitting> {
  /** Whose coordinate it is. */
  readonly fitting: F;
  /** Its field in the fitting's record. */
  readonly field: string;
  /** The unit of its field in documents. */
  readonly unit: 'm' | 'deg';
  /** What it moves along, or turns about. */
  readonly axis: CoordinateAxis;
  /** −1 where the coordinate grows against its axis: `aftM` grows aft. Turns count from x toward y. */
  readonly sign: 1 | -1;
  /** A drag and a proposal stop at multiples of this; Ctrl gives a tenth. */
  readonly snapStep: number;
  /** One press of an arrow key. */
  readonly arrowStep: number;
  /** What a file may hold. */
  readonly allowed: readonly [least: number, most: number];
  /** What a drag may reach where no hardware limits it. */
  readonly reachable: readonly [least: number, most: number];
  /** What suggestions and proposals stay between: what wood and a kneeling body allow (estimate). */
  readonly usual: readonly [least: number, most: number];
  /** One unit of cost when moves are compared: 1 cm of wood, 3° of turn (estimate). */
  readonly moveUnit: number;
  /** Farthest that a single suggestion moves it. */
  readonly longestMove: number;
}

/** What a row of the table gives; the rest follows from its unit. */
type Given<F extends Fitting> = Pick<
  Coordinate<F>,
  'fitting' | 'field' | 'axis' | 'allowed' | 'reachable' | 'usual'
> & { readonly sign?: 1 | -1 };

/** A coordinate in metres. */
function length<F extends Fitting>(given: Given<F>): Coordinate<F> {
  return {
    sign: 1,
    ...given,
    unit: 'm',
    snapStep: 0.001,
    arrowStep: 0.001,
    moveUnit: 0.01,
    longestMove: 0.15,
  };
}

/** A coordinate in degrees. */
function angle<F extends Fitting>(given: Given<F>): Coordinate<F> {
  return { sign: 1, ...given, unit: 'deg', snapStep: 0.5, arrowStep: 1, moveUnit: 3, longestMove: 30 };
}

/** The one table of coordinates, in the order in which they are measured. */
export const COORDINATES = {
  'kneePad.aftM': length({
    fitting: 'kneePad',
    field: 'aftM',
    axis: 'forward',
    sign: -1,
    allowed: [-3, 3],
    reachable: [-0.6, 1.2],
    usual: [-0.2, 0.6],
  }),
  'kneePad.outM': length({
    fitting: 'kneePad',
    field: 'outM',
    axis: 'across',
    allowed: [-1, 1],
    reachable: [-0.4, 0.4],
    usual: [-0.05, 0.2],
  }),
  'kneePad.heightM': length({
    fitting: 'kneePad',
    field: 'heightM',
    axis: 'height',
    allowed: [0, 0.5],
    reachable: [0.01, 0.4],
    usual: [0.04, 0.22],
  }),
  'kneePad.recessTurnDeg': angle({
    fitting: 'kneePad',
    field: 'recessTurnDeg',
    axis: 'turn',
    allowed: [-60, 60],
    reachable: [-60, 60],
    usual: [-5, 40],
  }),
  'rearRest.aftM': length({
    fitting: 'rearRest',
    field: 'aftM',
    axis: 'forward',
    sign: -1,
    allowed: [-3, 4],
    reachable: [-0.2, 1.8],
    usual: [0.1, 1.3],
  }),
  'rearRest.outM': length({
    fitting: 'rearRest',
    field: 'outM',
    axis: 'across',
    allowed: [-1, 1],
    reachable: [-0.5, 0.5],
    usual: [-0.25, 0.15],
  }),
  'rearRest.heightM': length({
    fitting: 'rearRest',
    field: 'heightM',
    axis: 'height',
    allowed: [0, 0.5],
    reachable: [0, 0.4],
    usual: [0.01, 0.15],
  }),
  'rearRest.turnDeg': angle({
    fitting: 'rearRest',
    field: 'turnDeg',
    axis: 'turn',
    allowed: [-90, 90],
    reachable: [-90, 90],
    usual: [-5, 45],
  }),
  'frontFoot.forwardM': length({
    fitting: 'frontFoot',
    field: 'forwardM',
    axis: 'forward',
    allowed: [-3, 4],
    reachable: [-0.4, 1.4],
    usual: [-0.3, 1],
  }),
  'frontFoot.outM': length({
    fitting: 'frontFoot',
    field: 'outM',
    axis: 'across',
    allowed: [-1, 1],
    reachable: [-0.5, 0.5],
    usual: [-0.25, 0],
  }),
  'frontFoot.heightM': length({
    fitting: 'frontFoot',
    field: 'heightM',
    axis: 'height',
    allowed: [0, 0.3],
    reachable: [0, 0.3],
    usual: [0, 0.15],
  }),
  'frontFoot.toeOutDeg': angle({
    fitting: 'frontFoot',
    field: 'toeOutDeg',
    axis: 'turn',
    sign: -1,
    allowed: [-90, 90],
    reachable: [-90, 90],
    usual: [-10, 35],
  }),
  'frontFoot.wedgeDeg': angle({
    fitting: 'frontFoot',
    field: 'wedgeDeg',
    axis: 'wedge',
    allowed: [-45, 60],
    reachable: [-45, 60],
    usual: [0, 25],
  }),
  'paddle.lengthM': length({
    fitting: 'paddle',
    field: 'lengthM',
    axis: 'paddle',
    allowed: [0.8, 2.6],
    reachable: [0.8, 2.6],
    usual: [0.9, 2.2],
  }),
  'paddle.bladeLengthM': length({
    fitting: 'paddle',
    field: 'bladeLengthM',
    axis: 'paddle',
    allowed: [0.2, 1.2],
    reachable: [0.2, 1.2],
    usual: [0.25, 0.9],
  }),
  'paddle.lowerHandM': length({
    fitting: 'paddle',
    field: 'lowerHandM',
    axis: 'paddle',
    allowed: [0.2, 2],
    reachable: [0.2, 2],
    usual: [0.3, 1.3],
  }),
} as const satisfies Readonly<Record<string, Coordinate>>;

/** The name of a coordinate: fitting and field, `kneePad.aftM`. */
export type FittingCoordinate = keyof typeof COORDINATES;

/** The coordinates of fittings that may be moved; each is a path in a seat. */
export const FITTING_COORDINATES = keysOf(COORDINATES);

/** The row of one coordinate. */
export function coordinateRow(coordinate: FittingCoordinate): Coordinate {
  return COORDINATES[coordinate];
}

/** Whether a coordinate is an angle, in degrees; else it is a length, in metres. */
export function isAngle(coordinate: FittingCoordinate): boolean {
  return COORDINATES[coordinate].unit === 'deg';
}

/** The coordinates of one fitting, in the order in which they are measured. */
export function coordinatesOfFitting(fitting: Fitting): readonly FittingCoordinate[] {
  return FITTING_COORDINATES.filter((coordinate) => COORDINATES[coordinate].fitting === fitting);
}
