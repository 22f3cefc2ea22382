import { describe, expect, it } from 'vitest';
import { strokeRate } from '../../../core/photograph/stroke-rate.ts';
import { seeded } from './synthetic-picture.ts';

const FRAME_S = 1 / 30;

describe('the rate from catches in a video', () => {
  it('is that of even catches, however they are given', () => {
    const { perMin, strokes } = strokeRate([3, 1, 2, 4, 2.01], FRAME_S)!;
    expect(perMin).toBeCloseTo(60, 9);
    expect(strokes).toBe(3);
  });

  it('is surer with more strokes, and less sure of uneven ones', () => {
    const even = (n: number) =>
      strokeRate(
        Array.from({ length: n }, (_, i) => 0.9 * i),
        FRAME_S,
      )!;
    expect(even(8).sd).toBeLessThan(0.2 * even(2).sd);
    expect(strokeRate([0, 0.8, 1.9, 2.7], FRAME_S)!.sd).toBeGreaterThan(2 * even(4).sd);
  });

  it('has the slope and the standard error of a textbook’s line', () => {
    // y = 1, 3, 2, 5 at x = 0 … 3: slope 1.1, residual sum of squares 2.7, standard error √(1.35/5) (worked by hand).
    const { perMin, sd } = strokeRate(
      [1, 3, 2, 5].map((y, i) => 10 * i + y),
      FRAME_S,
    )!;
    expect(60 / perMin).toBeCloseTo(11.1, 9);
    expect(sd / perMin).toBeCloseTo(Math.sqrt(1.35 / 5) / 11.1, 9);
  });

  it('lies within its 95 % as often as it says, over catches off by a frame', () => {
    const random = seeded(4);
    let inside = 0;
    for (let i = 0; i < 400; i++) {
      const catches = Array.from({ length: 6 }, (_, k) => 0.85 * k + FRAME_S * random.normal());
      const { perMin, sd } = strokeRate(catches, FRAME_S)!;
      if (Math.abs(perMin - 60 / 0.85) < 1.96 * sd) inside += 1;
    }
    expect(inside / 400).toBeGreaterThan(0.92);
  });

  it('needs two catches', () => {
    expect(strokeRate([], FRAME_S)).toBeNull();
    expect(strokeRate([2, 2.1], FRAME_S)).toBeNull();
  });
});
