import type { BalanceDemand } from '../hydrostatics/afloat.ts';
import type { DriveLoads } from '../support/support.ts';
import { lazyProperty } from '../units/lazy-property.ts';
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
  /** Null where the boat does not float. */
  readonly balance: BalanceDemand | null;
  /** Every value, still without a spread. */
  readonly quantities: readonly Quantity[];
}

const withDrives = lazyProperty<'drives', Computed['drives']>('drives');
const withBalance = lazyProperty<'balance', Computed['balance']>('balance');
const withQuantities = lazyProperty<'quantities', readonly Quantity[]>('quantities');

/**
 * Floats a boat with its solved crew. The drives' loads, the balance and every quantity, spreads not yet filled in, are computed at
 * their first reading. `start` (an earlier answer) only saves iterations.
 */
export function computeBoat(
  boat: BoatState,
  seats: readonly (SeatState | null)[],
  start: AfloatByPhase | null,
): Computed {
  const { afloat, trimCatch } = crewAfloat(boat, seats, start);
  const { ready } = afloat;
  const driven = withDrives({ boat, seats, afloat }, () => seats.map((seat) => seat && driveOf(seat, ready)));
  const floating = withBalance(driven, () =>
    ready.kind === 'afloat' ? balanceOf(boat, seats, ready) : null,
  );
  return withQuantities(floating, () => [
    ...boatQuantities(boat, { ready, trimCatch: trimCatch() }, floating.balance),
    ...seats.flatMap((seat, index) => (seat ? seatQuantities(seat, index, boat) : [])),
    ...seats.flatMap((seat, index) => (seat ? paddleQuantities(seat, index, { boat, ready }) : [])),
    ...driven.drives.flatMap((drive, index) => driveQuantities(drive, index)),
    ...neighbourQuantities(seats),
  ]);
}
