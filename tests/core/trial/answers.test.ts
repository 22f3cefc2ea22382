import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Fit } from '../../../core/document/fit-schema.ts';
import { withCoordinate } from '../../../core/document/fitting-coordinate.ts';
import { createEvaluator } from '../../../core/evaluation/evaluator.ts';
import type { Report } from '../../../core/evaluation/report.ts';
import { ANSWERED, answersOf, movedFromNow } from '../../../core/trial/answers.ts';
import {
  BOAT_SIGNS,
  BODY_PLACES,
  type Observation,
  type Trial,
  trialSchema,
} from '../../../core/trial/observation.ts';
import { rankChanges } from '../../../core/trial/rank-changes.ts';
import { cases } from '../../cases.ts';
import { notEmpty } from '../../not-empty.ts';
import { exampleFit, exampleSeat } from '../example/example-fit.ts';

/** Printed, so that a failure can be run again. */
const SEED = 20261125;
/** Values of two evaluations of one fit agree to this share: the figure is solved to it. */
const SAME = 1e-6;

const evaluator = createEvaluator();
const fit = exampleFit();
const report = evaluator.evaluate(fit);
const EVERY: Observation[] = [
  ...BODY_PLACES.map((place) => ({ kind: 'body' as const, place, feeling: 'ache' as const, strength: 2 })),
  ...BOAT_SIGNS.map((sign) => ({ kind: 'boat' as const, sign, strength: 2 })),
];
const trial = (observations: Trial['observations']): Trial =>
  trialSchema.parse({ seat: 0, heldOn: '2026-05-02', observations });
const everything = trial(EVERY);

/** The report with some quantities moved by an amount. */
const moved = (by: Readonly<Record<string, number>>): Report => ({
  ...report,
  quantities: report.quantities.map((q) => ({ ...q, value: q.value + (by[q.id] ?? 0) })),
});

function answered(observation: Observation, now: Report, tried: Report = report): number {
  return answersOf(trial([observation]), { tried, now })[0]!.answered;
}

describe('how fully an observation is answered', () => {
  const knee: Observation = { kind: 'body', place: 'kneelingKnee', feeling: 'pressure', strength: 2 };
  const bow: Observation = { kind: 'boat', sign: 'bowDigs', strength: 2 };

  it('is told from the drawing as it is, where that has changed since the trial', () => {
    const first = (now: Report) => answersOf(trial([bow]), { tried: report, now })[0]!;
    const [soFar, after] = [first(moved({ trimCatch: -0.006 })), first(moved({ trimCatch: -0.004 }))];
    const told = (list: typeof after.moved) => list.find(({ quantity }) => quantity === 'trimCatch')!;
    const was = told(after.moved).from;
    expect(told(movedFromNow(after, soFar))).toMatchObject({ from: was - 0.006, to: was - 0.004 });
    expect(movedFromNow(after, undefined)).toEqual(after.moved);
  });

  it('is nought for the setting that was tried', () => {
    for (const answer of notEmpty(answersOf(everything, { tried: report, now: report }))) {
      expect(answer.answered).toBe(0);
    }
  });

  it('counts the main wish whole and the next one half', () => {
    expect(answered(bow, moved({ trimCatch: 0.008 }))).toBeCloseTo(1, 9);
    expect(answered(bow, moved({ trimRest: 0.008 }))).toBeCloseTo(0.5, 9);
    expect(answered(bow, moved({ trimCatch: 0.008, trimRest: 0.008 }))).toBeCloseTo(1.5, 9);
    expect(answered(knee, moved({ kneeShare: -0.04 }))).toBeCloseTo(1, 9);
  });

  it('is less than nought where it is worse', () => {
    expect(answered(bow, moved({ trimCatch: -0.004 }))).toBeCloseTo(-0.5, 9);
    expect(answered(knee, moved({ kneeShare: 0.02 }))).toBeLessThan(0);
  });

  it('of a boat that pulls to a side wants the weight nearer the centreline, from whichever side', () => {
    const pulls: Observation = { kind: 'boat', sign: 'pullsLeft', strength: 2 };
    const at = (offCentre: number) => {
      const now = report.quantities.find((q) => q.id === 'offCentre')!.value;
      return moved({ offCentre: offCentre - now });
    };
    for (const side of [1, -1]) {
      expect(answered(pulls, at(side * 0.002), at(side * 0.008))).toBeCloseTo(1, 9);
      expect(answered(pulls, at(side * 0.008), at(side * 0.002))).toBeCloseTo(-1, 9);
      expect(answered(pulls, at(-side * 0.008), at(side * 0.008))).toBeCloseTo(0, 9);
    }
  });

  it('tells the quantities it speaks of, before and after', () => {
    const [answer] = answersOf(trial([bow]), { tried: report, now: moved({ trimCatch: 0.01 }) });
    expect(answer!.moved.map(({ quantity }) => quantity)).toEqual(['trimCatch', 'trimRest']);
    const [catchTrim] = answer!.moved;
    expect(catchTrim!.to - catchTrim!.from).toBeCloseTo(0.01, 12);
    expect(answer!.reason).not.toBe('');
  });

  it('is nothing where a quantity was not computed', () => {
    const blind = { ...report, quantities: [] };
    expect(answersOf(everything, { tried: blind, now: report }).every((a) => a.answered === 0)).toBe(true);
  });

  it('turns its sign when tried and now change places, for any setting', () => {
    const moves = fc.record({
      aft: fc.double({ min: -0.04, max: 0.04, noNaN: true }),
      height: fc.double({ min: -0.03, max: 0.03, noNaN: true }),
      foot: fc.double({ min: -0.06, max: 0.06, noNaN: true }),
    });
    fc.assert(
      fc.property(moves, ({ aft, height, foot }) => {
        const [seat] = fit.seats;
        const coordinates = [
          ['kneePad.aftM', seat!.kneePad.aftM + aft],
          ['kneePad.heightM', seat!.kneePad.heightM + height],
          ['frontFoot.forwardM', seat!.frontFoot.forwardM + foot],
        ] as const;
        const other = coordinates.reduce<Fit>(
          (now, [coordinate, value]) => withCoordinate(now, { seat: 0, coordinate }, value),
          fit,
        );
        const now = evaluator.evaluateHolding(other, report);
        const there = answersOf(everything, { tried: report, now });
        const back = answersOf(everything, { tried: now, now: report });
        there.forEach((answer, i) => {
          expect(Number.isFinite(answer.answered)).toBe(true);
          expect(back[i]!.answered).toBeCloseTo(-answer.answered, 9);
        });
      }),
      { seed: SEED, numRuns: cases(3, 25) },
    );
  });
});

