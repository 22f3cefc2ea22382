import { insideBoard } from '../parts/board.ts';
import type { Part } from '../parts/part.ts';
import { millimetres } from '../text/sheet-length.ts';
import { type SeatWork, sideOf } from './seat-work.ts';
import type { MillimetrePoint } from './template-drawing.ts';
import { ON_HOLE_MM } from './tolerances.ts';
import { boltsOf, workParts } from './work-parts.ts';

/** Wood between two holes of a row, or a hole and the board's edge, millimetres, under which they run into one another. */
const LEAST_BRIDGE_MM = 4;

/** One hole of the floorboard. Hole `number` of a row sets its fitting that many pitches aft of the seat's mark. */
export interface Hole {
  /** Counted along the row; null without a pitch. */
  readonly number: number | null;
  /** Millimetres forward of the seat's mark and to port of the centreline, exact. */
  readonly at: MillimetrePoint;
  /** Whether it is used by the present setting. */
  readonly now: boolean;
}

/** Holes of one fitting in a line fore and aft, on its own left or right, or in its middle where there is one row only. */
export interface HoleRow {
  /** Which row, as somebody in the boat sees it. */
  readonly row: 'left' | 'right' | 'middle';
  readonly holes: readonly Hole[];
}

/** The holes of one fitting. */
export interface HoleList {
  readonly fitting: 'kneePad' | 'rearRest';
  /** As drilled in the board. */
  readonly diameterMm: number;
  /** Pitch of the rows; null where screws may go anywhere, or where the pitch is too fine to be holes. */
  readonly pitchMm: number | null;
  /** True when the hardware's pitch is so fine that holes would run together; the present bolts alone are listed. */
  readonly tooFine: boolean;
  /** True when it is bolted through its rails: there are no holes in the board. */
  readonly onRails: boolean;
  /** The hole that the setting stands on; null between two holes, or without a pitch. */
  readonly numberNow: number | null;
  /** The nearest hole of the row within its travel and on the board; null without a pitch or without any hole. */
  readonly nearest: { readonly number: number; readonly aftMm: number } | null;
  /** The present bolts or screws as floor points, whether or not there is a hole for them. */
  readonly bolts: readonly MillimetrePoint[];
  /** The rows to drill. */
  readonly rows: readonly HoleRow[];
}

/** Holes of the knee pad. */
export function padHoles(work: SeatWork): HoleList {
  const { hardware } = work.boat;
  return holeList(work, {
    fitting: 'kneePad',
    part: workParts(work).kneePad,
    pitchM: hardware.padHolePitchM,
    travelM: hardware.padTravelM,
  });
}

/** Holes of the rear rest. */
export function restHoles(work: SeatWork): HoleList {
  const { hardware } = work.boat;
  return holeList(work, {
    fitting: 'rearRest',
    part: workParts(work).rearRest,
    pitchM: hardware.restHolePitchM,
    travelM: hardware.restTravelM,
  });
}

/** How one fitting is held: its solid, the rows' pitch and where they end. */
interface HeldFitting {
  readonly fitting: HoleList['fitting'];
  readonly part: Part;
  /** Metres; null where there is no row of holes. */
  readonly pitchM: number | null;
  /** Metres aft of the mark, least and greatest. */
  readonly travelM: readonly [number, number];
}

/**
 * The list of one fitting: rows at the hardware's pitch within its travel and on the board, or else the present bolts alone. The
 * place of the present setting is listed wherever it is.
 */
function holeList(work: SeatWork, { fitting, part, pitchM, travelM }: HeldFitting): HoleList {
  const aftMm = millimetres(work.seat[fitting].aftM);
  const bolts = boltsOf(part, work);
  const diameterMm = Math.round(1e6 * (part.holes[0]?.diameterM ?? 0)) / 1e3;
  const onRails = work.boat.hardware.rails?.some((rails) => rails.fitting === fitting) ?? false;
  const common = { fitting, diameterMm, onRails, bolts, numberNow: null, nearest: null };
  const pitchMm = pitchM === null || onRails ? null : millimetres(pitchM);
  const tooFine = pitchMm !== null && pitchMm < diameterMm + LEAST_BRIDGE_MM;
  if (pitchMm === null || tooFine) {
    return { ...common, pitchMm: null, tooFine, rows: rowsAt(bolts, [{ number: null, aftMm }], aftMm) };
  }
  const gap = (place: { aftMm: number }) => Math.abs(place.aftMm - aftMm);
  const edgeMm = diameterMm / 2 + LEAST_BRIDGE_MM;
  const places = placesOf(pitchMm, travelM).filter(
    (place) =>
      gap(place) <= ON_HOLE_MM ||
      bolts.every(([x, y]) => insideMm(work, [x + aftMm - place.aftMm, y]) >= edgeMm),
  );
  const nearest = places.reduce<(typeof places)[number] | null>(
    (best, place) => (best && gap(best) <= gap(place) ? best : place),
    null,
  );
  return {
    ...common,
    pitchMm,
    tooFine: false,
    numberNow: nearest && gap(nearest) <= ON_HOLE_MM ? nearest.number : null,
    nearest,
    rows: rowsAt(bolts, places, aftMm),
  };
}

/** How far a floor point lies inside the board's outline, millimetres; negative outside. */
function insideMm({ boat, frame }: SeatWork, [x, y]: MillimetrePoint): number {
  return millimetres(insideBoard(boat.floorboard, { x: x / 1000 + frame.stationX, y: y / 1000 }));
}

/** Every place of a fitting within its travel: a whole number of pitches aft of the seat's mark. */
function placesOf(pitchMm: number, travelM: readonly [number, number]): { number: number; aftMm: number }[] {
  const least = Math.ceil(millimetres(Math.min(...travelM)) / pitchMm - 1e-6);
  const most = Math.floor(millimetres(Math.max(...travelM)) / pitchMm + 1e-6);
  return Array.from({ length: Math.max(0, most - least + 1) }, (_, k) => {
    const number = least + k + 0;
    return { number, aftMm: number * pitchMm };
  });
}

/** The bolts of the present setting carried to every place; one row for each bolt that has its own distance out. */
function rowsAt(
  bolts: readonly MillimetrePoint[],
  places: readonly { number: number | null; aftMm: number }[],
  aftNow: number,
): HoleRow[] {
  return bolts.map(([x, y], index) => ({
    row: bolts.length === 1 ? 'middle' : rowName(bolts, index),
    holes: places.map(({ number, aftMm }) => ({
      number,
      at: [x + aftNow - aftMm, y],
      now: Math.abs(aftMm - aftNow) <= ON_HOLE_MM,
    })),
  }));
}

/** Which side of its own fitting a bolt lies on. */
function rowName(bolts: readonly MillimetrePoint[], index: number): 'left' | 'right' {
  const middle = bolts.reduce((sum, [, y]) => sum + y, 0) / bolts.length;
  return sideOf(bolts[index]![1] - middle);
}
