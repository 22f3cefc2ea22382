import type { Boat } from '../document/boat-schema.ts';
import type { Fit } from '../document/fit-schema.ts';
import { ANY_FOOT, partsOfSeat } from '../evaluation/parts-of.ts';
import type { PlanPoint } from '../parts/part.ts';
import { railStretch } from '../parts/rails.ts';

/** A fitting that moves. */
export type DrilledFitting = 'kneePad' | 'rearRest';

/** Wanted place of the bolts of one fitting of one fit, and how far it may be moved. Metres, boat frame. */
export interface DrillingWish {
  /** Which fit and seat, and what of it. */
  readonly fit: number;
  /** Index of the seat, bow first. */
  readonly seat: number;
  readonly fitting: DrilledFitting;
  /** Where the bolts stand if nothing is moved. */
  readonly bolts: readonly PlanPoint[];
  /** How far the fitting may be moved from there. */
  readonly toleranceM: number;
  /** Where it is bolted to rails that exist: stations between which its bolts may stand. It needs no hole in the board. */
  readonly rails?: readonly [aft: number, fore: number];
}

/** A pitch that makes every boat's fittings bolted, whatever its hardware is, metres; the value itself is not used. */
const ANY_PITCH = 0.02;

/** A boat whose fittings are bolted through holes of the board. */
export function onRows(boat: Boat): Boat {
  return { ...boat, hardware: { ...boat.hardware, padHolePitchM: ANY_PITCH, restHolePitchM: ANY_PITCH } };
}

/**
 * The bolts of pad and rest of every occupied seat of some fits of one boat, each with its tolerance, metres: in the board, or in
 * the rails that the boat has for it.
 */
export function drillingWishes(
  fits: readonly Fit[],
  toleranceOf: (fit: number, fitting: DrilledFitting) => number,
): DrillingWish[] {
  return fits.flatMap(({ boat, seats }, fit) =>
    seats.flatMap((seat, index) => {
      if (!seat.athlete) return [];
      const parts = partsOfSeat(onRows(boat), seat, { index, footLength: ANY_FOOT });
      return (['kneePad', 'rearRest'] as const).map((fitting): DrillingWish => {
        const pair = boat.hardware.rails?.find((one) => one.fitting === fitting);
        return {
          fit,
          seat: index,
          fitting,
          bolts: parts[fitting].holes.map(({ from: { x, y } }) => ({ x, y })),
          toleranceM: toleranceOf(fit, fitting),
          ...(pair ? { rails: railStretch(pair, boat.floorboard) } : {}),
        };
      });
    }),
  );
}
