import { describe, expect, it } from 'vitest';
import { shiftSeats } from '../../../core/crew/shift-seat.ts';
import { createEvaluator } from '../../../core/evaluation/evaluator.ts';
import { findQuantity } from '../../../core/evaluation/quantities.ts';
import { toDegrees } from '../../../core/units/angle.ts';
import { exampleFit, exampleSeat } from '../example/example-fit.ts';

const evaluator = createEvaluator();
const report = evaluator.evaluate(exampleFit());

describe('what is unknown', () => {
  it('is no finding: the lean from behind, which nobody has looked at, warns of nothing', () => {
    expect(report.findings.some((f) => f.quantity === 'trunkRoll')).toBe(false);
    const lean = report.unknowns.find((u) => u.quantity === 'trunkRoll')!;
    expect(lean.seat).toBe(0);
    expect(lean.look).toBe('behind');
    expect(lean.sdAfter).toBeLessThan(0.6 * lean.sd);
    expect(lean.decides).toBeGreaterThan(0);
  });

  it('stands in the order of what a look would decide', () => {
    const decided = report.unknowns.map((u) => u.decides);
    expect(decided).toEqual(decided.toSorted((a, b) => b - a));
  });

  it('is found once it was looked at, and is then good, or not, on its own number', () => {
    const lean = toDegrees(report.seats[0]!.stances.ready.angles.trunkRoll);
    const looked = (trunkRollDeg: number) =>
      evaluator.evaluate(exampleFit([exampleSeat({ pins: { trunkRollDeg } })]));
    const found = looked(lean).findings.find((f) => f.quantity === 'trunkRoll')!;
    expect(found.severity).toBe('good');
    expect(looked(lean).unknowns.some((u) => u.quantity === 'trunkRoll')).toBe(false);
    expect(looked(12).findings.find((f) => f.quantity === 'trunkRoll')!.severity).toBe('change');
  });

  it('never hides a stop: an athlete’s own limit that is passed says so whatever is unknown', () => {
    const seat = exampleSeat();
    const limits = [{ joint: 'trunkSideways' as const, maxDeg: 1, reason: 'an old injury' }];
    const bound = exampleFit([{ ...seat, athlete: { ...seat.athlete!, limits }, pins: { trunkRollDeg: 4 } }]);
    expect(evaluator.evaluate(bound).findings.find((f) => f.quantity === 'trunkRoll')!.severity).toBe('stop');
  });

  it('is held while a hand is dragging', () => {
    const fit = exampleFit();
    expect(evaluator.evaluateHolding(fit, report).unknowns).toEqual(report.unknowns);
    expect(evaluator.evaluateHolding(fit, report).findings.some((f) => f.quantity === 'trunkRoll')).toBe(
      false,
    );
  });
});

describe('a place outside its usual band', () => {
  it('is no more than a check while its outcomes are good, and says what the usual would bring', () => {
    const seat = exampleSeat();
    const fit = exampleFit([{ ...seat, kneePad: { ...seat.kneePad, heightM: 0.16 } }]);
    const finding = evaluator.evaluate(fit).findings.find((f) => f.quantity === 'padHeight')!;
    expect(finding.severity).toBe('check');
    expect(finding.probability).toBe(1);
    expect(finding.instead!.at).toBe(0.15);
    expect(finding.instead!.to).toBeLessThan(finding.instead!.from);
  });

  it('of the knee along the boat is held against the whole setting moved: the stance is kept', () => {
    const fit = shiftSeats(exampleFit(), [{ aft: 0.05, out: 0 }]);
    const finding = evaluator.evaluate(fit).findings.find((f) => f.quantity === 'padAft')!;
    expect(finding).toMatchObject({ severity: 'check', instead: { at: 0.2, quantity: 'trimRest' } });
    const usual = evaluator.evaluate(shiftSeats(exampleFit(), [{ aft: 0.025, out: 0 }]));
    expect(finding.instead!.to).toBeCloseTo(findQuantity(usual.quantities, 'trimRest', null)!.value, 9);
  });
});
