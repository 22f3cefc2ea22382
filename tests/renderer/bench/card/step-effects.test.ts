import { describe, expect, it } from 'vitest';
import { formatFor } from '../../../../app/language/format.ts';
import { FITTING_COORDINATES } from '../../../../core/document/coordinates.ts';
import { withCoordinate } from '../../../../core/document/fitting-coordinate.ts';
import { createEvaluator } from '../../../../core/evaluation/evaluator.ts';
import { derivativesTo } from '../../../../core/optimise/sensitivity.ts';
import {
  directionWord,
  effectText,
  isNothing,
  stepsFor,
} from '../../../../renderer/bench/card/effect-text.ts';
import { HEADLINE_EFFECTS, stepEffects } from '../../../../renderer/bench/card/step-effects.ts';
import { exampleFit } from '../../../core/example/example-fit.ts';

const format = formatFor({ length: 'cm', mass: 'kg', decimal: 'point' });
const inches = formatFor({ length: 'in', mass: 'lb', decimal: 'point' });
const fit = exampleFit();
const evaluator = createEvaluator();
const report = evaluator.evaluate(fit);
const amountOf = (of: typeof report, id: string) => of.quantities.find((q) => q.id === id)!.value;

describe('what one centimetre does', () => {
  it.each(HEADLINE_EFFECTS.kneePad)(
    'to %s is what really happens when the pad is moved one centimetre',
    (id) => {
      const derivatives = derivativesTo({ evaluator, fit, report }, { seat: 0, coordinate: 'kneePad.aftM' });
      const given = { derivatives, seat: 0, steps: stepsFor(format) };
      const [told] = stepEffects('kneePad.aftM', [id], given);
      const at = (by: number) =>
        amountOf(
          evaluator.evaluate(withCoordinate(fit, { seat: 0, coordinate: 'kneePad.aftM' }, 0.175 + by)),
          id,
        );
      // Half a centimetre to both sides: what a curve bends cancels.
      const happens = at(0.005) - at(-0.005);
      expect(told!.by).not.toBeNull();
      expect(Math.abs(told!.by! - happens)).toBeLessThan(0.1 * Math.abs(happens) + 2e-4);
    },
  );

  it('is a dash while it is not known, and faint where nothing shows', () => {
    const [unknown] = stepEffects('kneePad.aftM', ['trimRest'], {
      derivatives: [],
      seat: 0,
      steps: stepsFor(format),
    });
    expect(effectText(unknown!, format)).toBe('–');
    expect(isNothing(effectText({ id: 'trimRest', unit: 'm', by: 0.00002 }, format))).toBe(true);
    expect(isNothing(effectText({ id: 'trimRest', unit: 'm', by: 0.0012 }, format))).toBe(false);
  });

  it('goes by half an inch where inches are read', () => {
    expect(stepsFor(inches).placeM).toBeCloseTo(0.0127, 9);
    expect(stepsFor(format)).toEqual({ placeM: 0.01, turnDeg: 5 });
  });

  it('names a direction for every coordinate, none twice for one fitting', () => {
    const named = FITTING_COORDINATES.map((c) => `${c.split('.')[0]} ${directionWord(c)}`);
    expect(new Set(named).size).toBe(FITTING_COORDINATES.length);
  });
});
