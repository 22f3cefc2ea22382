import { describe, expect, it } from 'vitest';
import { bytesPerCall, growthExponent, quantile, ratioOf, sideBySide, timesOf } from './measure.ts';

describe('the bench’s statistics', () => {
  it('median and 95th percentile by the nearest rank: 1 to 20 give 10 and 19, in any order', () => {
    const values = Array.from({ length: 20 }, (_, i) => 20 - i);
    expect(quantile(values, 0.5)).toBe(10);
    expect(quantile(values, 0.95)).toBe(19);
    expect(values[0]).toBe(20);
    expect(timesOf(values)).toEqual({ medianUs: 10_000, p95Us: 19_000, runs: 20, ownUs: null });
  });

  it('nearest rank at the ends: a share of 0 is the least, of 1 the greatest, of nothing no number', () => {
    expect([quantile([5, 3, 9], 0), quantile([5, 3, 9], 1)]).toEqual([3, 9]);
    expect(quantile([], 0.5)).toBeNaN();
  });

  it('sorts numbers as numbers', () => {
    expect(quantile([10, 9, 100], 0.5)).toBe(10);
  });

  it('gives no 95th percentile of fewer than twenty timings', () => {
    expect(timesOf([1, 2, 3])).toEqual({ medianUs: 2000, p95Us: null, runs: 3, ownUs: null });
  });

  it('finds the exponent of a power law exactly, whatever its factor', () => {
    for (const power of [0, 0.5, 1, 1.7, -2]) {
      const points = [2, 5, 11, 40].map((x) => [x, 3 * x ** power] as const);
      expect(growthExponent(points)).toBeCloseTo(power, 10);
    }
  });

  it('says how many times longer one takes than another', () => {
    const times = (medianUs: number, ownUs: number | null = null) => ({
      medianUs,
      p95Us: null,
      runs: 1,
      ownUs,
    });
    expect(ratioOf(times(30), times(4))).toBe(7.5);
    expect(ratioOf(times(30, 8), times(4))).toBe(2);
    expect(ratioOf(times(30, 8), times(4, 4))).toBe(2);
  });
});

describe('work side by side', () => {
  it('gives every piece its turn in each round, and leaves the warm-up out', () => {
    const order: string[] = [];
    const note = (name: string) => () => order.push(name);
    const times = sideBySide({ one: note('1'), two: note('2') }, { rounds: 3, turnMs: 0, warmUpMs: 0 });
    expect(order.join('')).toBe('12'.repeat(4));
    expect([times.one.runs, times.two.runs]).toEqual([3, 3]);
  });

  it('tells each call which one it is', () => {
    const calls: number[] = [];
    sideBySide({ one: (call) => calls.push(call) }, { rounds: 4, turnMs: 0, warmUpMs: 0 });
    expect(calls).toEqual([0, 0, 1, 2, 3]);
  });
});

describe('heap that one call takes', () => {
  it('grows with what the call makes', async () => {
    let kept: unknown = null;
    const making = (numbers: number) => () => {
      kept = Array.from({ length: numbers }, (_, i) => i + 0.5);
    };
    const [little, much] = [await bytesPerCall(making(20)), await bytesPerCall(making(400))];
    expect(kept).toHaveLength(400);
    expect(much).toBeGreaterThan(5 * little);
  });
});
