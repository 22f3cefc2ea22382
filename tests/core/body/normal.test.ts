import { describe, expect, it } from 'vitest';
import { SIGMAS_TO_1_PERCENT, shareBelow } from '../../../core/body/normal.ts';

describe('share of a normal spread', () => {
  // Abramowitz & Stegun 1964, table 26.1.
  it.each([
    [0, 0.5],
    [0.5, 0.6914624613],
    [1, 0.8413447461],
    [1.96, 0.9750021049],
    [3, 0.998650102],
  ])('below %d sigmas is as tabled', (sigmas, share) => {
    expect(Math.abs(shareBelow(sigmas) - share)).toBeLessThan(1e-7);
    expect(Math.abs(shareBelow(-sigmas) - (1 - share))).toBeLessThan(1e-7);
  });

  it('has one in a hundred below the 1st percentile', () => {
    expect(shareBelow(-SIGMAS_TO_1_PERCENT)).toBeCloseTo(0.01, 5);
  });

  it('stays between 0 and 1 far out', () => {
    expect(shareBelow(-40)).toBeGreaterThanOrEqual(0);
    expect(shareBelow(40)).toBeLessThanOrEqual(1);
  });
});
