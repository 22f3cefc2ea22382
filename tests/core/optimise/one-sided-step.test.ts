import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type OneSided, oneSidedStep } from '../../../core/optimise/one-sided-step.ts';

const wide = (n: number) => ({ low: new Array<number>(n).fill(-100), high: new Array<number>(n).fill(100) });

function costAt({ residuals, jacobian, at, weight }: OneSided, d: readonly number[]): number {
  const rows = residuals.map((r, i) => Math.max(0, r + jacobian[i]!.reduce((s, a, j) => s + a * d[j]!, 0)));
  return rows.reduce((s, r) => s + r * r, 0) + at.reduce((s, x, j) => s + (weight * (x + d[j]!)) ** 2, 0);
}

describe('oneSidedStep', () => {
  it('goes to the edge and no farther: one unknown that must come under −3', () => {
    // max(0, 3 + d)² + (0.01·d)²: least at d = −3/(1 + 0.0001).
    const [d] = oneSidedStep({ residuals: [3], jacobian: [[1]], at: [0], weight: 0.01 }, wide(1));
    expect(d).toBeCloseTo(-3 / 1.0001, 8);
  });

  it('does nothing where nothing is wrong and nothing was moved', () => {
    expect(
      oneSidedStep({ residuals: [-1, -2], jacobian: [[1], [-1]], at: [0], weight: 0.1 }, wide(1)),
    ).toEqual([0]);
  });

  it('sees an edge that counts only on the way', () => {
    // Row 1 wants d ≤ −4; row 2, quiet at the start, wants d ≥ −2: they meet half-way at −3.
    const problem = { residuals: [4, -2], jacobian: [[1], [-1]], at: [0], weight: 0 };
    expect(oneSidedStep(problem, wide(1))[0]).toBeCloseTo(-3, 8);
  });

  it('stops at a limit and lets another unknown make up for it', () => {
    const problem = { residuals: [5], jacobian: [[1, 1]], at: [0, 0], weight: 0.001 };
    const [a, b] = oneSidedStep(problem, { low: [-1, -100], high: [1, 100] });
    expect(a).toBeCloseTo(-1, 8);
    expect(b).toBeCloseTo(-4, 4);
  });

  it('for random problems no point near by, nor any of a random cloud, costs less', () => {
    const number = fc.double({ min: -3, max: 3, noNaN: true });
    const row = fc.array(number, { minLength: 3, maxLength: 3 });
    fc.assert(
      fc.property(
        fc.array(row, { minLength: 2, maxLength: 8 }),
        fc.array(number, { minLength: 8, maxLength: 8 }),
        fc.array(row, { minLength: 40, maxLength: 40 }),
        (jacobian, all, cloud) => {
          const residuals = jacobian.map((_, i) => all[i]!);
          const problem = { residuals, jacobian, at: [0.5, -1, 0], weight: 0.1 };
          const limits = { low: [-2, -1, -3], high: [1, 2, 3] };
          const step = oneSidedStep(problem, limits);
          const inside = (d: readonly number[]) =>
            d.map((v, j) => Math.min(limits.high[j]!, Math.max(limits.low[j]!, v)));
          expect(step).toEqual(inside(step));
          const cost = costAt(problem, step);
          for (const point of cloud) {
            const near = inside(step.map((d, j) => d + 0.01 * point[j]!));
            expect(costAt(problem, inside(point))).toBeGreaterThanOrEqual(cost * (1 - 1e-3) - 1e-7);
            expect(costAt(problem, near)).toBeGreaterThanOrEqual(cost * (1 - 1e-3) - 1e-7);
          }
        },
      ),
      { seed: 11, numRuns: 200 },
    );
  });
});
