import { describe, expect, it } from 'vitest';
import type { Fit } from '../../../core/document/fit-schema.ts';
import { createEvaluator } from '../../../core/evaluation/evaluator.ts';
import { photographsFor, readingsOf } from '../../../core/optimise/photographs.ts';
import { cases } from '../../cases.ts';
import { notEmpty } from '../../not-empty.ts';
import { exampleFit, exampleSeat } from '../example/example-fit.ts';
import { valuesOf } from '../example/values-of.ts';

const evaluator = createEvaluator();
const fit = exampleFit();
const report = evaluator.evaluate(fit);
const goal = (id: string, seat: number | null = 0) => ({ quantity: { id, seat }, athleteOf: 0 });
const forGoal = (id: string, seat: number | null = 0) =>
  photographsFor(evaluator, { fit, report }, goal(id, seat));
const valueIn = (of: Fit, id: string) =>
  valuesOf(of).quantities.find((q) => q.id === id && q.seat === 0)!.value;

describe('readingsOf', () => {
  it('takes each reading where the model has it: no value moves but by rounding', () => {
    for (const { measure, fit: taken } of notEmpty(readingsOf(fit, report, 0))) {
      for (const id of ['frontKnee', 'trunkPitch', 'kneeShare', 'paddleByStance']) {
        expect(Math.abs(valueIn(taken, id) - valueIn(fit, id)), `${measure} ${id}`).toBeLessThan(1e-6);
      }
    }
  });

  it('offers no reading that is taken already', () => {
    const taken = exampleFit([exampleSeat({ pins: { trunkPitchDeg: 12 }, stroke: { topHandOverM: 0.2 } })]);
    const offered = readingsOf(taken, evaluator.evaluate(taken), 0).map(({ measure }) => measure);
    expect(offered).toEqual(['thighPitch', 'thighRoll', 'pelvisYaw', 'trunkRoll']);
    expect(readingsOf(fit, report, 0).map(({ measure }) => measure)).toEqual([
      'thighPitch',
      'thighRoll',
      'pelvisYaw',
      'trunkPitch',
      'trunkRoll',
      'topHand',
    ]);
  });
});

describe('photographsFor', () => {
  it('the trunk’s own lean is tightened most by reading it: to less than the 2° of the reading', () => {
    const [best] = forGoal('trunkPitch');
    expect(best!.measure).toBe('trunkPitch');
    expect(best!.sdAfter).toBeGreaterThan((1.7 * Math.PI) / 180);
    expect(best!.sdAfter).toBeLessThan((2 * Math.PI) / 180);
    expect(best!.sdNow).toBeGreaterThan((3.5 * Math.PI) / 180);
  });

  it('the lean from behind is known to under 1.4° once seen, where the model knows it to 2.7°', () => {
    const [best] = forGoal('trunkRoll');
    expect(best!.measure).toBe('trunkRoll');
    expect(best!.sdNow).toBeGreaterThan((2 * Math.PI) / 180);
    expect(best!.sdAfter).toBeLessThan((1.4 * Math.PI) / 180);
  });

  it('the paddle by the stance wants the top hand’s height: and gains by it', () => {
    const [best] = forGoal('paddleByStance');
    expect(best!.measure).toBe('topHand');
    expect(best!.sdNow).toBeGreaterThan(0.03);
    expect(best!.sdAfter).toBeLessThan(0.9 * best!.sdNow);
  });

  it('leaves nothing less sure, whatever is read', () => {
    // Shares and margin have kinks (a share ends at 0): their spread is a quadrature, true to a thousandth.
    const slack = { frontKnee: 1e-6, supportMargin: 1e-3, kneeShare: 1e-3, rearShare: 1e-3 };
    for (const [id, share] of Object.entries(slack).slice(0, cases(2, 4)))
      for (const { sdNow, sdAfter } of notEmpty(forGoal(id), id))
        expect(sdAfter, id).toBeLessThanOrEqual(sdNow * (1 + share));
  });

  it('lists the best first, for the boat too; nothing for an empty seat or what was not computed', () => {
    const all = forGoal('trimRest', null).map(({ sdAfter }) => sdAfter);
    expect(all.length).toBeGreaterThan(0);
    expect(all).toEqual([...all].sort((a, b) => a - b));
    expect(forGoal('toNextSeat')).toEqual([]);
    const empty = exampleFit([exampleSeat({ athlete: null })]);
    const none = photographsFor(
      evaluator,
      { fit: empty, report: evaluator.evaluate(empty) },
      goal('draft', null),
    );
    expect(none).toEqual([]);
  });
});
