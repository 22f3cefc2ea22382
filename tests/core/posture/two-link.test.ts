import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { norm, plus, subtract, type Vec3 } from '../../../core/frame/vec3.ts';
import { cornerAngle } from '../../../core/posture/angles.ts';
import { chainCosine, excessOf, firstAngle } from '../../../core/posture/reach.ts';
import { twoLink, twoLinkSlope } from '../../../core/posture/two-link.ts';
import { cases } from '../../cases.ts';

const coordinate = fc.double({ min: -3, max: 3, noNaN: true });
const point = fc.record({ x: coordinate, y: coordinate, z: coordinate });
const solve = (a: Vec3, b: Vec3, first = 0.42, second = 0.43) =>
  twoLink(a, b, { first, second, bend: { x: 1, y: 0, z: 0.2 } });

describe('a leg as a chain between two places', () => {
  const right = { first: 3, second: 4, apart: 5 };

  it('has the angles of the 3-4-5 triangle: right in its middle, cos 3/5 at its first end', () => {
    expect(excessOf(right)).toBe(-2);
    expect(chainCosine(right)).toBeCloseTo(0, 12);
    expect(firstAngle(right, { first: 3, excess: -2 })).toBeCloseTo(Math.acos(3 / 5), 12);
  });

  it('is straight where it just reaches or is too short, and folded back where it turns round', () => {
    expect(firstAngle(right, { first: 3, excess: 0 })).toBe(0);
    expect(firstAngle(right, { first: 3, excess: 1 })).toBe(0);
    // 7 forward and 2 back are 5; with the second link first, 2 back and 7 forward.
    expect(firstAngle(right, { first: 7, excess: -4 })).toBeCloseTo(0, 6);
    expect(firstAngle(right, { first: 2, excess: -4 })).toBeCloseTo(Math.PI, 6);
  });
});

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
      { seed: 3, numRuns: cases(60, 300) },
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
      { seed: 4, numRuns: cases(40, 200) },
    );
  });

  it.each([
    [100, 0.1],
    [120, 0.1],
    [140, 0.15],
    [160, 0.5],
  ])(
    'bends as far as the law of cosines says at %i°, within %f°, and less as it straightens',
    (angle, within) => {
      const apart = Math.sqrt(0.42 ** 2 + 0.43 ** 2 - 2 * 0.42 * 0.43 * Math.cos((angle * Math.PI) / 180));
      const a = { x: 0, y: 0, z: 0 };
      const b = { x: 0, y: 0, z: -apart };
      const { middle } = solve(a, b);
      const bend = (cornerAngle(a, middle, b) * 180) / Math.PI;
      expect(Math.abs(bend - angle)).toBeLessThan(within);
    },
  );

  it('leaves a chain at full stretch a hint of its bend, and comes to it without a jump', () => {
    const a = { x: 0, y: 0, z: 0 };
    const out = (apart: number) => solve(a, { x: 0, y: 0, z: -apart }).middle.x;
    expect(out(0.85)).toBeGreaterThan(0.02);
    expect(out(0.85)).toBeLessThan(0.04);
    for (let apart = 0.7; apart < 1; apart += 0.001) {
      expect(Math.abs(out(apart + 0.001) - out(apart))).toBeLessThan(0.006);
    }
  });
});

describe('twoLinkSlope', () => {
  it('is what differences say, in reach and out of it', () => {
    fc.assert(
      fc.property(point, point, point, (a, b, motion) => {
        const apart = norm(subtract(a, b));
        // At the fold the chain has a corner that no stance comes near.
        fc.pre(apart > 0.05);
        const h = 1e-6;
        const exact = twoLinkSlope(solve(a, b), motion);
        const [more, less] = [h, -h].map((by) => solve(plus(a, by, motion), b));
        expect(exact.apart).toBeCloseTo((more!.apart - less!.apart) / (2 * h), 4);
        for (const axis of ['x', 'y', 'z'] as const) {
          const difference = (more!.middle[axis] - less!.middle[axis]) / (2 * h);
          expect(Math.abs(exact.middle[axis] - difference)).toBeLessThan(
            1e-4 * Math.max(1, Math.abs(difference)),
          );
        }
      }),
      { seed: 9, numRuns: cases(60, 300) },
    );
  });
});
