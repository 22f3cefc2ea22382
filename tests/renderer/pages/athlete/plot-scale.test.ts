import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { plotScale } from '../../../../renderer/pages/athlete/plot-scale.ts';

const SEED = 20260314;

describe('the scale of a plot', () => {
  it('is ruled at round figures around the values', () => {
    expect(plotScale([1.44, 1.49, 1.52]).ticks).toEqual([1.44, 1.46, 1.48, 1.5, 1.52]);
    expect(plotScale([38, 44]).ticks).toEqual([38, 40, 42, 44]);
    expect(plotScale([1.52]).ticks.length).toBeGreaterThan(1);
  });

  it(`holds every value between few rules (seed ${SEED})`, () => {
    const values = fc.array(fc.double({ min: 0.5, max: 250, noNaN: true }), { minLength: 1, maxLength: 30 });
    fc.assert(
      fc.property(values, (given) => {
        const { low, high, ticks } = plotScale(given);
        const dust = 1e-9 * Math.max(...given);
        expect(low).toBeLessThanOrEqual(Math.min(...given) + dust);
        expect(high).toBeGreaterThanOrEqual(Math.max(...given) - dust);
        expect(high).toBeGreaterThan(low);
        expect(ticks.length).toBeLessThanOrEqual(7);
      }),
      { seed: SEED, numRuns: 500 },
    );
  });
});
