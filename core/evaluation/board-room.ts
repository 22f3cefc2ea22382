import type { Hull } from '../hull/hull.ts';
import { innerSkin, leastInside } from '../hull/inner-skin.ts';
import { type Board, boardHalfWidthAt, boardStations, boardTopAt } from '../parts/board.ts';

/** Where a floorboard has least room in its hull. Metres, boat frame. */
export interface BoardRoom {
  /** Least distance of the board to the hull's inner face; negative where the board reaches into the skin. */
  readonly least: number;
  /** Where along the boat that is. */
  readonly x: number;
  /** The full width that would just fit there at the board's height. */
  readonly fits: number;
}

/** Longest stretch of a board between two sampled stations, metres. */
const STRETCH = 0.1;

/** A width that fits is found to this, metres. */
const WIDTH_STEP = 0.0005;

/**
 * How much room a floorboard has in its hull, over its whole length and thickness: its edges at the top and at the underside,
 * both ends, and the middle of the underside over the keel. A board 40 cm wide in a hull 28 cm wide is 6 cm through each side,
 * and the skin more.
 */
export function boardRoom(board: Board, hull: Hull, skinM: number): BoardRoom {
  const skin = innerSkin(hull, skinM);
  const inside = (x: number, half: number) => {
    const top = boardTopAt(board, x);
    const under = top - board.thicknessM;
    // Port, starboard alike; from the top's edge down, and along the underside to the middle.
    const vertices = [
      { x, y: half, z: top },
      { x, y: half, z: under },
      { x, y: 0, z: under },
    ];
    return leastInside(skin, {
      vertices,
      edges: [
        [0, 1],
        [1, 2],
      ],
    });
  };
  let worst = { least: Number.POSITIVE_INFINITY, x: 0 };
  for (const x of stationsAlong(board)) {
    const least = inside(x, boardHalfWidthAt(board, x));
    if (least < worst.least) worst = { least, x };
  }
  return {
    ...worst,
    fits: 2 * widestHalf((half) => inside(worst.x, half), boardHalfWidthAt(board, worst.x)),
  };
}

/** Stations from the board's aft end to its fore end, a stretch apart at most, its bends among them. */
function stationsAlong(board: Board): number[] {
  const bends = boardStations(board);
  return bends.flatMap((x, k) => {
    const next = bends[k + 1];
    if (next === undefined) return [x];
    const count = Math.max(1, Math.ceil((next - x) / STRETCH));
    return Array.from({ length: count }, (_, i) => x + ((next - x) * i) / count);
  });
}

/** The greatest half-width up to `most` that is inside, metres; 0 where none is. */
function widestHalf(inside: (half: number) => number, most: number): number {
  if (inside(most) >= 0) return most;
  let [low, high] = [0, most];
  while (high - low > WIDTH_STEP) {
    const half = (low + high) / 2;
    if (inside(half) >= 0) low = half;
    else high = half;
  }
  return low;
}
