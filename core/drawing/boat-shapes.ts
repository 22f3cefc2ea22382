import { areaOf, lineThrough, ringThrough, type Shape } from '../graphics/shape.ts';
import type { ViewName, ViewPoint } from '../graphics/view.ts';
import type { Hull } from '../hull/hull.ts';
import { keelHeight, sectionAt, sheerHalfBreadth, sheerHeight } from '../hull/section-at.ts';
import { type Board, boardHalfWidthAt, boardStations, boardTopAt } from '../parts/board.ts';

/** What of a boat is drawn. Boat frame, metres. */
export interface DrawnBoat {
  readonly hull: Hull;
  readonly board: Board;
  /** Ends of what is drawn along the boat; and where it is cut to be seen from behind. */
  readonly span: readonly [aft: number, fore: number];
  readonly cutX: number;
}

/** Readings along a hull's lines. */
const READINGS = 49;

/** A hull as a view shows it, with its floorboard; cut off at the span's ends, true at its own. */
export function boatShapes(boat: DrawnBoat, view: ViewName): Shape[] {
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
  return [
    areaOf('hull', { role: 'hull', outline: null }, [ringThrough([...upper, ...lower.toReversed()])]),
    {
      kind: 'line',
      of: 'hull',
      role: 'hullLine',
      weight: 'contour',
      lines: [upper, lower, ...ends].map(lineThrough),
    },
    boardAlong(boat.board, [aft, fore], view),
  ];
}

function fromBehind({ hull, board, cutX }: DrawnBoat): Shape[] {
  const port = sectionAt(hull, cutX).map(({ y, z }): ViewPoint => [-y, z]);
  const outline = [...port.toReversed(), ...port.map(([y, z]): ViewPoint => [-y, z])];
  const half = boardHalfWidthAt(board, cutX);
  const top = boardTopAt(board, cutX);
  const low = top - board.thicknessM;
  return [
    areaOf('hull', { role: 'hull', outline: null }, [ringThrough(outline)]),
    { kind: 'line', of: 'hull', role: 'hullLine', weight: 'contour', lines: [lineThrough(outline)] },
    areaOf('board', { role: 'board', outline: 'woodLine' }, [
      ringThrough([
        [-half, low],
        [half, low],
        [half, top],
        [-half, top],
      ]),
    ]),
  ];
}

/** The board from its after to its fore end, as far as the picture goes. */
function boardAlong(board: Board, [aft, fore]: readonly [number, number], view: ViewName): Shape {
  const xs = boardStations(board).map((x) => Math.min(fore, Math.max(aft, x)));
  const upper = xs.map(
    (x): ViewPoint => [x, view === 'profile' ? boardTopAt(board, x) : boardHalfWidthAt(board, x)],
  );
  const lower = upper.map(([x, up]): ViewPoint => [x, view === 'profile' ? up - board.thicknessM : -up]);
  return areaOf('board', { role: 'board', outline: 'woodLine' }, [
    ringThrough([...upper, ...lower.toReversed()]),
  ]);
}