describe('the ranking', () => {
  it('foretells what taking a change does: the whole evaluation answers as much', () => {
    const observed = trial([EVERY[5]!, EVERY.find((o) => o.kind === 'boat')!]);
    const { changes } = rankChanges(evaluator, { fit, trial: observed });
    expect(changes.length).toBeGreaterThan(1);
    for (const { coordinate, to, answers, gains } of changes) {
      const taken = evaluator.evaluate(withCoordinate(fit, { seat: 0, coordinate }, to));
      const real = answersOf(observed, { tried: report, now: taken });
      answers.forEach((answer, i) => {
        expect(Math.abs(real[i]!.answered - answer.answered)).toBeLessThan(
          SAME * Math.max(1, Math.abs(answer.answered)),
        );
        expect(gains[i]).toBeLessThanOrEqual(answer.answered + SAME);
      });
    }
  });

  it('is in the order of relevance, then of its scores, one change for each coordinate', () => {
    // The quick run takes every ninth observation, the long run all.
    const asked = EVERY.filter((_, i) => i % cases(9, 1) === 0);
    let offered = 0;
    for (const observation of asked) {
      const { changes } = rankChanges(evaluator, { fit, trial: trial([observation]) });
      const order = changes.toSorted(
        (a, b) => b.relevance - a.relevance || Number(a.worsens) - Number(b.worsens) || b.score - a.score,
      );
      expect(changes).toEqual(order);
      expect(new Set(changes.map(({ coordinate }) => coordinate)).size).toBe(changes.length);
      for (const { gains, basis } of changes) {
        if (basis === 'model') expect(Math.max(...gains)).toBeGreaterThan(0);
      }
      if (changes.length > 0) offered++;
    }
    // Few observations have no change that answers them in this fit.
    expect(offered).toBeGreaterThan(0.6 * asked.length);
  });

  it('is the same for a paddler of the other side', () => {
    const mirrored = exampleFit([exampleSeat({ side: 'right' })]);
    const observed = trial([EVERY[0]!, EVERY[5]!]);
    const [left, right] = [fit, mirrored].map((of) => rankChanges(evaluator, { fit: of, trial: observed }));
    expect(right!.changes.map(({ coordinate, to }) => [coordinate, to])).toEqual(
      left!.changes.map(({ coordinate, to }) => [coordinate, to]),
    );
    right!.changes.forEach((change, i) => {
      expect(change.score).toBeCloseTo(left!.changes[i]!.score, 6);
    });
  });

  it('counts a clear answer as answered', () => {
    expect(ANSWERED).toBeGreaterThan(0.5);
    expect(ANSWERED).toBeLessThanOrEqual(1);
  });
});
