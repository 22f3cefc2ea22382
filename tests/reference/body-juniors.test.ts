import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { sittingShare } from '../../core/body/growth-proportion.ts';
import { predictTapes } from '../../core/body/predict-tapes.ts';
import { SEXES, type Sex } from '../../core/body/sex.ts';
import type { TapeMeasure } from '../../core/document/athlete-schema.ts';

// 116 children of 10 to 17 years, measured in the United States in 1975–77: Snyder, Schneider, Owings, Reynolds, Golomb, Schork
// 1977, Anthropometry of infants, children, and youths to age 18 for product safety design, UM-HSRI-77-17, as its persons were released;
// those of that age among the first 300 rows, none picked. They took no part in the reference of sitting height that moves
// a junior's mean, which is of Dutch children.

interface Junior {
  readonly sex: Sex;
  readonly age: number;
  readonly stature: number;
  readonly mass: number;
  readonly tape: Partial<Record<TapeMeasure, number>>;
}

function juniors(): Junior[] {
  const text = readFileSync(new URL('body-juniors.csv', import.meta.url), 'utf8');
  return text
    .trim()
    .split('\n')
    .slice(1)
    .map((line) => {
      const [sex, age, mass, stature, foot, sitting, buttockKnee, kneeHeight] = line.split(',');
      return {
        sex: sex === 'M' ? 'male' : 'female',
        age: Math.floor(Number(age)),
        stature: Number(stature) / 100,
        mass: Number(mass),
        tape: {
          footLength: Number(foot) / 100,
          sittingHeight: Number(sitting) / 1000,
          buttockKneeLength: Number(buttockKnee) / 1000,
          ...(kneeHeight ? { kneeHeightSitting: Number(kneeHeight) / 1000 } : {}),
        },
      };
    });
}

const JUNIORS = juniors();

/** Errors of one measure over the children of one sex: millimetres, and in units of the foretold standard deviation. */
function errorsOf(measure: TapeMeasure, sex: Sex, aged: boolean) {
  const errors = JUNIORS.filter((j) => j.sex === sex && j.tape[measure] !== undefined).map((junior) => {
    const told = predictTapes({ ...junior, tape: {}, ageYears: aged ? junior.age : null })[measure];
    const error = junior.tape[measure]! - told.value;
    return { mm: error * 1000, sigmas: error / told.sd };
  });
  const mean = (of: (e: (typeof errors)[number]) => number) =>
    errors.reduce((sum, e) => sum + of(e), 0) / errors.length;
  return {
    bias: mean((e) => e.mm),
    rms: Math.sqrt(mean((e) => e.mm ** 2)),
    within: mean((e) => (Math.abs(e.sigmas) <= 1.96 ? 1 : 0)),
  };
}

const BOTH = SEXES.map((sex) => [sex] as const);

describe('juniors', () => {
  it('are 65 girls and 51 boys', () => {
    expect(SEXES.map((sex) => JUNIORS.filter((j) => j.sex === sex).length)).toEqual([65, 51]);
  });

  it.each([
    ['female', -19, -2],
    ['male', -35, -6],
  ] as const)(
    'sit lower than adults of their stature, and so foretold (%s): %f mm, then %f',
    (sex, adult, own) => {
      expect(Math.abs(errorsOf('sittingHeight', sex, false).bias - adult)).toBeLessThan(2);
      expect(Math.abs(errorsOf('sittingHeight', sex, true).bias)).toBeLessThan(Math.abs(own) + 2);
    },
  );

  it.each(BOTH)('are foretold with less error than as adults: sitting and knee height, foot (%s)', (sex) => {
    for (const measure of ['sittingHeight', 'kneeHeightSitting', 'footLength'] as const) {
      expect(errorsOf(measure, sex, true).rms, measure).toBeLessThan(errorsOf(measure, sex, false).rms);
    }
  });

  it.each(BOTH)('lie in their 95 %% intervals in more than nine of ten measures (%s)', (sex) => {
    for (const measure of [
      'sittingHeight',
      'kneeHeightSitting',
      'footLength',
      'buttockKneeLength',
    ] as const) {
      const { within } = errorsOf(measure, sex, true);
      expect(within, measure).toBeGreaterThan(0.9);
    }
  });

  // The reference itself, against the children: 10 to 17 years by sex, shares of stature.
  it.each(BOTH)('sit at the reference’s share of stature for their age within 1 %% (%s)', (sex) => {
    const own = JUNIORS.filter((j) => j.sex === sex);
    const ratio = own.reduce(
      (sum, j) => sum + j.tape.sittingHeight! / j.stature / sittingShare(j.age, sex),
      0,
    );
    expect(Math.abs(ratio / own.length - 1)).toBeLessThan(0.01);
  });
});
