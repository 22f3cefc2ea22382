import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { norm, subtract } from '../../../core/frame/vec3.ts';
import { leaning } from '../../../core/posture/leaning.ts';

const angle = fc.double({ min: -1.4, max: 1.4, noNaN: true });

describe('leaning', () => {
  it('stands straight up at nothing', () => {
    const { up } = leaning(0, 0);
    expect([up.x, up.y, up.z].map((v) => Number(v.toFixed(9)))).toEqual([0, 0, 1]);
  });

  it('is a unit vector whose two views lean as asked', () => {
    fc.assert(
      fc.property(angle, angle, (pitch, roll) => {
        const { up } = leaning(pitch, roll);
        expect(norm(up)).toBeCloseTo(1, 9);
        expect(Math.atan2(up.x, up.z)).toBeCloseTo(pitch, 9);
        expect(Math.atan2(up.y, up.z)).toBeCloseTo(roll, 9);
      }),
      { seed: 7, numRuns: 200 },
    );
  });

  it('changes with pitch and roll as differences say', () => {
    const h = 1e-6;
    fc.assert(
      fc.property(angle, angle, (pitch, roll) => {
        const at = leaning(pitch, roll);
        const byPitch = subtract(leaning(pitch + h, roll).up, leaning(pitch - h, roll).up);
        const byRoll = subtract(leaning(pitch, roll + h).up, leaning(pitch, roll - h).up);
        for (const axis of ['x', 'y', 'z'] as const) {
          expect(at.byPitch[axis]).toBeCloseTo(byPitch[axis] / (2 * h), 5);
          expect(at.byRoll[axis]).toBeCloseTo(byRoll[axis] / (2 * h), 5);
        }
      }),
      { seed: 8, numRuns: 200 },
    );
  });

  it('is finite lying flat both ways, where it has no direction', () => {
    const { up, byPitch, byRoll } = leaning(Math.PI / 2, Math.PI / 2);
    for (const v of [up, byPitch, byRoll]) expect(Number.isFinite(v.x + v.y + v.z)).toBe(true);
  });
});
