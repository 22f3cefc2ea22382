import type { DriveLoads } from '../support/support.ts';
import { boatQuantities } from './boat-quantities.ts';
import { type BoatState, balanceOf } from './boat-state.ts';
import { type AfloatByPhase, crewAfloat } from './crew-afloat.ts';
import { driveOf, driveQuantities } from './drive-quantities.ts';
import type { Quantity } from './finding.ts';
import { neighbourQuantities } from './neighbour-quantities.ts';
import { paddleQuantities } from './paddle-quantities.ts';
import { seatQuantities } from './seat-quantities.ts';
import type { SeatState } from './seat-state.ts';

/** A fit as computed, before spreads and findings. */
export interface Computed {
  /** The boat ready to be floated. */
  readonly boat: BoatState;
  /** Null where a seat is empty. */
  readonly seats: readonly (SeatState | null)[];
  /** Null where a seat is empty or the boat does not float. */
  readonly drives: readonly (DriveLoads | null)[];
  /** How it lies in each phase. */
  readonly afloat: AfloatByPhase;
  /** Every value, still without a spread. */
  readonly quantities: readonly Quantity[];
}

/**
 * Floats a boat with its solved crew in all three phases and lists every quantity, spreads not yet filled in. `start` (an
 * earlier answer) only saves iterations.
 */
export function computeBoat(
  boat: BoatState,
  seats: readonly (SeatState | null)[],
  start: AfloatByPhase | null,
): Computed {
  const { afloat, trimCatch } = crewAfloat(boat, seats, start);
  const balance = afloat.ready.kind === 'afloat' ? balanceOf(boat, seats, afloat.ready) : null;
  const drives = seats.map((seat) => seat && driveOf(seat, afloat.ready));
  const quantities = [
    ...boatQuantities(boat, { ready: afloat.ready, trimCatch }, balance),
    ...seats.flatMap((seat, index) => (seat ? seatQuantities(seat, index, boat) : [])),
    ...seats.flatMap((seat, index) =>
      seat ? paddleQuantities(seat, index, { boat, ready: afloat.ready }) : [],
    ),
    ...drives.flatMap((drive, index) => driveQuantities(drive, index)),
    ...neighbourQuantities(seats),
  ];
  return { boat, seats, drives, afloat, quantities };
}
