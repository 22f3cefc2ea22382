import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { plotScale } from '../../../renderer/ui/plot-scale.ts';

const SEED = 20260314;

describe('the scale of a plot', () => {
  it('is ruled at round figures around the values', () => {
    const given = { spaces: 4, steps: [1, 2, 2.5, 5], leastRange: 0 };
    expect(plotScale([1.44, 1.49, 1.52], given).ticks).toEqual([1.44, 1.46, 1.48, 1.5, 1.52]);
    expect(plotScale([38, 44], given).ticks).toEqual([38, 40, 42, 44]);
    expect(plotScale([1.52], { ...given, leastRange: 0.03 }).ticks).toEqual([1.52, 1.53]);
  });

  it(`holds every value between round marks, two to five of them (seed ${SEED})`, () => {
    const given = { spaces: 3, steps: [1, 2, 5], leastRange: 1e-3 };
    fc.assert(
      fc.property(fc.array(fc.double({ min: -1e4, max: 1e4, noNaN: true }), { minLength: 1 }), (values) => {
        const { low, high, ticks } = plotScale(values, given);
        expect(low).toBeLessThanOrEqual(Math.min(...values) + 1e-6);
        expect(high).toBeGreaterThanOrEqual(Math.max(...values) - 1e-6);
        expect(ticks.length).toBeGreaterThanOrEqual(2);
        expect(ticks.length).toBeLessThanOrEqual(5);
        const step = ticks[1]! - ticks[0]!;
        const lead = step / 10 ** Math.floor(Math.log10(step) + 1e-9);
        expect([1, 2, 5].some((n) => Math.abs(n - lead) < 1e-6)).toBe(true);
      }),
      { seed: SEED, numRuns: 300 },
    );
  });
});
