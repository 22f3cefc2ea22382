import { describe, expect, it } from 'vitest';
import { immersedProperties } from '../../../core/hydrostatics/immersed-properties.ts';
import { stripSums, stripsOf } from '../../../core/under-way/strips.ts';
import { madeHull } from '../hull/made-hull.ts';

/** A box of 4 × 0.5 × 0.4 m, floating 0.2 m deep. */
const [LENGTH, BEAM, DRAFT] = [4, 0.5, 0.2];
const hull = madeHull({
  name: 'box',
  stations: [-2, 0, 2].map((x) => ({
    x,
    section: [
      [0, 0],
      [BEAM / 2, 0],
      [BEAM / 2, 0.4],
    ],
  })),
  between: 'chords',
});
const level = { draft: DRAFT, trim: 0, heel: 0 };
const strips = stripsOf(hull, level, immersedProperties(hull, level));

describe('strips of a box', () => {
  it('are as long together as its waterline, and none leaves the water', () => {
    expect(strips.reduce((sum, { length }) => sum + length, 0)).toBeCloseTo(LENGTH, 9);
    for (const { half } of strips) {
      expect(half.z[0]).toBeCloseTo(-DRAFT, 9);
      expect(half.z.at(-1)).toBeCloseTo(0, 9);
      expect(Math.max(...half.y)).toBeCloseTo(BEAM / 2, 9);
    }
  });

  it('are alike, so that sums about the middle are those of equal weights at even places', () => {
    const { added, damping } = stripSums(strips, 5, 1000);
    expect(added[0]).toBeGreaterThan(0);
    for (const [whole, first, second] of [added, damping]) {
      expect(Math.abs(first / whole)).toBeLessThan(1e-9);
      // Mean square of n even places over a length: L²/12 · (1 − 1/n²).
      expect(second / whole).toBeCloseTo((LENGTH ** 2 / 12) * (1 - 1 / strips.length ** 2), 6);
    }
  });

  it('take along more water per metre the denser it is, in proportion', () => {
    const [fresh, salt] = [1000, 1025].map((density) => stripSums(strips, 5, density).added[0]);
    expect(salt! / fresh!).toBeCloseTo(1.025, 9);
  });
});

it('strips of a box that lies bow up are as deep as the water over the floor there: draft less x·tan(trim)', () => {
  const trimmed = { ...level, trim: 0.03 };
  for (const { x, half } of stripsOf(hull, trimmed, immersedProperties(hull, trimmed)))
    expect(half.z[0]).toBeCloseTo(-(DRAFT - x * Math.tan(0.03)), 9);
});
