import { describe, expect, it } from 'vitest';
import { createEvaluator } from '../../../core/evaluation/evaluator.ts';
import { exampleFit, exampleSeat } from '../example/example-fit.ts';

const evaluator = createEvaluator();
const value = (fit: ReturnType<typeof exampleFit>, id: string, seat: number) =>
  evaluator.evaluate(fit).quantities.find((q) => q.id === id && q.seat === seat)?.value;

describe('neighbours in a crew', () => {
  const pair = exampleFit([exampleSeat(), exampleSeat({ side: 'right' })]);

  it('have room between rear rest and next foot: no more than between the centre lines of both', () => {
    const room = value(pair, 'toNextSeat', 0)!;
    expect(room).toBeGreaterThan(0);
    // Rest 0.10 to the right of the centreline, next heel 0.06 to the left of it; halves of both are 0.07 and 0.05.
    expect(room).toBeLessThan(0.16);
    expect(Math.abs(room - (0.16 - 0.07 - 0.05))).toBeLessThan(0.02);
    expect(value(pair, 'toNextSeat', 1)).toBeUndefined();
  });

  it('pass side by side, and lose room when the rest ahead moves toward the next foot', () => {
    const seats = pair.seats.map((s, i) =>
      i === 0 ? { ...s, rearRest: { ...s.rearRest, outM: -0.08 } } : s,
    );
    expect(value({ ...pair, seats }, 'toNextSeat', 0)!).toBeLessThan(value(pair, 'toNextSeat', 0)!);
  });

  it('on the same side swing their blades a station apart; on different sides there is nothing to say', () => {
    const same = exampleFit([exampleSeat(), exampleSeat()]);
    expect(value(same, 'bladeSpacing', 0)).toBeCloseTo(1.15, 9);
    expect(value(pair, 'bladeSpacing', 0)).toBeUndefined();
  });

  it('an empty seat has no neighbours', () => {
    const gap = exampleFit([exampleSeat(), exampleSeat({ athlete: null })]);
    expect(value(gap, 'toNextSeat', 0)).toBeUndefined();
  });
});

describe('the knee of the other side', () => {
  it('is pointed out', () => {
    const fit = exampleFit([exampleSeat({ side: 'left', kneels: 'right' })]);
    const finding = evaluator.evaluate(fit).findings.find((f) => f.quantity === 'kneelsOnSide')!;
    expect(finding.severity).toBe('change');
  });
});
