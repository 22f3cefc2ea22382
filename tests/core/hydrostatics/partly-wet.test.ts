import { describe, expect, it } from 'vitest';
import { immersedProperties, propertiesAt } from '../../../core/hydrostatics/immersed-properties.ts';
import { waterPlane } from '../../../core/hydrostatics/water-plane.ts';
import { box } from '../../reference/hydro-shapes.ts';

/**
 * A box so trimmed that its bottom comes out of the water within an interval between two stations. What is under water is a
 * triangular prism: hand geometry.
 */
const B = 0.5;
const L = 5;
const hull = box(L, B, 0.4);

// The water meets the bottom at x = draft ÷ slope: 0.8 or 1.8 m from amidships, on either side of the row at 1.25 m.
describe.each([
  [1, 0.04],
  [-1, 0.04],
  [1, 0.09],
  [-1, 0.09],
])('a box whose bottom leaves the water, bow up × %i, draft %f m', (way, draft) => {
  const slope = 0.05 * way;
  const ends = draft / slope;
  const wetLength = L / 2 + Math.abs(ends);
  const deepest = wetLength * Math.abs(slope);
  const found = immersedProperties(hull, { draft, trim: Math.atan(slope), heel: 0 });

  it('displaces half of wet length × depth at its end × breadth', () => {
    expect(found.volume).toBeCloseTo((B * wetLength * deepest) / 2, 9);
  });

  it('has its centre of buoyancy a third of the wet length from the deep end', () => {
    const deepEnd = -way * (L / 2);
    expect(found.centroid.x).toBeCloseTo(deepEnd + (way * wetLength) / 3, 6);
    expect(found.centroid.y).toBeCloseTo(0, 12);
  });

  it('has a waterline from the deep end to where the bottom comes out', () => {
    const { aftEnd, foreEnd, length, beam } = found.waterplane;
    const [aft, fore] = [-way * (L / 2), ends].toSorted((a, b) => a - b);
    expect(aftEnd).toBeCloseTo(aft!, 6);
    expect(foreEnd).toBeCloseTo(fore!, 6);
    expect(length).toBeCloseTo(wetLength, 6);
    expect(beam).toBeCloseTo(B, 9);
    // The quick pass that a drag asks for has the same ends.
    const plane = waterPlane({ draft, trim: Math.atan(slope), heel: 0 });
    const quick = propertiesAt(hull, plane, 'steady').waterplane;
    expect(quick.aftEnd).toBeCloseTo(aft!, 6);
    expect(quick.foreEnd).toBeCloseTo(fore!, 6);
  });
});
