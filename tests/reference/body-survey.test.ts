import { describe, expect, it } from 'vitest';
import { SEXES, type Sex } from '../../core/body/sex.ts';
import { surveyEstimate } from '../../core/body/survey-estimate.ts';
import { SURVEY_MEASURES, type SurveyMeasure, surveyRow } from '../../core/body/survey-table.ts';
import { notEmpty } from '../not-empty.ts';

// Outside figures: ANSUR II (US Army 2012, NATICK/TR-15/007), public release; means, percentiles and lines as derived from its
// persons. A few printed figures are repeated here by hand so that a slip in the table shows.

const LENGTHS = SURVEY_MEASURES.filter((measure) => measure !== 'mass' && measure !== 'stature');
const EVERY = SEXES.flatMap((sex) => LENGTHS.map((measure) => [measure, sex] as const));

/** Standard normal 95th percentile. */
const Z95 = 1.6449;

const mm = (metres: number) => metres * 1000;
const predicted = (measure: SurveyMeasure, statureMm: number, sex: Sex) =>
  surveyEstimate(measure, statureMm / 1000, sex);

/** Share of a measure's spread that goes with stature. */
function correlationWithStature(measure: SurveyMeasure, sex: Sex): number {
  const { slope, sd } = surveyRow(measure, sex);
  return (slope * surveyRow('stature', sex).sd) / sd;
}

describe('survey table', () => {
  it.each([
    ['stature', 'male', 1756.2],
    ['stature', 'female', 1628.5],
    ['trochanterionHeight', 'male', 900.9],
    ['trochanterionHeight', 'female', 845.4],
    ['kneeHeightSitting', 'male', 554.2],
    ['kneeHeightSitting', 'female', 511.3],
    ['footLength', 'male', 271.2],
    ['footLength', 'female', 246.3],
    ['biacromialBreadth', 'male', 415.7],
    ['biacromialBreadth', 'female', 365.3],
  ] as const)('%s of %s has the mean that the survey prints', (measure, sex, mean) => {
    expect(surveyRow(measure, sex).mean).toBeCloseTo(mean, 1);
  });

  it.each(EVERY)('%s (%s): the line passes through the means', (measure, sex) => {
    const { slope, intercept, mean } = surveyRow(measure, sex);
    expect(Math.abs(slope * surveyRow('stature', sex).mean + intercept - mean)).toBeLessThan(0.05);
  });

  it.each(EVERY)('%s (%s): slope and residual make up the whole spread', (measure, sex) => {
    const { slope, residualSd, sd } = surveyRow(measure, sex);
    expect(Math.hypot(slope * surveyRow('stature', sex).sd, residualSd) / sd).toBeCloseTo(1, 2);
  });

  it.each(SEXES)('rows formed from two others agree with them (%s)', (sex) => {
    const differences = [
      ['trochanterionLessEpicondyle', 'trochanterionHeight', 'epicondyleHeight'],
      ['epicondyleLessMalleolus', 'epicondyleHeight', 'malleolusHeight'],
      ['acromionLessTrochanterion', 'acromialHeight', 'trochanterionHeight'],
      ['kneeDepth', 'buttockKneeLength', 'buttockPoplitealLength'],
      ['toeLength', 'footLength', 'ballOfFootLength'],
    ] as const;
    for (const [row, upper, lower] of notEmpty(differences)) {
      for (const part of ['mean', 'slope', 'intercept'] as const) {
        const expected = surveyRow(upper, sex)[part] - surveyRow(lower, sex)[part];
        expect(Math.abs(surveyRow(row, sex)[part] - expected)).toBeLessThan(0.01);
      }
    }
  });
});

describe('predictions from stature', () => {
  it.each(EVERY)('%s (%s): the middle person has the middle measure', (measure, sex) => {
    const { p50, residualSd } = surveyRow(measure, sex);
    const at50 = predicted(measure, surveyRow('stature', sex).p50, sex);
    // A median of whole millimetres against a line through means: a tenth of the residual spread, or 1.5 mm.
    expect(Math.abs(mm(at50.value) - p50)).toBeLessThan(Math.max(1.5, 0.15 * residualSd));
    expect(mm(at50.sd)).toBeCloseTo(residualSd, 6);
  });

  // A tall person's measure is expected nearer to the middle than stature is ("regression"); within one residual sd of the
  // measure's own percentile as long as the correlation r with stature exceeds 0.46, since 1.645 (1 − r) < √(1 − r²).
  const following = EVERY.filter(([measure, sex]) => correlationWithStature(measure, sex) > 0.5);

  it('most measures follow stature', () => {
    expect(following.length).toBeGreaterThan(40);
  });

  it.each(following)('%s (%s): 5 %% and 95 %% within the residual spread', (measure, sex) => {
    const row = surveyRow(measure, sex);
    const stature = surveyRow('stature', sex);
    expect(Math.abs(mm(predicted(measure, stature.p05, sex).value) - row.p05)).toBeLessThan(row.residualSd);
    expect(Math.abs(mm(predicted(measure, stature.p95, sex).value) - row.p95)).toBeLessThan(row.residualSd);
  });

  it.each(EVERY)('%s (%s): line and residual together give the survey’s percentiles', (measure, sex) => {
    const row = surveyRow(measure, sex);
    const middle = predicted(measure, surveyRow('stature', sex).mean, sex);
    const spread = Math.hypot(row.slope * surveyRow('stature', sex).sd, mm(middle.sd));
    // Real bodies are not quite normal: a fifth of a standard deviation, or the whole millimetre of the table.
    const tolerance = Math.max(1, 0.2 * row.sd);
    expect(Math.abs(mm(middle.value) - Z95 * spread - row.p05)).toBeLessThan(tolerance);
    expect(Math.abs(mm(middle.value) + Z95 * spread - row.p95)).toBeLessThan(tolerance);
  });
});
