import { describe, expect, it } from 'vitest';
import { CAMERA_SENTENCES, cameraFor } from '../../../core/findings/doubt-of-posture.ts';
import type { Finding } from '../../../core/findings/finding.ts';
import { cannotTell, SIGMAS_95 } from '../../../core/findings/judge.ts';
import { athleteSentence, coachSentence } from '../../../core/findings/sentences.ts';
import { createEvaluator } from '../../../core/fit/evaluator.ts';
import type { Pins } from '../../../core/fit/seat-schema.ts';
import { exampleFit, exampleSeat } from '../example/example-fit.ts';

const evaluator = createEvaluator();
const findingsWith = (pins: Pins) => evaluator.evaluate(exampleFit([exampleSeat({ pins })])).findings;
const of = (findings: readonly Finding[], quantity: string) => findings.find((f) => f.quantity === quantity)!;

describe('a band narrower than the doubt', () => {
  const band = { min: 0, max: 6, source: 'common practice', sourceText: '', reason: '' } as const;

  it('cannot be told, wherever the value stands; from half the band on', () => {
    expect(cannotTell({ band, sd: 3 / SIGMAS_95 + 1e-6 })).toBe(true);
    expect(cannotTell({ band, sd: 3 / SIGMAS_95 - 1e-6 })).toBe(false);
  });

  it.each([
    [{ ...band, min: null }, 100],
    [{ ...band, max: null }, 100],
    [band, null],
  ])('never of an open band, nor of a value without doubt (%#)', (open, sd) => {
    expect(cannotTell({ band: open, sd })).toBe(false);
  });

  it('is the lean seen from behind of an athlete nobody has looked at', () => {
    const lean = of(findingsWith({}), 'trunkRoll');
    expect(lean.severity).toBe('check');
    expect(lean.distance).toBeLessThan(0);
    expect(cannotTell(lean)).toBe(true);
  });

  it('stands after the checks that say something', () => {
    const checks = findingsWith({}).filter((f) => f.severity === 'check');
    const told = checks.map(cannotTell);
    expect(told).toContain(true);
    expect(told).toContain(false);
    expect(told).toEqual(told.toSorted((a, b) => Number(a) - Number(b)));
  });
});

describe('where a photograph would tell more', () => {
  it('is behind for the lean and beside for the trunk’s pitch', () => {
    const findings = findingsWith({});
    expect(of(findings, 'trunkRoll').camera).toBe('behind');
    expect(of(findings, 'trunkPitch').camera).toBe('beside');
    expect(findings.filter((f) => f.camera).map((f) => f.quantity)).toHaveLength(2);
  });

  it('is nowhere once the angle is held as measured', () => {
    expect(of(findingsWith({ trunkRollDeg: 3 }), 'trunkRoll').camera).toBeUndefined();
    expect(of(findingsWith({ trunkRollDeg: 3 }), 'trunkPitch').camera).toBe('beside');
  });

  it('is nowhere for what is good already', () => {
    expect(cameraFor({ quantity: 'trunkPitch', severity: 'good' }, { pins: {} })).toBeUndefined();
    const upright = of(findingsWith({ trunkPitchDeg: 8 }), 'trunkPitch');
    expect(upright.severity).toBe('good');
    expect(upright.camera).toBeUndefined();
  });
});

describe('what is said of it', () => {
  const lean = of(findingsWith({}), 'trunkRoll');

  it('tells the coach that the estimate cannot tell, and from where to look', () => {
    expect(coachSentence(lean)).toMatch(
      /leans slightly to the paddling side\. The band is narrower than the doubt/,
    );
    expect(coachSentence(lean)).toContain(CAMERA_SENTENCES.behind);
  });

  it('asks for no second photograph: a lean seen at 3° is good, one seen at 1° is near an edge', () => {
    expect(coachSentence(of(findingsWith({ trunkRollDeg: 3 }), 'trunkRoll'))).toMatch(
      /to the paddling side\.$/,
    );
    const small = of(findingsWith({ trunkRollDeg: 1 }), 'trunkRoll');
    expect(small.severity).toBe('check');
    expect(coachSentence(small)).toMatch(/within its own uncertainty of the edge\.$/);
  });

  it('does not tell the athlete that something is close to an edge', () => {
    expect(athleteSentence(lean)).toMatch(/your coach can see it better/);
  });

  it('still says of other checks that they are close to the edge', () => {
    const knee = { ...of(findingsWith({}), 'frontKnee'), severity: 'check', distance: -0.01 } as const;
    expect(coachSentence(knee)).toMatch(/within its own uncertainty of the edge\.$/);
    expect(athleteSentence(knee)).toMatch(/close to the edge\.$/);
  });
});
