import { describe, expect, it } from 'vitest';
import { COORDINATES } from '../../../core/document/coordinates.ts';
import type { Fit } from '../../../core/document/fit-schema.ts';
import { withCoordinate } from '../../../core/document/fitting-coordinate.ts';
import { createEvaluator } from '../../../core/evaluation/evaluator.ts';
import type { Finding, Suggestion } from '../../../core/evaluation/finding.ts';
import { DECIDED_SIGMAS } from '../../../core/evaluation/probability.ts';
import { findQuantity } from '../../../core/evaluation/quantities.ts';
import { suggestChange } from '../../../core/evaluation/suggest-change.ts';
import { exampleFit, exampleSeat } from '../example/example-fit.ts';

const evaluator = createEvaluator();

function ask(fit: Fit, quantity: string): { finding: Finding; suggestion: Suggestion } {
  const report = evaluator.evaluate(fit);
  const finding = report.findings.find((f) => f.quantity === quantity)!;
  return { finding, suggestion: suggestChange({ evaluator, fit, report, finding }) };
}

const withPad = (more: Partial<Fit['seats'][number]['kneePad']>) => {
  const seat = exampleSeat();
  return exampleFit([{ ...seat, kneePad: { ...seat.kneePad, ...more } }]);
};

describe('a band narrower than a value’s own doubt', () => {
  it('is entered by a quarter of its width (our own weighing)', () => {
    const fit = exampleFit();
    const report = evaluator.evaluate(fit);
    const finding = report.findings.find((f) => f.quantity === 'trimRest')!;
    const width = finding.band.max! - finding.band.min!;
    const doubted = { ...finding, sd: width };
    const suggestion = suggestChange({ evaluator, fit, report, finding: doubted });
    if (suggestion.kind !== 'move') throw new Error('expected a move');
    const { quantities } = evaluator.evaluate(withCoordinate(fit, suggestion, suggestion.to));
    const inside = findQuantity(quantities, 'trimRest', null)!.value / width;
    expect(inside).toBeGreaterThan(0.249);
    expect(inside).toBeLessThan(0.29);
  });
});

describe('suggestChange', () => {
  it('moves a misplaced pad back into its band, and no farther than it need', () => {
    const fit = withPad({ aftM: 0.23 });
    const { finding, suggestion } = ask(fit, 'padAft');
    expect(finding.severity).not.toBe('good');
    if (suggestion.kind !== 'move') throw new Error('expected a move');
    expect(suggestion.coordinate).toBe('kneePad.aftM');
    expect(suggestion.to).toBeLessThanOrEqual(0.2);
    expect(suggestion.to).toBeGreaterThan(0.185);
  });

  it('what it proposes does clear the finding when it is done', () => {
    const seat = exampleSeat();
    const fit = exampleFit([{ ...seat, frontFoot: { ...seat.frontFoot, forwardM: 0.24 } }]);
    const { finding, suggestion } = ask(fit, 'frontKnee');
    expect(finding.distance).toBeGreaterThan(0);
    if (suggestion.kind !== 'move') throw new Error('expected a move');
    const after = evaluator.evaluate(withCoordinate(fit, suggestion, suggestion.to));
    const cleared = after.findings.find((f) => f.quantity === 'frontKnee')!;
    expect(cleared.distance).toBeLessThan(0);
    expect(['good', 'check']).toContain(cleared.severity);
  });

  it('goes no farther than it need: a move two grains shorter does not come as far inside', () => {
    const seat = exampleSeat();
    const fit = exampleFit([{ ...seat, frontFoot: { ...seat.frontFoot, forwardM: 0.24 } }]);
    const { finding, suggestion } = ask(fit, 'frontKnee');
    if (suggestion.kind !== 'move') throw new Error('expected a move');
    const { snapStep: grain } = COORDINATES[suggestion.coordinate];
    const back = suggestion.to - 2 * grain * Math.sign(suggestion.to - suggestion.from);
    const held = evaluator.evaluate(fit);
    const inside = (to: number) =>
      evaluator
        .evaluateHolding(withCoordinate(fit, suggestion, to), held)
        .findings.find((f) => f.id === finding.id)!;
    const aim = -Math.min(DECIDED_SIGMAS * finding.sd!, 0.25 * (finding.band.max! - finding.band.min!));
    expect(inside(suggestion.to).distance).toBeLessThanOrEqual(aim + 1e-9);
    expect(inside(back).distance).toBeGreaterThan(aim);
  });

  it('leaves locked fittings alone, and says so when nothing else does it', () => {
    const fit = withPad({ aftM: 0.23 });
    const locked = { ...fit, seats: fit.seats.map((s) => ({ ...s, locks: ['kneePad' as const] })) };
    expect(ask(locked, 'padAft').suggestion).toEqual({ kind: 'none', locked: ['kneePad'] });
  });

  it('keeps to the hardware’s holes', () => {
    const fit = withPad({ aftM: 0.23 });
    const drilled = {
      ...fit,
      boat: { ...fit.boat, hardware: { ...fit.boat.hardware, padHolePitchM: 0.025 } },
    };
    const { suggestion } = ask(drilled, 'padAft');
    if (suggestion.kind !== 'move') throw new Error('expected a move');
    expect(suggestion.to / 0.025).toBeCloseTo(Math.round(suggestion.to / 0.025), 6);
  });

  it('chooses where there is nothing to move', () => {
    const seat = exampleSeat();
    const fit = exampleFit([{ ...seat, rearRest: { ...seat.rearRest, strap: 'fixed' } }]);
    expect(ask(fit, 'strapReleases').suggestion).toEqual({
      kind: 'choose',
      seat: 0,
      choice: 'strapReleases',
    });
  });

  it('lists what else it changes, with severities before and after', () => {
    const { suggestion } = ask(withPad({ aftM: 0.23 }), 'padAft');
    if (suggestion.kind !== 'move') throw new Error('expected a move');
    const trim = suggestion.sideEffects.find((s) => s.id === 'trimRest')!;
    expect(trim.to).toBeLessThan(trim.from);
  });
});
