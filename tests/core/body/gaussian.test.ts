import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { conditioned, type Gaussian, mixed } from '../../../core/body/gaussian.ts';

/** Two values with standard deviations 3 and 4 and correlation 0.5. */
const PAIR: Gaussian = {
  mean: [10, 20],
  covariance: [
    [9, 6],
    [6, 16],
  ],
};

describe('conditioning on a reading', () => {
  it('is the textbook’s two-value case by hand', () => {
    // Reading 26 ± 2 of the second: gain (6, 16)/(16 + 4), surprise 6.
    const { mean, covariance } = conditioned(PAIR, { index: 1, value: 26, sd: 2 });
    expect(mean[0]).toBeCloseTo(10 + (6 * 6) / 20, 12);
    expect(mean[1]).toBeCloseTo(20 + (16 * 6) / 20, 12);
    expect(covariance[0]![0]).toBeCloseTo(9 - 36 / 20, 12);
    expect(covariance[0]![1]).toBeCloseTo(6 - (6 * 16) / 20, 12);
    expect(covariance[1]![1]).toBeCloseTo(16 - 256 / 20, 12);
  });

  it('of one value alone is the mean weighted by 1/variance', () => {
    const { mean, covariance } = conditioned({ mean: [1], covariance: [[4]] }, { index: 0, value: 3, sd: 1 });
    expect(mean[0]).toBeCloseTo((1 / 4 + 3 / 1) / (1 / 4 + 1), 12);
    expect(covariance[0]![0]).toBeCloseTo(1 / (1 / 4 + 1), 12);
  });

  it('believes a perfect reading outright, and an endless doubt not at all', () => {
    const perfect = conditioned(PAIR, { index: 0, value: 12, sd: 0 });
    expect(perfect.mean[0]).toBeCloseTo(12, 12);
    expect(perfect.covariance[0]![0]).toBeCloseTo(0, 12);
    const vague = conditioned(PAIR, { index: 0, value: 1000, sd: 1e9 });
    expect(vague.mean[0]).toBeCloseTo(10, 6);
    expect(vague.covariance[0]![0]).toBeCloseTo(9, 6);
  });

  it('leaves a certain value alone when the reading claims certainty too', () => {
    const certain: Gaussian = { mean: [1], covariance: [[0]] };
    expect(conditioned(certain, { index: 0, value: 2, sd: 0 })).toBe(certain);
  });

  it('does not care in which order readings come', () => {
    const first = { index: 0, value: 11, sd: 1 };
    const second = { index: 1, value: 17, sd: 2 };
    const [ab, ba] = [[first, second].reduce(conditioned, PAIR), [second, first].reduce(conditioned, PAIR)];
    for (const i of [0, 1]) {
      expect(ab!.mean[i]).toBeCloseTo(ba!.mean[i]!, 12);
      expect(ab!.covariance[i]![0]).toBeCloseTo(ba!.covariance[i]![0]!, 12);
    }
  });

  it('never widens anything', () => {
    const reading = fc.record({
      index: fc.constantFrom(0, 1),
      value: fc.double({ min: -100, max: 100, noNaN: true }),
      sd: fc.double({ min: 0, max: 50, noNaN: true }),
    });
    fc.assert(
      fc.property(fc.array(reading, { minLength: 1, maxLength: 4 }), (readings) => {
        const after = readings.reduce(conditioned, PAIR);
        expect(after.covariance[0]![0]).toBeLessThanOrEqual(9 + 1e-9);
        expect(after.covariance[1]![1]).toBeLessThanOrEqual(16 + 1e-9);
      }),
      { seed: 302 },
    );
  });
});

describe('an even mixture', () => {
  it('of one is itself', () => {
    expect(mixed([PAIR])).toEqual(PAIR);
  });

  it('adds the spread of the means: two tables 2 cm apart', () => {
    const { mean, covariance } = mixed([
      { mean: [0.4], covariance: [[0.0001]] },
      { mean: [0.42], covariance: [[0.0003]] },
    ]);
    expect(mean[0]).toBeCloseTo(0.41, 12);
    expect(covariance[0]![0]).toBeCloseTo(0.0002 + 0.01 ** 2, 12);
  });
});
