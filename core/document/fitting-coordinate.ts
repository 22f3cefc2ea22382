import { COORDINATES, coordinateRow, FITTING_COORDINATES, type FittingCoordinate } from './coordinates.ts';
import type { Fit } from './fit-schema.ts';
import type { Seat } from './seat-schema.ts';

/** The value of a coordinate in its own unit (metres or degrees). */
export function coordinateOf(seat: Seat, coordinate: FittingCoordinate): number {
  const { fitting, field } = coordinateRow(coordinate);
  return (seat[fitting] as Readonly<Record<string, unknown>>)[field] as number;
}

/** The same seat with one coordinate set; every untouched part is the same object. */
export function withSeatCoordinate(seat: Seat, coordinate: FittingCoordinate, value: number): Seat {
  const { fitting, field } = coordinateRow(coordinate);
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
 * Coordinates of a seat that suggestions and proposals may move. Left out are locked fittings, the lower hand's place on the
 * shaft (the paddler's own choice) and the front foot's height (a board would have to be built).
 */
export function freeCoordinates(seat: Seat): FittingCoordinate[] {
  return FITTING_COORDINATES.filter(
    (c) => !COACHES_OWN.includes(c) && !seat.locks.includes(COORDINATES[c].fitting),
  );
}

/** Coordinates that a coach sets by eye: nothing proposes them. */
const COACHES_OWN: readonly FittingCoordinate[] = ['paddle.lowerHandM', 'frontFoot.heightM'];

/** The pitch of the hardware's holes along a coordinate, metres; null where it may stand anywhere. */
export function holePitch(fit: Fit, coordinate: FittingCoordinate): number | null {
  if (coordinate === 'kneePad.aftM') return fit.boat.hardware.padHolePitchM;
  if (coordinate === 'rearRest.aftM') return fit.boat.hardware.restHolePitchM;
  return null;
}

/**
 * The limits that suggestions and proposals keep a coordinate between, in its own unit: its usual limits, and for pad and rest
 * the hardware's travel. With a travel of 0 to 17 cm a pad moves at most 17 cm aft.
 */
export function endsOf(
  { boat }: Pick<Fit, 'boat'>,
  coordinate: FittingCoordinate,
): { readonly least: number; readonly most: number } {
  const [least, most] = COORDINATES[coordinate].usual;
  const { padTravelM, restTravelM } = boat.hardware;
  const travel =
    coordinate === 'kneePad.aftM' ? padTravelM : coordinate === 'rearRest.aftM' ? restTravelM : null;
  if (!travel) return { least, most };
  return { least: Math.max(least, Math.min(...travel)), most: Math.min(most, Math.max(...travel)) };
}
