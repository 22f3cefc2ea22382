import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { SEXES } from '../../../core/body/sex.ts';
import { SURVEYED_STATURE, surveyEstimate, surveyLine } from '../../../core/body/survey-estimate.ts';
import { SURVEY_MEASURES, surveyRow } from '../../../core/body/survey-table.ts';

const LENGTHS = SURVEY_MEASURES.filter((measure) => measure !== 'mass');
const stature = fc.double({ min: 0.8, max: 2.6, noNaN: true });

describe('survey estimate', () => {
  it('is the line, in metres', () => {
    // 0.363269 × 1800 − 83.8234 = 570.06 mm, residual 12.68 mm.
    const estimate = surveyEstimate('kneeHeightSitting', 1.8, 'male');
    expect(estimate.value).toBeCloseTo(0.57006, 5);
    expect(estimate.sd).toBeCloseTo(0.0126845, 6);
    expect(estimate.kind).toBe('survey');
  });

  it('is the mean of both tables with the sex unspecified, and wider by their spread', () => {
    const [female, male, mean] = (['female', 'male', 'unspecified'] as const).map((sex) =>
      surveyEstimate('biacromialBreadth', 1.7, sex),
    );
    expect(mean!.value).toBeCloseTo((female!.value + male!.value) / 2, 12);
    const between = ((male!.value - female!.value) / 2) ** 2;
    expect(mean!.sd ** 2).toBeCloseTo((female!.sd ** 2 + male!.sd ** 2) / 2 + between, 12);
    expect(mean!.sd).toBeGreaterThan(Math.max(female!.sd, male!.sd));
  });

  it.each(SEXES)('keeps the proportions of the nearer end beyond the surveyed statures (%s)', (sex) => {
    for (const measure of LENGTHS) {
      for (const [end, beyond] of [
        [SURVEYED_STATURE.low, 0.9],
        [SURVEYED_STATURE.high, 2.5],
      ] as const) {
        const ratio = surveyLine(measure, end, sex).value / end;
        expect(surveyLine(measure, beyond, sex).value / beyond).toBeCloseTo(ratio, 12);
        expect(surveyLine(measure, beyond, sex).slope).toBeCloseTo(ratio, 12);
      }
    }
  });

  it.each(SEXES)('grows its doubt the farther beyond it is asked (%s)', (sex) => {
    const relative = (s: number) => surveyLine('epicondyleHeight', s, sex).sd / s;
    expect(relative(1.1)).toBeGreaterThan(relative(1.3));
    expect(relative(0.9)).toBeGreaterThan(relative(1.1));
    expect(relative(2.4)).toBeGreaterThan(relative(2.15));
  });

  it('has no jump at either end', () => {
    for (const edge of [SURVEYED_STATURE.low, SURVEYED_STATURE.high]) {
      for (const measure of LENGTHS) {
        const [below, above] = [edge - 1e-7, edge + 1e-7].map((s) => surveyLine(measure, s, 'female'));
        expect(Math.abs(above!.value - below!.value)).toBeLessThan(1e-6);
        expect(Math.abs(above!.sd - below!.sd)).toBeLessThan(1e-6);
      }
    }
  });

  it('is positive and finite from 0.8 to 2.6 m for every length, and its slope is what stature does', () => {
    fc.assert(
      fc.property(stature, fc.constantFrom(...LENGTHS), fc.constantFrom(...SEXES), (s, measure, sex) => {
        fc.pre([SURVEYED_STATURE.low, SURVEYED_STATURE.high].every((edge) => Math.abs(s - edge) > 1e-5));
        const line = surveyLine(measure, s, sex);
        expect(line.value).toBeGreaterThan(0);
        expect(line.sd).toBeGreaterThanOrEqual(0);
        const rise = surveyLine(measure, s + 1e-6, sex).value - surveyLine(measure, s - 1e-6, sex).value;
        expect(Math.abs(rise / 2e-6 - line.slope)).toBeLessThan(1e-6);
        expect(Number.isFinite(line.sd)).toBe(true);
      }),
      { seed: 303 },
    );
  });

  it('is an exact stature for stature', () => {
    expect(surveyRow('stature', 'male').slope).toBe(1);
    expect(surveyEstimate('stature', 1.7, 'unspecified').value).toBeCloseTo(1.7, 12);
    expect(surveyEstimate('stature', 1.7, 'unspecified').sd).toBeCloseTo(0, 12);
  });
});
