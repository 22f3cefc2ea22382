import { describe, expect, it } from 'vitest';
import { changes } from './compare.ts';
import { growthExponent, quantile, type Row, sideBySide, timesOf } from './measure.ts';

describe('the bench’s statistics', () => {
  it('median and 95th percentile by the nearest rank: 1 to 20 give 10 and 19', () => {
    const values = Array.from({ length: 20 }, (_, i) => 20 - i);
    expect(quantile(values, 0.5)).toBe(10);
    expect(quantile(values, 0.95)).toBe(19);
    expect(timesOf(values)).toEqual({ medianUs: 10_000, p95Us: 19_000, runs: 20 });
  });

  it('finds the exponent of a power law exactly', () => {
    expect(growthExponent([2, 5, 11, 40].map((x) => [x, 3 * x ** 1.7] as const))).toBeCloseTo(1.7, 10);
  });

  it('runs every piece of work once a round, warm-up left out', () => {
    let calls = 0;
    const times = sideBySide({ one: () => calls++ }, { rounds: 8, warmUp: 2 });
    expect(calls).toBe(10);
    expect(times.one!.runs).toBe(8);
  });

  it('flags what changed by more than 15 %, the slower first, and nothing else', () => {
    const row = (name: string, medianUs: number): Row => ({
      group: 'core',
      name,
      medianUs,
      p95Us: medianUs,
      runs: 1,
      ratio: null,
    });
    const before = [row('a', 100), row('b', 100), row('c', 100)];
    const after = [row('a', 80), row('b', 114), row('c', 130), row('new', 5)];
    expect(changes(before, after).map((c) => [c.name, Math.round(100 * c.share)])).toEqual([
      ['core c', 30],
      ['core a', -20],
    ]);
  });
});
