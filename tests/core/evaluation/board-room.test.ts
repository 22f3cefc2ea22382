import { describe, expect, it } from 'vitest';
import { boardRoom } from '../../../core/evaluation/board-room.ts';
import { straightEdges } from '../example/straight-edges.ts';
import { madeHull } from '../hull/made-hull.ts';

/** Sides at 45° from a flat bottom 16 cm wide, 4 m long. */
const hull = madeHull({
  name: 'flared',
  stations: [-2, -1, 0, 1, 2].map((x) => ({
    x,
    section: straightEdges([
      [0, 0],
      [0.08, 0],
      [0.28, 0.2],
    ]),
  })),
});
const board = { heightM: 0.05, widthM: 0.4, aftEndXM: -1, foreEndXM: 1, thicknessM: 0.01 };

describe('boardRoom', () => {
  it('is the room of the lower edge, which the side comes nearest to, and the width that would fit', () => {
    const room = boardRoom(board, hull, 0);
    // 4 cm up the side is 12 cm out; the board 20 cm.
    expect(room.least).toBeCloseTo(-0.08 / Math.SQRT2, 6);
    expect(Math.abs(room.fits - 0.24)).toBeLessThan(0.002);
  });

  it('is positive for a board that fits, and leaves its width alone', () => {
    const room = boardRoom({ ...board, widthM: 0.2 }, hull, 0);
    expect(room.least).toBeCloseTo(0.02 / Math.SQRT2, 6);
    expect(room.fits).toBeCloseTo(0.2, 12);
  });

  it('finds a board that runs out of the hull at an end', () => {
    const room = boardRoom({ ...board, widthM: 0.1, foreEndXM: 2.1 }, hull, 0);
    expect(room.least).toBeCloseTo(-0.1, 6);
    expect(room.x).toBeCloseTo(2.1, 12);
  });
});
