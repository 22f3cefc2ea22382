import { footprintOf } from '../parts/part.ts';
import { footShape, padShape, restShape } from '../parts/part-shapes.ts';
import { planClearance } from '../parts/plan-clearance.ts';
import type { Quantity } from './finding.ts';
import type { SeatState } from './seat-state.ts';

/** The parts of a seat from which values between two seats are computed. */
type Neighbour = Pick<SeatState, 'seat' | 'frame' | 'body'> & {
  readonly stances: Pick<SeatState['stances'], 'catch'>;
};

/** A value between two seats; it belongs to the seat nearer to the bow. */
interface Between {
  readonly id: 'toNextSeat' | 'bladeSpacing';
  /** Index of the seat nearer to the bow. */
  readonly seat: number;
  /** Metres along the boat. */
  readonly value: number;
}

/**
 * What holds between a seat and the next one aft: the room between this paddler's rear rest and the other's front foot
 * and pad, and for two on the same side the distance between their blades. Metres; none for the aftmost or an empty seat.
 */
export function neighbourQuantities(seats: readonly (Neighbour | null)[]): Quantity[] {
  return betweenSeats(seats).map(({ id, seat, value }) => ({ id, seat, value, sd: null, unit: 'm' }));
}

/** The same as plain values. */
export function betweenSeats(seats: readonly (Neighbour | null)[]): Between[] {
  const between: Between[] = [];
  seats.forEach((ahead, seat) => {
    const behind = seats[seat + 1];
    if (ahead && behind) between.push({ id: 'toNextSeat', seat, value: roomBetween(ahead, behind) });
  });
  seats.forEach((seat, index) => {
    const next = seats.findIndex((other, i) => i > index && other?.seat.side === seat?.seat.side);
    if (!seat || next < 0) return;
    between.push({ id: 'bladeSpacing', seat: index, value: bladesApart(seat, seats[next]!) });
  });
  return between;
}

/** Least distance in plan between the base of one paddler's rear rest and the next one's pad and front foot, metres. */
function roomBetween(ahead: Neighbour, behind: Neighbour): number {
  const { seat, frame, body } = behind;
  const rest = footprintOf(restShape(ahead.seat.rearRest, ahead.frame));
  const pad = footprintOf(padShape(seat.kneePad, frame));
  const foot = footprintOf(footShape(seat.frontFoot, body.lengths.footLength.value, frame));
  return Math.min(planClearance(rest, pad), planClearance(rest, foot));
}

/** Fore-and-aft distance of two lower hands at the catch, metres. */
function bladesApart(a: Neighbour, b: Neighbour): number {
  return Math.abs(a.stances.catch.points.lowerHand.x - b.stances.catch.points.lowerHand.x);
}
