import type { Fit } from '../../core/document/fit-schema.ts';
import { say, words } from '../language/messages.ts';

/** Name of whoever kneels in a seat. */
export function nameInSeat(fit: Fit, seat: number): string {
  return fit.seats[seat]?.athlete?.name ?? say('bench.seat.nobody');
}

/** Names from bow to stern in an order of the present seats. */
export function orderText(fit: Fit, order: readonly number[]): string {
  return words().row(order.map((seat) => nameInSeat(fit, seat)));
}
