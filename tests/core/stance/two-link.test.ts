import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { norm, subtract, type Vec3 } from '../../../core/frame/vec3.ts';
import { twoLink } from '../../../core/stance/two-link.ts';

const coordinate = fc.double({ min: -3, max: 3, noNaN: true });
const point = fc.record({ x: coordinate, y: coordinate, z: coordinate });
const solve = (a: Vec3, b: Vec3, first = 0.42, second = 0.43) =>
  twoLink(a, b, { first, second, bend: { x: 1, y: 0, z: 0.2 } });

describe('twoLink', () => {
  it('solves the 3-4-5 triangle by hand', () => {
    const chain = twoLink(
      { x: 0, y: 0, z: 0 },
      { x: 0, y: 0, z: -5 },
      {
        first: 3,
        second: 4,
        bend: { x: 1, y: 0, z: 0 },
      },
    );
    const { x, z } = chain.middle;
    expect(z).toBeCloseTo(-1.8, 6);
    expect(x).toBeCloseTo(2.4, 3);
    expect(chain.excess).toBeCloseTo(-2, 6);
  });

  it('keeps both links their length, within 2 mm, wherever the ends are well in reach', () => {
    fc.assert(
      fc.property(point, point, (a, b) => {
        const apart = norm(subtract(a, b));
        fc.pre(apart > 0.05 && apart < 0.8);
        const middle = solve(a, b).middle;
        expect(Math.abs(norm(subtract(middle, a)) - 0.42)).toBeLessThan(0.002);
        expect(Math.abs(norm(subtract(middle, b)) - 0.43)).toBeLessThan(0.002);
      }),
      { seed: 3, numRuns: 300 },
    );
  });

  it('is finite for any ends, coinciding and far apart too, and says what is missing', () => {
    fc.assert(
      fc.property(point, point, (a, b) => {
        for (const end of [b, a]) {
          const chain = solve(a, end);
          const { x, y, z } = chain.middle;
          expect(Number.isFinite(x + y + z)).toBe(true);
          const apart = norm(subtract(a, end));
          expect(chain.excess).toBeCloseTo(apart - 0.85, 5);
        }
      }),
      { seed: 4, numRuns: 200 },
    );
  });
});
