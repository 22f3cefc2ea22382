import { z } from 'zod';
import type { Fit } from '../document/fit-schema.ts';
import { padInStock, restInStock } from '../document/from-stock.ts';
import type { StockPad, StockRest } from '../document/stock-schema.ts';
import { USUAL_BOLT, USUAL_FOAM } from '../parts/seat-parts.ts';
import { SHEET_UNITS } from '../text/sheet-length.ts';

/** What is chosen for one paper and kept nowhere: how its lengths are written. */
export const paperOptionsSchema = z.strictObject({ units: z.enum(SHEET_UNITS).default('mm') });

/** How a paper is written. All else that it says comes from the fit. */
export type PaperOptions = z.infer<typeof paperOptionsSchema>;

/** How a seat is made. Metres; a knee that is not measured is null and is estimated from the body. */
export interface Making {
  /** Foam that lines the recess, metres. */
  readonly foamM: number;
  /** Diameter of bolts or screws, metres. */
  readonly boltM: number;
  /** Measured across the knee, metres; null where it was not. */
  readonly kneeBreadthM: number | null;
}

/** How lengths are written and how the seat is made. */
export interface SetOutOptions extends PaperOptions, Making {}

/** The pieces of the boat's stock that a seat's pad and rest are; null where there is none, or none left to take. */
export interface ShelfPieces {
  /** Null where a pad is to be made. */
  readonly pad: StockPad | null;
  /** Null where a rest is to be made. */
  readonly rest: StockRest | null;
}

/** The pieces on the shelf for a seat, by the stock that the fit's own boat lists. A piece of which there are 0 is not there. */
export function shelfPieces({ boat, seats }: Fit, index: number): ShelfPieces {
  const seat = seats[index];
  const pads = (boat.stock?.pads ?? []).filter(({ count }) => count > 0);
  const rests = (boat.stock?.rests ?? []).filter(({ count }) => count > 0);
  return {
    pad: (seat && pads[padInStock(seat.kneePad, pads)]) ?? null,
    rest: (seat && rests[restInStock(seat.rearRest, rests)]) ?? null,
  };
}

/**
 * How a seat of a fit is made, metres: the knee's breadth of its athlete, the foam of its pad (else of the piece on the shelf,
 * else 10 mm), the bolts of its boat (else 6 mm). It rests on the fit alone, so that two papers of one revision agree.
 */
export function makingOf(fit: Fit, index: number): Making {
  const seat = fit.seats[index];
  return {
    foamM: seat?.kneePad.foamM ?? shelfPieces(fit, index).pad?.foamM ?? USUAL_FOAM,
    boltM: fit.boat.hardware.boltM ?? USUAL_BOLT,
    kneeBreadthM: seat?.athlete?.kneeBreadthM ?? null,
  };
}
