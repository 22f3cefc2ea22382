import type { Fit } from '../document/fit-schema.ts';
import type { Seat } from '../document/seat-schema.ts';

/** A seat's whole setting moved together, metres: aft of where it was, and toward its kneeling side. */
export interface SeatShift {
  /** Negative moves it forward. */
  readonly aft: number;
  /** Negative moves it to the off side. */
  readonly out: number;
}

/** To a thousandth of a millimetre. */
const tidy = (value: number) => Number(value.toFixed(6));

/** The seat with pad, rest and front foot moved together, so that its stance is kept exactly. */
export function shiftSeat(seat: Seat, { aft, out }: SeatShift): Seat {
  const { kneePad, rearRest, frontFoot } = seat;
  return {
    ...seat,
    kneePad: { ...kneePad, aftM: tidy(kneePad.aftM + aft), outM: tidy(kneePad.outM + out) },
    rearRest: { ...rearRest, aftM: tidy(rearRest.aftM + aft), outM: tidy(rearRest.outM + out) },
    frontFoot: {
      ...frontFoot,
      forwardM: tidy(frontFoot.forwardM - aft),
      outM: tidy(frontFoot.outM + out),
    },
  };
}

/** The fit with every seat shifted by its own shift. */
export function shiftSeats(fit: Fit, shifts: readonly SeatShift[]): Fit {
  return { ...fit, seats: fit.seats.map((seat, i) => shiftSeat(seat, shifts[i] ?? { aft: 0, out: 0 })) };
}

/** Settings that cannot be shifted because one of their fittings is locked. */
export function isHeld(seat: Seat): boolean {
  return seat.locks.some((lock) => lock !== 'paddle');
}
