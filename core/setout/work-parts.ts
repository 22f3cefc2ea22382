import { partsOfSeat } from '../evaluation/parts-of.ts';
import type { Part } from '../parts/part.ts';
import type { SeatParts } from '../parts/seat-parts.ts';
import { millimetres } from '../text/sheet-length.ts';
import type { BlockFrame } from './block-frame.ts';
import type { SeatWork } from './seat-work.ts';
import type { MillimetrePoint } from './template-drawing.ts';

/** The solids that are to be built for a seat, with the boat's bolts: what every block and hole on paper is taken from. */
export function workParts({ boat, seat, index, frame, body }: SeatWork): SeatParts {
  const footLength = body.lengths.footLength.value;
  return partsOfSeat(boat, seat, { index, frame, footLength });
}

/** Where a part's own frame stands on the floorboard: millimetres forward of the seat's mark and to port. */
export function blockFrame({ place }: Pick<Part, 'place'>, { frame }: Pick<SeatWork, 'frame'>): BlockFrame {
  return { origin: [millimetres(place.x - frame.stationX), millimetres(place.y)], turn: place.turn };
}

/** A part's bolts or screws as floor points, millimetres. */
export function boltsOf({ holes }: Part, { frame }: Pick<SeatWork, 'frame'>): MillimetrePoint[] {
  return holes.map(({ from }) => [millimetres(from.x - frame.stationX), millimetres(from.y)]);
}
