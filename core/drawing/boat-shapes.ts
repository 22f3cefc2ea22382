import { type Area, areaOf, type Lines, lineThrough, ringThrough, type Shape } from '../graphics/shape.ts';
import type { ViewName, ViewPoint } from '../graphics/view.ts';
import type { Hull } from '../hull/hull.ts';
import { keelHeight, sectionAt, sheerHalfBreadth, sheerHeight } from '../hull/section-at.ts';
import { type Board, boardHalfWidthAt, boardStations, boardTopAt } from '../parts/board.ts';

/** A boat to be drawn. Boat frame, metres. */
export interface DrawnBoat {
  /** Where its lines come from. */
  readonly hull: Hull;
  /** The floorboard, which is cut through where the view is from behind. */
  readonly board: Board;
  /** Ends of what is drawn along the boat, metres. */
  readonly span: readonly [aft: number, fore: number];
  /** x of that cut, metres. */
  readonly cutX: number;
}

/** Readings along a hull's lines: 10 cm apart on a four is a quarter pixel of sag at most. */
const READINGS = 97;

/** A boat in its parts, from the far to the near: a painter may put water, holes or a body plan between them. */
export interface BoatParts {
  /** The hull's area, without an outline: the edge is drawn apart, over what stands inside. */
  readonly hull: Area;
  /** Sheer, keel and stems, or the cut section. */
  readonly edge: Lines;
  /** The floorboard's area. */
  readonly board: Area;
}

/** A hull as a view shows it, with its floorboard; cut off at the span's ends, true at its own. */
export function boatShapes(boat: DrawnBoat, view: ViewName): Shape[] {
  const { hull, edge, board } = boatParts(boat, view);
  return [hull, edge, board];
}

/** The same in its parts. */
export function boatParts(boat: DrawnBoat, view: ViewName): BoatParts {
  if (view === 'section') return fromBehind(boat);
  const { hull, span } = boat;
  const aft = Math.max(hull.aftX, span[0]);
  const fore = Math.min(hull.foreX, span[1]);
  const xs = Array.from({ length: READINGS }, (_, k) => aft + ((fore - aft) * k) / (READINGS - 1));
  const upper = xs.map(
    (x): ViewPoint => [x, view === 'profile' ? sheerHeight(hull, x) : sheerHalfBreadth(hull, x)],
  );
  const lower = xs.map((x, k): ViewPoint => [x, view === 'profile' ? keelHeight(hull, x) : -upper[k]![1]]);
  const ends = [
    ...(span[0] <= hull.aftX ? [[lower[0]!, upper[0]!]] : []),
    ...(span[1] >= hull.foreX ? [[lower.at(-1)!, upper.at(-1)!]] : []),
  ];
  return {
    hull: areaOf('hull', { role: 'hull', outline: null }, [ringThrough([...upper, ...lower.toReversed()])]),
    edge: edgeOf([upper, lower, ...ends]),
    board: boardAlong(boat.board, [aft, fore], view),
  };
}

/** A section of the hull as it is seen from behind, sheer to sheer. */
export function sectionLine(hull: Hull, x: number): ViewPoint[] {
  const port = sectionAt(hull, x).map(({ y, z }): ViewPoint => [-y, z]);
  return [...port.toReversed(), ...port.map(([y, z]): ViewPoint => [-y, z])];
}

/** Lines of the hull, drawn as contours. */
function edgeOf(lines: readonly (readonly ViewPoint[])[]): Lines {
  return { kind: 'line', of: 'hull', role: 'hullLine', weight: 'contour', lines: lines.map(lineThrough) };
}

/** The section at `cutX` with the board cut through; y to port is to the left, as seen from behind. */
function fromBehind({ hull, board, cutX }: DrawnBoat): BoatParts {
  const outline = sectionLine(hull, cutX);
  const half = boardHalfWidthAt(board, cutX);
  const top = boardTopAt(board, cutX);
  const low = top - board.thicknessM;
  return {
    hull: areaOf('hull', { role: 'hull', outline: null }, [ringThrough(outline)]),
    edge: edgeOf([outline]),
    board: areaOf('board', { role: 'board', outline: 'woodLine' }, [
      ringThrough([
        [-half, low],
        [half, low],
        [half, top],
        [-half, top],
      ]),
    ]),
  };
}

/** The board from its aft to its fore end, within the picture. */
function boardAlong(board: Board, [aft, fore]: readonly [number, number], view: ViewName): Area {
  const xs = boardStations(board).map((x) => Math.min(fore, Math.max(aft, x)));
  const upper = xs.map(
    (x): ViewPoint => [x, view === 'profile' ? boardTopAt(board, x) : boardHalfWidthAt(board, x)],
  );
  const lower = upper.map(([x, up]): ViewPoint => [x, view === 'profile' ? up - board.thicknessM : -up]);
  return areaOf('board', { role: 'board', outline: 'woodLine' }, [
    ringThrough([...upper, ...lower.toReversed()]),
  ]);
}
