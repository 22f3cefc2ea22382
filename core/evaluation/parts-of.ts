import { bodyOfAthlete } from '../body/body-of-athlete.ts';
import type { Boat } from '../document/boat-schema.ts';
import type { Fit } from '../document/fit-schema.ts';
import type { Seat } from '../document/seat-schema.ts';
import type { SeatFrame } from '../frame/mirror.ts';
import type { Part } from '../parts/part.ts';
import { type SeatParts, seatParts } from '../parts/seat-parts.ts';
import { seatFrame } from './seat-state.ts';

/** Length of foot for an empty seat, metres: between the means of men and women of ANSUR II. */
export const ANY_FOOT = 0.26;

/**
 * Every part of a fit as a solid with its fixing holes: for each seat, bow first, knee pad, rear rest and front foot. Boat
 * frame, metres. Clearances, drawing, sheets and templates all use these very solids. The front foot of an empty seat is 26 cm
 * long. `fit` must have passed `fitSchema`.
 */
export function partsOf(fit: Fit): Part[] {
  return fit.seats.flatMap((seat, index) => {
    const footLength = seat.athlete ? bodyOfAthlete(seat.athlete).lengths.footLength.value : ANY_FOOT;
    const { kneePad, rearRest, frontFoot } = partsOfSeat(fit.boat, seat, { index, footLength });
    return [kneePad, rearRest, frontFoot];
  });
}

/** The parts of seat `index` of a boat for a foot of known length, metres; `frame` where it is known already. */
export function partsOfSeat(
  boat: Pick<Boat, 'floorboard' | 'hardware' | 'seats'>,
  seat: Pick<Seat, 'kneePad' | 'rearRest' | 'frontFoot' | 'side' | 'kneels'>,
  more: { index: number; footLength: number; frame?: SeatFrame },
): SeatParts {
  const { padHolePitchM, restHolePitchM, boltM, rails } = boat.hardware;
  return seatParts(seat, {
    seat: more.index,
    frame: more.frame ?? seatFrame(boat, seat, more.index),
    footLength: more.footLength,
    board: boat.floorboard,
    padHolePitchM,
    restHolePitchM,
    boltM,
    rails,
  });
}
