import type { Fit } from '../document/fit-schema.ts';
import type { Seat } from '../document/seat-schema.ts';
import { otherSide } from '../frame/mirror.ts';

/**
 * The fit with the crew seated in another order: `order[i]` is the present seat whose paddler takes seat `i`. Each
 * paddler keeps side, fittings (from the seat's own datum), paddle and bands. Throws RangeError unless `order` is a
 * permutation of the seats.
 */
export function reseat(fit: Fit, order: readonly number[]): Fit {
  const wanted = fit.seats.map((_, i) => i).join();
  if (order.toSorted((a, b) => a - b).join() !== wanted) {
    throw new RangeError(
      `order must name each of the ${fit.seats.length} seats once, got ${order.join(', ')}`,
    );
  }
  return { ...fit, seats: order.map((from) => fit.seats[from]!) };
}

/** The fit with the paddlers of two seats changed over. */
export function swapSeats(fit: Fit, a: number, b: number): Fit {
  const order = fit.seats.map((_, i) => (i === a ? b : i === b ? a : i));
  return reseat(fit, order);
}

/**
 * The fit with one paddler on the other side: the whole setting is mirrored, because fittings count toward the kneeling side.
 */
export function changeSide(fit: Fit, seat: number): Fit {
  const turn = (s: Seat): Seat => {
    const side = otherSide(s.side);
    const turned: Seat = { ...s, side };
    if (s.kneels) turned.kneels = otherSide(s.kneels);
    if (s.athlete) turned.athlete = { ...s.athlete, side };
    return turned;
  };
  return { ...fit, seats: fit.seats.map((s, i) => (i === seat ? turn(s) : s)) };
}
