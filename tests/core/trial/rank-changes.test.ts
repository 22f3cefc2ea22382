import { describe, expect, it } from 'vitest';
import { createEvaluator } from '../../../core/fit/evaluator.ts';
import { withCoordinate } from '../../../core/fit/fitting-coordinate.ts';
import { type Trial, trialSchema } from '../../../core/trial/observation.ts';
import { rankChanges } from '../../../core/trial/rank-changes.ts';
import { exampleFit, exampleSeat } from '../example/example-fit.ts';

const evaluator = createEvaluator();
const trial = (observations: Trial['observations'], seat = 0): Trial =>
  trialSchema.parse({ seat, heldOn: '2026-05-02', observations });

describe('rankChanges', () => {
  const fit = exampleFit();

  it('answers a digging bow with a change that does raise the bow', () => {
    const [best] = rankChanges(evaluator, fit, trial([{ kind: 'boat', sign: 'bowDigs', strength: 2 }]));
    const before = evaluator.evaluate(fit);
    const after = evaluator.evaluate(
      withCoordinate(fit, { seat: 0, coordinate: best!.coordinate }, best!.to),
    );
    const trim = (r: typeof before) => r.quantities.find((q) => q.id === 'trimCatch')!.value;
    expect(trim(after)).toBeGreaterThan(trim(before));
    expect(best!.answers[0]!.answered).toBeGreaterThan(0);
  });

  it('prefers a change that answers both of two observations', () => {
    const both = rankChanges(
      evaluator,
      fit,
      trial([
        { kind: 'boat', sign: 'bowDigs', strength: 2 },
        { kind: 'body', place: 'frontKnee', feeling: 'ache', strength: 2 },
      ]),
    );
    expect(both[0]!.answers.every((a) => a.answered > 0)).toBe(true);
  });

  it('answers a tippy boat by bringing the weight lower', () => {
    const [best] = rankChanges(evaluator, fit, trial([{ kind: 'boat', sign: 'tippy', strength: 3 }]));
    expect(best!.coordinate).toBe('kneePad.heightM');
    expect(best!.to).toBeLessThan(best!.from);
  });

  it('has nothing to say to nothing, to an empty seat, or where all is locked', () => {
    expect(rankChanges(evaluator, fit, trial([]))).toEqual([]);
    const empty = exampleFit([exampleSeat({ athlete: null })]);
    expect(rankChanges(evaluator, empty, trial([{ kind: 'boat', sign: 'tippy', strength: 3 }]))).toEqual([]);
    const locked = exampleFit([exampleSeat({ locks: ['kneePad', 'rearRest', 'frontFoot', 'paddle'] })]);
    expect(rankChanges(evaluator, locked, trial([{ kind: 'boat', sign: 'tippy', strength: 3 }]))).toEqual([]);
  });
});
