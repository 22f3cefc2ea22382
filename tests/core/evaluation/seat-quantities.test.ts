import { describe, expect, it } from 'vitest';
import { evaluateFit } from '../../../core/evaluation/evaluator.ts';
import { findQuantity, type QuantityId } from '../../../core/evaluation/quantities.ts';
import { hullOfBoat } from '../../../core/hull/hull-of-boat.ts';
import { innerHalfBreadth } from '../../../core/hull/inner-half-breadth.ts';
import { exampleFit, exampleSeat } from '../example/example-fit.ts';

const fit = exampleFit();
const report = evaluateFit(fit);
const value = (id: QuantityId, seat: number | null = 0, of = report) =>
  findQuantity(of.quantities, id, seat)!.value;

describe('the values of a seat', () => {
  it('stretch the hip’s flexor only where the hip is past straight and the knee past square: the lesser of the two', () => {
    // Kendall's length test: the knee at 90° with the hip at 0° is its usual length.
    const bent = exampleFit([exampleSeat({ pins: { thighPitchDeg: 14, trunkPitchDeg: -8 } })]);
    for (const each of [report, evaluateFit(bent)]) {
      const hip = value('kneelingHip', 0, each) - Math.PI;
      const knee = Math.PI / 2 - value('kneelingKnee', 0, each);
      expect(value('hipFlexorStretch', 0, each)).toBeCloseTo(Math.min(hip, knee), 12);
      expect(Math.abs(hip - knee)).toBeGreaterThan(0.01);
    }
  });

  it('leave room beside the knee from its own round side to the hull’s inner face', () => {
    const { stances, body } = report.seats[0]!;
    const knee = stances.ready.points.kneelingKnee;
    const breadth = innerHalfBreadth(hullOfBoat(fit.boat), knee, fit.boat.skinM)!;
    const side = Math.abs(knee.y) + body.lengths.kneeRadius.value;
    expect(value('kneeInsideHull')).toBeCloseTo(breadth - side, 12);
  });
});

it('a boat weighs its hull, paddler and paddle, a pad of 0.9 kg and a rest of 0.4 kg (estimates)', () => {
  expect(value('totalMass', null)).toBeCloseTo(14 + 80 + 0.75 + 0.9 + 0.4, 9);
});
