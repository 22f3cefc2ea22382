import { describe, expect, it } from 'vitest';
import { bodyInputOf } from '../../../core/body/body-of-athlete.ts';
import { tapeIndex } from '../../../core/body/body-prior.ts';
import { bodySpread } from '../../../core/body/estimate-body.ts';
import { TAPE_MEASURES, type TapeMeasure } from '../../../core/document/athlete-schema.ts';
import type { Fit } from '../../../core/document/fit-schema.ts';
import { evaluateFit } from '../../../core/evaluation/evaluator.ts';
import { measurementsFor } from '../../../core/optimise/measurements.ts';
import { cases } from '../../cases.ts';
import { notEmpty } from '../../not-empty.ts';
import { exampleAthlete, exampleFit, exampleSeat } from '../example/example-fit.ts';

const plain = exampleFit();
const report = evaluateFit(plain);
const goalFor = (id: string) => ({ quantity: { id, seat: 0 }, athleteOf: 0 });

/** The same fit with one tape measure taken of the athlete, and read just as expected. */
function measured(fit: Fit, measure: TapeMeasure): Fit {
  const seat = fit.seats[0]!;
  const valueM = bodySpread(bodyInputOf(seat.athlete!)).mean[tapeIndex(measure)]!;
  const tape = { ...seat.athlete!.tape, [measure]: { valueM } };
  return { ...fit, seats: [{ ...seat, athlete: { ...seat.athlete!, tape } }] };
}

describe('measurementsFor: taking the measure gives the spread that was foretold', () => {
  it.each(['frontKnee', 'kneelingKnee', 'kneelingHip', 'kneeShare', 'centreHeight', 'paddleByStance'])(
    '%s',
    (id) => {
      for (const { measure, sdNow, sdAfter } of notEmpty(
        measurementsFor(plain, report, goalFor(id)).slice(0, cases(1, 3)),
      )) {
        const after = evaluateFit(measured(plain, measure)).quantities.find((q) => q.id === id)!.sd!;
        const before = report.quantities.find((q) => q.id === id)!.sd!;
        expect(sdNow, measure).toBeCloseTo(before, 12);
        expect(
          Math.abs(after - sdAfter),
          `${measure}: ${before} to ${after}, foretold ${sdAfter}`,
        ).toBeLessThan(0.03 * before);
      }
    },
  );
});

describe('measurementsFor', () => {
  it('offers every measure not yet taken, and none that is', () => {
    expect(measurementsFor(plain, report, goalFor('frontKnee'))).toHaveLength(TAPE_MEASURES.length);
    const once = measured(plain, 'kneeHeightSitting');
    const rest = measurementsFor(once, evaluateFit(once), goalFor('frontKnee'));
    expect(rest.map((t) => t.measure)).not.toContain('kneeHeightSitting');
    expect(rest).toHaveLength(TAPE_MEASURES.length - 1);
  });

  it('the front knee is tightened most by a measure of the leg, not of the arm or the shoulders', () => {
    const [best] = measurementsFor(plain, report, goalFor('frontKnee'));
    expect(['armSpan', 'biacromialBreadth', 'sittingHeight', 'shoulderHeight']).not.toContain(best!.measure);
    expect(best!.sdAfter).toBeLessThan(best!.sdNow);
  });

  it('never foretells a wider spread, and lists the best first', () => {
    const all = measurementsFor(plain, report, goalFor('kneeShare'));
    for (const { sdNow, sdAfter } of all) expect(sdAfter).toBeLessThanOrEqual(sdNow);
    expect(all.map((t) => t.sdAfter)).toEqual([...all.map((t) => t.sdAfter)].sort((a, b) => a - b));
  });

  it('answers for a figure of the boat as well', () => {
    const goal = { quantity: { id: 'trimRest', seat: null }, athleteOf: 0 };
    expect(measurementsFor(plain, report, goal)[0]!.sdNow).toBeGreaterThan(0);
  });

  it('has no answer for an empty seat or an unknown figure', () => {
    const empty = exampleFit([exampleSeat({ athlete: null })]);
    expect(measurementsFor(empty, evaluateFit(empty), goalFor('frontKnee'))).toEqual([]);
    expect(measurementsFor(plain, report, goalFor('nothing'))).toEqual([]);
  });

  it('works for a junior of unstated sex', () => {
    const fit = exampleFit([
      exampleSeat({
        athlete: exampleAthlete({
          sex: 'unspecified',
          statureM: 1.55,
          massKg: 45,
          bornOn: '2013-05-01',
          measuredOn: '2026-09-01',
        }),
      }),
    ]);
    const [best] = measurementsFor(fit, evaluateFit(fit), goalFor('frontKnee'));
    expect(best!.sdAfter).toBeLessThan(best!.sdNow);
  });
});
