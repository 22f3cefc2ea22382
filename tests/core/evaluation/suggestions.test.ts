import { describe, expect, it } from 'vitest';
import { createEvaluator } from '../../../core/evaluation/evaluator.ts';
import { suggestionsFor } from '../../../core/evaluation/suggestions.ts';
import { exampleFit, exampleSeat } from '../example/example-fit.ts';

describe('suggestionsFor', () => {
  it('has one answer for every finding that is not good, and none for the others', () => {
    const seat = exampleSeat();
    const fit = exampleFit([{ ...seat, kneePad: { ...seat.kneePad, aftM: 0.24, braced: false } }]);
    const evaluator = createEvaluator();
    const report = evaluator.evaluate(fit);
    const wanted = report.findings.filter((f) => f.severity !== 'good').map((f) => f.id);
    const suggestions = suggestionsFor(evaluator, fit, report);
    expect(suggestions.map((s) => s.finding)).toEqual(wanted);
    expect(suggestions.find((s) => s.finding === 'padBraced@0')!.suggestion.kind).toBe('choose');
    expect(suggestions.find((s) => s.finding === 'padAft@0')!.suggestion.kind).toBe('move');
  });
});
