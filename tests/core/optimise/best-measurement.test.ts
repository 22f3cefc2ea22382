import { describe, expect, it } from 'vitest';
import { tightenings } from '../../../core/optimise/best-measurement.ts';

describe('tightenings', () => {
  it('two lengths and one tape over both, by hand', () => {
    // Lengths with variances 4 and 1, independent; q = 2a − b: variance 17. A tape reads a + b with variance 3 of its own:
    // Cov(q, m) = 2·4 − 1 = 7, Var m = 8; left 17 − 49/8 = 10.875.
    const [only] = tightenings({ slopes: [2, -1], variance: 17 }, [
      { measure: 'both', withLengths: [4, 1], variance: 8 },
    ]);
    expect(only!.sdNow).toBeCloseTo(Math.sqrt(17), 12);
    expect(only!.sdAfter).toBeCloseTo(Math.sqrt(10.875), 12);
  });

  it('the best comes first; one that says nothing of the value changes nothing', () => {
    const sorted = tightenings({ slopes: [1, 0], variance: 9 }, [
      { measure: 'idle', withLengths: [0, 5], variance: 6 },
      { measure: 'good', withLengths: [3, 0], variance: 4 },
      { measure: 'perfect', withLengths: [9, 0], variance: 9 },
    ]);
    expect(sorted.map((t) => t.measure)).toEqual(['perfect', 'good', 'idle']);
    expect(sorted[0]!.sdAfter).toBe(0);
    expect(sorted[2]!.sdAfter).toBe(3);
  });

  it('a tape without any variance is of no use, and nothing is not a number', () => {
    const [tight] = tightenings({ slopes: [1], variance: 1 }, [
      { measure: 'empty', withLengths: [0], variance: 0 },
    ]);
    expect(tight!.sdAfter).toBe(1);
  });
});
