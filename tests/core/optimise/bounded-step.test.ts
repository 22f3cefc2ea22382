import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { boundedStep } from '../../../core/optimise/bounded-step.ts';

const open = (n: number) => ({ low: new Array(n).fill(-1e9), high: new Array(n).fill(1e9), damping: 0 });

describe('boundedStep', () => {
  it('solves a plain least-squares problem: a straight line through three points, by hand', () => {
    // y = a + b·x through (0, 1), (1, 2), (2, 4): normal equations give a = 5/6, b = 3/2.
    const jacobian = [
      [1, 0],
      [1, 1],
      [1, 2],
    ];
    const [a, b] = boundedStep({ residuals: [-1, -2, -4], jacobian }, open(2));
    expect(a).toBeCloseTo(5 / 6, 10);
    expect(b).toBeCloseTo(3 / 2, 10);
  });

  it('stops at a bound and lets the others make up for it', () => {
    const jacobian = [
      [1, 1],
      [1, -1],
    ];
    const step = boundedStep({ residuals: [-4, -2], jacobian }, { low: [0, 0], high: [2, 5], damping: 0 });
    // With x fixed at 2, least squares of (2 + y − 4)² + (2 − y − 2)² has its minimum at y = 1.
    expect(step[0]).toBe(2);
    expect(step[1]).toBeCloseTo(1, 10);
  });

  it('never leaves its bounds, whatever the problem', () => {
    const number = fc.double({ min: -10, max: 10, noNaN: true });
    const rows = fc.array(fc.tuple(number, number, number), { minLength: 3, maxLength: 6 });
    fc.assert(
      fc.property(rows, fc.array(number, { minLength: 6, maxLength: 6 }), (jacobian, r) => {
        const step = boundedStep(
          { residuals: jacobian.map((_, i) => r[i]!), jacobian },
          { low: [-1, -2, -3], high: [1, 2, 3], damping: 1e-6 },
        );
        step.forEach((d, i) => {
          expect(Number.isFinite(d)).toBe(true);
          expect(Math.abs(d)).toBeLessThanOrEqual(i + 1 + 1e-9);
        });
      }),
      { seed: 7 },
    );
  });
});
