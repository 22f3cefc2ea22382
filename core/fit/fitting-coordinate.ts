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
}

const length = (fitting: Lockable): CoordinateRule => ({
  fitting,
  unit: 'm',
  scale: 0.01,
  reach: 0.15,
  grain: 0.001,
});
const turn = (fitting: Lockable): CoordinateRule => ({
  fitting,
  unit: 'deg',
  scale: 3,
  reach: 30,
  grain: 0.5,
});

/** The rule of every coordinate that may be moved. */
export const COORDINATE_RULES: Readonly<Record<FittingCoordinate, CoordinateRule>> = {
  'kneePad.aftM': length('kneePad'),
  'kneePad.outM': length('kneePad'),
  'kneePad.heightM': length('kneePad'),
  'kneePad.recessTurnDeg': turn('kneePad'),
  'rearRest.aftM': length('rearRest'),
  'rearRest.outM': length('rearRest'),
  'rearRest.heightM': length('rearRest'),
  'rearRest.turnDeg': turn('rearRest'),
  'frontFoot.forwardM': length('frontFoot'),
  'frontFoot.outM': length('frontFoot'),
  'frontFoot.toeOutDeg': turn('frontFoot'),
  'frontFoot.wedgeDeg': turn('frontFoot'),
  'paddle.lengthM': length('paddle'),
  'paddle.bladeLengthM': length('paddle'),
  'paddle.lowerHandM': length('paddle'),
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

/** Coordinates of a seat that are free to move: those of its locked fittings are left out. */
export function freeCoordinates(seat: Seat): FittingCoordinate[] {
  return FITTING_COORDINATES.filter((c) => !seat.locks.includes(COORDINATE_RULES[c].fitting));
}

/** The pitch of the hardware's holes along a coordinate, metres; null where it may stand anywhere. */
export function holePitch(fit: Fit, coordinate: FittingCoordinate): number | null {
  if (coordinate === 'kneePad.aftM') return fit.boat.hardware.padHolePitchM;
  if (coordinate === 'rearRest.aftM') return fit.boat.hardware.restHolePitchM;
  return null;
}
