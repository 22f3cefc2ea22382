import { footprintOf } from '../parts/part.ts';
import { footShape, padShape, restShape } from '../parts/part-shapes.ts';
import { planClearance } from '../parts/plan-clearance.ts';
import type { Quantity } from './finding.ts';
import type { SeatState } from './seat-state.ts';

/**
 * What holds between a seat and the next one aft: the room between this paddler's rear rest and the other's front foot
 * and pad, and for two on the same side the distance between their blades. Metres; none for the aftmost or an empty seat.
 */
export function neighbourQuantities(seats: readonly (SeatState | null)[]): Quantity[] {
  const quantities: Quantity[] = [];
  seats.forEach((ahead, index) => {
    const behind = seats[index + 1];
    if (!ahead || !behind) return;
    quantities.push({
      id: 'toNextSeat',
      seat: index,
      value: roomBetween(ahead, behind),
      sd: null,
      unit: 'm',
    });
  });
  seats.forEach((seat, index) => {
    const next = seats.findIndex((other, i) => i > index && other?.seat.side === seat?.seat.side);
    if (!seat || next < 0) return;
    quantities.push({
      id: 'bladeSpacing',
      seat: index,
      value: bladesApart(seat, seats[next]!),
      sd: null,
      unit: 'm',
    });
  });
  return quantities;
}

/** Least distance in plan between the base of one paddler's rear rest and the next one's pad and front foot, metres. */
function roomBetween(ahead: SeatState, behind: SeatState): number {
  const { seat, frame, body } = behind;
  const rest = footprintOf(restShape(ahead.seat.rearRest, ahead.frame));
  const pad = footprintOf(padShape(seat.kneePad, frame));
  const foot = footprintOf(footShape(seat.frontFoot, body.lengths.footLength.value, frame));
  return Math.min(planClearance(rest, pad), planClearance(rest, foot));
}

/** Fore-and-aft distance of two lower hands at the catch, metres. */
function bladesApart(a: SeatState, b: SeatState): number {
  return Math.abs(a.stances.catch.points.lowerHand.x - b.stances.catch.points.lowerHand.x);
}
