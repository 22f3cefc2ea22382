import { describe, expect, it } from 'vitest';
import { secondsAt, strokeAt } from '../../../core/stroke/stroke-clock.ts';

describe('the clock of a stroke', () => {
  it('goes once round in the time of one stroke', () => {
    // 60 strokes a minute take a second each.
    expect(strokeAt(0, 60)).toBe(0);
    expect(strokeAt(0.3, 60)).toBeCloseTo(1, 9);
    expect(strokeAt(0.7, 60)).toBeCloseTo(2, 9);
    // The way back to ready takes the last three tenths: half of it is done after 0.85 s.
    expect(strokeAt(0.85, 60)).toBeCloseTo(2.5, 9);
    expect(secondsAt(2.5, 60)).toBeCloseTo(0.85, 9);
    expect(strokeAt(1.15, 60)).toBeCloseTo(strokeAt(0.15, 60), 9);
    expect(strokeAt(0.3, 30)).toBeCloseTo(strokeAt(0.15, 60), 9);
  });

  it('never runs back within a stroke, and is undone by its inverse', () => {
    let before = -1;
    for (let k = 0; k < 100; k++) {
      const at = strokeAt(k / 100, 60);
      expect(at).toBeGreaterThan(before);
      expect(secondsAt(at, 60)).toBeCloseTo(k / 100, 9);
      before = at;
    }
  });
});
