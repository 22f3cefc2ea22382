import type { BodyEstimate } from '../body/body.ts';
import type { Athlete } from '../document/athlete-schema.ts';
import type { Boat } from '../document/boat-schema.ts';
import type { Fit } from '../document/fit-schema.ts';
import type { Seat } from '../document/seat-schema.ts';
import type { Report, SeatReport } from '../evaluation/report.ts';
import { seatFrame } from '../evaluation/seat-state.ts';
import type { SeatFrame, Side } from '../frame/mirror.ts';
import type { BoatPoint } from '../frame/vec3.ts';
import { millimetres } from '../text/sheet-length.ts';
import type { Words } from '../text/words.ts';
import {
  makingOf,
  type PaperOptions,
  type SetOutOptions,
  type ShelfPieces,
  shelfPieces,
} from './set-out-options.ts';
import type { MillimetrePoint } from './template-drawing.ts';

/** One occupied seat that is to be built: what all tables and templates are made from. Boat frame, SI. */
export interface SeatWork {
  /** The whole document, and its boat. */
  readonly fit: Fit;
  readonly boat: Boat;
  /** Index of the seat, bow first. */
  readonly index: number;
  /** The seat's own fittings. */
  readonly seat: Seat;
  /** Who kneels there: an empty seat is not set out. */
  readonly athlete: Athlete;
  /** Where the seat stands in the boat. */
  readonly frame: SeatFrame;
  /** The body that the report was made with. */
  readonly body: BodyEstimate;
  /** The whole boat's report. */
  readonly report: Report;
  /** The seat's part of it. */
  readonly solved: SeatReport;
  /** What the builder chose: paper, units, foam, bolts. */
  readonly options: SetOutOptions;
  /** What of it lies on the boat's shelf and is not sawn. */
  readonly shelf: ShelfPieces;
  /** Says what stands on sheet and templates. */
  readonly words: Words;
}

/** What there is to build for a seat; null when the seat does not exist or nobody kneels in it. */
export function seatWork(given: {
  fit: Fit;
  report: Report;
  index: number;
  options: PaperOptions;
  words: Words;
}): SeatWork | null {
  const { fit, report, index, options, words } = given;
  const seat = fit.seats[index];
  const solved = report.seats[index];
  if (!seat?.athlete || !solved) return null;
  return {
    fit,
    boat: fit.boat,
    index,
    seat,
    athlete: seat.athlete,
    frame: seatFrame(fit.boat, seat, index),
    body: solved.body,
    report,
    solved,
    options: { ...makingOf(fit, index), units: options.units },
    shelf: shelfPieces(fit, index),
    words,
  };
}

/**
 * A point as the builder marks it out: millimetres forward of the seat's mark (x) and to port of the centreline (y). It
 * is the frame of the floorboard's template, seen from above with the bow to the right.
 */
export function floorPoint({ x, y }: BoatPoint, frame: SeatFrame): MillimetrePoint {
  return [millimetres(x - frame.stationX), millimetres(y)];
}

/** The side of the boat a y lies on: y is positive to port, which the paddler calls left. */
export function sideOf(portMm: number): Side {
  return portMm >= 0 ? 'left' : 'right';
}
