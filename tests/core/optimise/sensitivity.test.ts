import { describe, expect, it } from 'vitest';
import { withCoordinate } from '../../../core/document/fitting-coordinate.ts';
import { createEvaluator } from '../../../core/evaluation/evaluator.ts';
import { derivativesTo } from '../../../core/optimise/sensitivity.ts';
import { exampleFit } from '../example/example-fit.ts';

const evaluator = createEvaluator();
const fit = exampleFit();
const report = evaluator.evaluate(fit);
const to = (coordinate: Parameters<typeof derivativesTo>[1]['coordinate']) =>
  new Map(derivativesTo({ evaluator, fit, report }, { seat: 0, coordinate }).map((d) => [d.id, d]));

describe('derivativesTo', () => {
  it('is one for a quantity that is the coordinate itself, and its turn in radians for a degree', () => {
    expect(to('kneePad.aftM').get('padAft')!.perUnit).toBeCloseTo(1, 9);
    expect(to('kneePad.heightM').get('padHeight')!.perUnit).toBeCloseTo(1, 9);
    expect(to('rearRest.turnDeg').get('restTurn')!.perUnit).toBeCloseTo(Math.PI / 180, 9);
    expect(to('paddle.lengthM').get('paddleUnderStature')!.perUnit).toBeCloseTo(-1, 9);
  });

  it('is nothing for what the coordinate has no hold on', () => {
    expect(to('rearRest.turnDeg').get('padAft')!.perUnit).toBe(0);
    expect(to('paddle.bladeLengthM').get('frontKnee')!.perUnit).toBeCloseTo(0, 9);
  });

  it('foretells a centimetre: front knee and trim within a tenth of what an evaluation there gives', () => {
    const moved = evaluator.evaluateHolding(
      withCoordinate(fit, { seat: 0, coordinate: 'kneePad.aftM' }, fit.seats[0]!.kneePad.aftM + 0.01),
      report,
    );
    const slopes = to('kneePad.aftM');
    for (const id of ['frontKnee', 'trimRest', 'centreAft', 'kneeLoad'] as const) {
      const value = (quantities: typeof report.quantities) => quantities.find((q) => q.id === id)!.value;
      const change = value(moved.quantities) - value(report.quantities);
      expect(Math.abs(change), id).toBeGreaterThan(0);
      expect(Math.abs(0.01 * slopes.get(id)!.perUnit - change), id).toBeLessThan(0.1 * Math.abs(change));
    }
  });

  it('lists every quantity of the report once, seat by seat', () => {
    const all = derivativesTo({ evaluator, fit, report }, { seat: 0, coordinate: 'frontFoot.forwardM' });
    const names = all.map(({ id, seat }) => `${id}@${seat}`);
    expect(new Set(names).size).toBe(names.length);
    expect(names.toSorted()).toEqual(report.quantities.map(({ id, seat }) => `${id}@${seat}`).toSorted());
  });
});
