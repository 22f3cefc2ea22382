import { describe, expect, it } from 'vitest';
import { insideHull } from '../../../core/fit/inside-hull.ts';
import { hullFromOffsets } from '../../../core/hull/hull-from-offsets.ts';

/** A box 4 m long, 0.5 m wide and 0.3 m deep: its inner face is known by hand. */
const box = hullFromOffsets({
  name: 'box',
  stations: [-2, -1, 0, 1, 2].map((x) => ({
    x,
    section: [
      [0, 0],
      [0.25, 0],
      [0.25, 0.3],
    ],
  })),
});

describe('insideHull', () => {
  it('is the room of the corner nearest the side, less the skin', () => {
    const outline = [
      { x: 0, y: 0.1, z: 0.1 },
      { x: 0.1, y: -0.18, z: 0.1 },
    ];
    expect(insideHull(outline, box, 0)).toBeCloseTo(0.07, 9);
    expect(insideHull(outline, box, 0.004)).toBeCloseTo(0.066, 9);
  });

  it('is negative beyond the side', () => {
    expect(insideHull([{ x: 0, y: 0.3, z: 0.1 }], box, 0.004)).toBeCloseTo(-0.054, 9);
  });

  it.each([
    ['above the sheer', { x: 0, y: 0.1, z: 0.4 }],
    ['past the bow', { x: 3, y: 0.1, z: 0.1 }],
  ])('counts a corner %s as outside by its distance from the centreline', (_, corner) => {
    expect(insideHull([corner], box, 0.004)).toBeCloseTo(-0.1, 9);
  });
});
