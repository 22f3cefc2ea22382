import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  combine,
  covarianceOf,
  exactly,
  type Uncertain,
  uncertain,
  varianceOf,
} from '../../../core/body/uncertain.ts';

const quantity = fc
  .record({
    mean: fc.double({ min: -2, max: 2, noNaN: true }),
    a: fc.double({ min: -1, max: 1, noNaN: true }),
    b: fc.double({ min: -1, max: 1, noNaN: true }),
    c: fc.double({ min: -1, max: 1, noNaN: true }),
  })
  .map(({ mean, ...sources }): Uncertain => ({ mean, sources }));

describe('uncertain quantities', () => {
  it('an exact value has no variance', () => {
    expect(exactly(1.8)).toEqual({ mean: 1.8, sources: {} });
    expect(varianceOf(exactly(1.8))).toBe(0);
  });

  it('independent doubts add by their squares', () => {
    const sum = combine([
      [1, uncertain(1, 3, 'tape')],
      [1, uncertain(2, 4, 'hand')],
    ]);
    expect(sum.mean).toBe(3);
    expect(varianceOf(sum)).toBe(25);
  });

  it('the same doubt twice cancels in a difference', () => {
    const hip = uncertain(0.9, 0.02, 'sole');
    const knee = uncertain(0.5, 0.02, 'sole');
    const thigh = combine([
      [1, hip],
      [-1, knee],
    ]);
    expect(thigh.mean).toBeCloseTo(0.4, 15);
    expect(varianceOf(thigh)).toBe(0);
  });

  it('covariance is that of shared sources only', () => {
    const a = combine([
      [1, uncertain(0, 2, 'x')],
      [1, uncertain(0, 5, 'y')],
    ]);
    const b = combine([
      [3, uncertain(0, 2, 'x')],
      [1, uncertain(0, 7, 'z')],
    ]);
    expect(covarianceOf(a, b)).toBe(12);
    expect(covarianceOf(a, uncertain(0, 1, 'elsewhere'))).toBe(0);
  });

  it('obeys var(a − b) = var a + var b − 2 cov, which the survey’s difference rows rest on', () => {
    fc.assert(
      fc.property(quantity, quantity, (a, b) => {
        const difference = combine([
          [1, a],
          [-1, b],
        ]);
        const expected = varianceOf(a) + varianceOf(b) - 2 * covarianceOf(a, b);
        expect(Math.abs(varianceOf(difference) - expected)).toBeLessThan(1e-12);
        expect(covarianceOf(a, b)).toBeCloseTo(covarianceOf(b, a), 15);
        expect(covarianceOf(a, b) ** 2).toBeLessThanOrEqual(varianceOf(a) * varianceOf(b) + 1e-12);
      }),
      { seed: 301 },
    );
  });
});
