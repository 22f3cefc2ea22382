import { describe, expect, it } from 'vitest';
import { createEvaluator } from '../../../core/evaluation/evaluator.ts';
import type { Condition } from '../../../core/optimise/least-moves.ts';
import { boxAround, conditionsAt, meritOf } from '../../../core/optimise/linear-model.ts';
import { boxOf } from '../../../core/optimise/moves.ts';
import { exampleFit } from '../example/example-fit.ts';

const edge = { id: 'a', low: 1, high: 3, scale: 0.5, weight: 10 };
/** A value of 4 after the moves (1, −2), which gains 2 for each unit of the first move and loses 1 for each of the second. */
const here = { x: [1, -2], fit: exampleFit(), values: new Map([['a', 4]]) };
const slopes = new Map([['a', [2, -1]]]);
const valueAt = (x: readonly number[]) => 4 + 2 * (x[0]! - 1) - (x[1]! + 2);

const holds = ({ sign, slopes: row, scale, least }: Condition, x: readonly number[]) =>
  (sign * row.reduce((sum, slope, i) => sum + slope * x[i]!, 0)) / scale >= least - 1e-12;

describe('edges as linear conditions', () => {
  it('hold just where the linear value lies between its edges', () => {
    const conditions = conditionsAt([edge], { here, slopes });
    expect(conditions).toHaveLength(2);
    for (let a = -3; a <= 3; a += 0.25)
      for (let b = -3; b <= 3; b += 0.25) {
        const value = valueAt([a, b]);
        expect(holds(conditions[0]!, [a, b]), `${value} over 1`).toBe(value >= 1);
        expect(holds(conditions[1]!, [a, b]), `${value} under 3`).toBe(value <= 3);
      }
  });

  it('are one for a value open on one side, none for a value that is not known', () => {
    expect(conditionsAt([{ ...edge, low: null }], { here, slopes }).map(({ sign }) => sign)).toEqual([-1]);
    expect(conditionsAt([{ ...edge, high: null }], { here, slopes }).map(({ sign }) => sign)).toEqual([1]);
    expect(conditionsAt([{ ...edge, id: 'b' }], { here, slopes })).toEqual([]);
  });

  it('cost nothing inside, and weight ÷ scale for each unit outside, beside the size of the moves', () => {
    expect(meritOf([edge], { values: new Map([['a', 2]]), x: [1, -2] })).toBeCloseTo(3, 12);
    expect(meritOf([edge], { values: new Map([['a', 3.25]]), x: [0, 0] })).toBeCloseTo(5, 12);
    expect(meritOf([edge], { values: new Map([['a', 0]]), x: [0, 0] })).toBeCloseTo(20, 12);
  });
});

describe('a box around a point', () => {
  it('reaches as far as asked, no farther than the moves may go', () => {
    const box = boxAround({ low: [-5, -1], high: [5, 1] }, [0, 0.5], 2);
    expect(box).toEqual({ low: [-2, -1], high: [2, 1] });
  });

  it('holds its own point, also one that lies outside what moves may do', () => {
    const box = boxAround({ low: [-1], high: [1] }, [4], 2);
    expect(box.low[0]!).toBeLessThanOrEqual(4);
    expect(box.high[0]!).toBeGreaterThanOrEqual(4);
    expect(boxAround({ low: [-1], high: [1] }, [-4], 2).low).toEqual([-4]);
  });
});

it('no coordinate goes farther than 25 cm or 75° at once, however far the hardware would', () => {
  const fit = exampleFit();
  const hardware = { ...fit.boat.hardware, restTravelM: [-1, 2] as [number, number] };
  const evaluator = createEvaluator();
  const wide = { ...fit, boat: { ...fit.boat, hardware } };
  const { low, high } = boxOf({
    evaluator,
    fit: wide,
    held: evaluator.evaluate(wide),
    places: [{ seat: 0, coordinate: 'rearRest.aftM' }],
  });
  // Units of 1 cm; the rest stands 62 cm aft, its usual limits are 10 and 130 cm.
  expect([low[0], high[0]]).toEqual([-25, 25]);
});
