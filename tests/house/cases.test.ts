import { describe, expect, it } from 'vitest';
import { scaled, timesOf } from '../cases.ts';

describe('cases of the long run', () => {
  it('are as many as the test says, times KNEELWRIGHT_CASES', () => {
    expect(scaled({ quick: 30, long: 400 }, 1)).toBe(400);
    expect(scaled({ quick: 30, long: 400 }, 4)).toBe(1600);
    expect(scaled({ quick: 30, long: 400 }, 0.25)).toBe(100);
  });

  it('are never fewer than those of the quick run', () => {
    expect(scaled({ quick: 30, long: 400 }, 0.01)).toBe(30);
  });

  it('of a sweep are finer steps, one at least, and never coarser than those of the quick run', () => {
    expect(scaled({ quick: 64, long: 8 }, 1)).toBe(8);
    expect(scaled({ quick: 64, long: 8 }, 4)).toBe(2);
    expect(scaled({ quick: 64, long: 8 }, 100)).toBe(1);
    expect(scaled({ quick: 64, long: 8 }, 0.01)).toBe(64);
  });

  it('take no nonsense from the environment', () => {
    expect(timesOf(undefined)).toBe(1);
    expect(timesOf('2.5')).toBe(2.5);
    for (const wrong of ['', '0', '-1', 'many']) expect(() => timesOf(wrong)).toThrow('KNEELWRIGHT_CASES');
  });
});
