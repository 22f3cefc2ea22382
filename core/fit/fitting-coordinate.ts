import { FITTING_COORDINATES, type FittingCoordinate } from '../findings/finding.ts';
import type { Fit } from './fit-schema.ts';
import type { Lockable, Seat } from './seat-schema.ts';

/** How a coordinate of a fitting is moved: its lock, its unit, and how big a move counts as one step of trouble. */
export interface CoordinateRule {
  readonly fitting: Lockable;
  readonly unit: 'm' | 'deg';
  /** Moves are compared in this many units: 1 cm of wood and 3° of turn are the same trouble (this project's weighing). */
  readonly scale: number;
  /** Farthest a single suggestion moves it. */
  readonly reach: number;
  /** Suggestions are rounded to this. */
  readonly grain: number;
  /** Suggestions and proposals stay between these: what wood and a kneeling body allow (this project's reading). */
  readonly least: number;
  readonly most: number;
}

const length = (fitting: Lockable, least: number, most: number): CoordinateRule => ({
  fitting,
  least,
  most,
  unit: 'm',
  scale: 0.01,
  reach: 0.15,
  grain: 0.001,
});
const turn = (fitting: Lockable, least: number, most: number): CoordinateRule => ({
  fitting,
  least,
  most,
  unit: 'deg',
  scale: 3,
  reach: 30,
  grain: 0.5,
});

/** The rule of every coordinate that may be moved. */
export const COORDINATE_RULES: Readonly<Record<FittingCoordinate, CoordinateRule>> = {
  'kneePad.aftM': length('kneePad', -0.2, 0.6),
  'kneePad.outM': length('kneePad', -0.05, 0.2),
  'kneePad.heightM': length('kneePad', 0.04, 0.22),
  'kneePad.recessTurnDeg': turn('kneePad', -5, 40),
  'rearRest.aftM': length('rearRest', 0.1, 1.3),
  'rearRest.outM': length('rearRest', -0.25, 0.15),
  'rearRest.heightM': length('rearRest', 0.01, 0.15),
  'rearRest.turnDeg': turn('rearRest', -5, 45),
  'frontFoot.forwardM': length('frontFoot', -0.3, 1),
  'frontFoot.outM': length('frontFoot', -0.25, 0),
  'frontFoot.heightM': length('frontFoot', 0, 0.15),
  'frontFoot.toeOutDeg': turn('frontFoot', -10, 35),
  'frontFoot.wedgeDeg': turn('frontFoot', 0, 25),
  'paddle.lengthM': length('paddle', 0.9, 2.2),
  'paddle.bladeLengthM': length('paddle', 0.25, 0.9),
  'paddle.lowerHandM': length('paddle', 0.3, 1.3),
};

/** The value of a coordinate in its own unit (metres or degrees). */
export function coordinateOf(seat: Seat, coordinate: FittingCoordinate): number {
  const [fitting, field] = coordinate.split('.') as [Lockable, string];
  return (seat[fitting] as unknown as Record<string, number>)[field]!;
}

/** The same seat with one coordinate set; every untouched part is the same object. */
export function withSeatCoordinate(seat: Seat, coordinate: FittingCoordinate, value: number): Seat {
  const [fitting, field] = coordinate.split('.') as [Lockable, string];
  return { ...seat, [fitting]: { ...seat[fitting], [field]: value } };
}

/** The same fit with one coordinate of one seat set; every untouched part is the same object. */
export function withCoordinate(
  fit: Fit,
  at: { seat: number; coordinate: FittingCoordinate },
  value: number,
): Fit {
  const seats = fit.seats.map((seat, index) =>
    index === at.seat ? withSeatCoordinate(seat, at.coordinate, value) : seat,
  );
  return { ...fit, seats };
}

/**
 * Coordinates of a seat that suggestions and proposals may move: those of its locked fittings are left out, the lower
 * hand's place on the shaft, which is the paddler's own, and the front foot's height, which asks for a board to be built.
 */
export function freeCoordinates(seat: Seat): FittingCoordinate[] {
  return FITTING_COORDINATES.filter(
    (c) => !COACHES_OWN.includes(c) && !seat.locks.includes(COORDINATE_RULES[c].fitting),
  );
}

const COACHES_OWN: readonly FittingCoordinate[] = ['paddle.lowerHandM', 'frontFoot.heightM'];

/** The pitch of the hardware's holes along a coordinate, metres; null where it may stand anywhere. */
export function holePitch(fit: Fit, coordinate: FittingCoordinate): number | null {
  if (coordinate === 'kneePad.aftM') return fit.boat.hardware.padHolePitchM;
  if (coordinate === 'rearRest.aftM') return fit.boat.hardware.restHolePitchM;
  return null;
}

/**
 * The ends that suggestions and proposals keep a coordinate between, in its own unit: those of its rule, and for pad and rest
 * the hardware's travel, past which there is nothing to fix them to. A travel of 0 to 17 cm lets a pad go 17 cm aft.
 */
export function endsOf(
  { boat }: Pick<Fit, 'boat'>,
  coordinate: FittingCoordinate,
): { readonly least: number; readonly most: number } {
  const { least, most } = COORDINATE_RULES[coordinate];
  const { padTravelM, restTravelM } = boat.hardware;
  const travel =
    coordinate === 'kneePad.aftM' ? padTravelM : coordinate === 'rearRest.aftM' ? restTravelM : null;
  if (!travel) return { least, most };
  return { least: Math.max(least, Math.min(...travel)), most: Math.min(most, Math.max(...travel)) };
}
