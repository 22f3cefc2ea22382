import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { otherSide, toBoatFrame, toPaddlerFrame } from '../../../core/frame/mirror.ts';
import { cross, dot, norm } from '../../../core/frame/vec3.ts';

const point = fc.record({
  x: fc.double({ min: -5, max: 5, noNaN: true }),
  y: fc.double({ min: -1, max: 1, noNaN: true }),
  z: fc.double({ min: -1, max: 2, noNaN: true }),
});

describe('paddler’s frame', () => {
  it('goes to the boat frame and back', () => {
    fc.assert(
      fc.property(point, fc.constantFrom('left' as const, 'right' as const), (p, side) => {
        const seat = { stationX: 0.7, floorZ: 0.02, side };
        const back = toPaddlerFrame(toBoatFrame(p, seat), seat);
        expect(back.x).toBeCloseTo(p.x, 12);
        expect(back.y).toBeCloseTo(p.y, 12);
        expect(back.z).toBeCloseTo(p.z, 12);
      }),
      { seed: 20 },
    );
  });

  it('points y to port for a left-side paddler and mirrors exactly for the right', () => {
    const seat = { stationX: 0, floorZ: 0, side: 'left' as const };
    expect(toBoatFrame({ x: 0, y: 0.3, z: 0 }, seat).y).toBe(0.3);
    expect(toBoatFrame({ x: 0, y: 0.3, z: 0 }, { ...seat, side: otherSide('left') }).y).toBe(-0.3);
  });
});

describe('vectors', () => {
  it('cross product is square to both factors', () => {
    fc.assert(
      fc.property(point, point, (a, b) => {
        const c = cross(a, b);
        expect(Math.abs(dot(c, a))).toBeLessThan(1e-9 * (1 + norm(a) * norm(b) * norm(a)));
        expect(Math.abs(dot(c, b))).toBeLessThan(1e-9 * (1 + norm(a) * norm(b) * norm(b)));
      }),
      { seed: 21 },
    );
  });
});
