import { describe, expect, it } from 'vitest';
import {
  HIP_ABOVE_TROCHANTERION,
  moved,
  shareOf,
  sizedFor,
  TROCHANTERION_FELT_SD,
  withoutPalpation,
} from '../../../core/body/joint-centres.ts';
import { covarianceOf, uncertain, varianceOf } from '../../../core/body/uncertain.ts';

const rule = { mean: 0.02, sd: 0.004, source: 'rule' };

describe('sizedFor', () => {
  it('is the correction itself at 1.70 m and grows with the person', () => {
    expect(sizedFor(1.7, rule)).toEqual(rule);
    const { mean, sd, source } = sizedFor(1.36, rule);
    expect([mean, sd]).toEqual([0.02 * 0.8, 0.004 * 0.8]);
    expect(source).toBe('rule');
  });

  it('leaves a child’s hip centre 14 mm over the point that lies 18 mm below a grown person’s', () => {
    expect(sizedFor(1.36, HIP_ABOVE_TROCHANTERION).mean).toBeCloseTo(0.0144, 6);
  });
});

describe('shareOf', () => {
  const length = uncertain(0.5, 0.02, 'length');

  it('is the share of the length, its doubt that of the length and of the share together', () => {
    const part = shareOf(length, { mean: 0.3, sd: 0.05, source: 'share' });
    expect(part.mean).toBeCloseTo(0.15, 12);
    expect(varianceOf(part)).toBeCloseTo((0.3 * 0.02) ** 2 + (0.05 * 0.5) ** 2, 12);
  });

  it('varies with the length it is a share of', () => {
    expect(covarianceOf(shareOf(length, rule), length)).toBeCloseTo(0.02 * 0.02 ** 2, 12);
  });
});

describe('moved', () => {
  it('adds or takes away the correction, with its doubt either way', () => {
    const point = uncertain(0.9, 0.025, 'point');
    for (const sense of [1, -1] as const) {
      const joint = moved(point, rule, sense);
      expect(joint.mean).toBeCloseTo(0.9 + sense * 0.02, 12);
      expect(varianceOf(joint)).toBeCloseTo(0.025 ** 2 + 0.004 ** 2, 12);
    }
  });

  it('knows the same doubt again: two joints moved by one rule vary together', () => {
    const [hip, knee] = ['hip', 'knee'].map((source) => moved(uncertain(0.5, 0.01, source), rule, 1));
    expect(covarianceOf(hip!, knee!)).toBeCloseTo(0.004 ** 2, 12);
  });
});

describe('withoutPalpation', () => {
  it('takes the noise of feeling out of the trochanterion’s own departure and leaves what it shares', () => {
    const felt = { mean: 0.9, sources: { trochanterionHeight: 0.02, acromialHeight: 0.015 } };
    const true_ = withoutPalpation(felt);
    expect(true_.mean).toBe(0.9);
    expect(true_.sources.acromialHeight).toBe(0.015);
    expect(varianceOf(felt) - varianceOf(true_)).toBeCloseTo(TROCHANTERION_FELT_SD ** 2, 12);
  });

  it('never takes more than there is', () => {
    const sure = { mean: 0.9, sources: { trochanterionHeight: 0.005 } };
    expect(varianceOf(withoutPalpation(sure))).toBe(0);
  });
});
