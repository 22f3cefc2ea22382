import { describe, expect, it } from 'vitest';
import { ratioEstimate } from '../../core/body/ratio-estimate.ts';
import { SEXES, type Sex } from '../../core/body/sex.ts';
import { surveyEstimate } from '../../core/body/survey-estimate.ts';
import { SURVEY_MODELS } from '../../core/body/survey-model.ts';
import { type SurveyMeasure, surveyRow } from '../../core/body/survey-table.ts';
import { surveyedPersons } from './body-survey-persons.ts';

// Two published families predict lengths from stature: the ratio table (Drillis & Contini 1966 via Winter) and the survey's
// lines (ANSUR II). Which one errs less is measured, not assumed: against the survey's whole population, and against
// 4,864 persons of it one by one. Ratios are read against the survey's bony points; that its hip and thigh may mean joint centres
// is taken up in body-hip-height.test.ts.

/** What the ratio table calls each survey column. */
const PAIRED = {
  trochanterionHeight: (stature: number) => ratioEstimate('hipHeight', stature),
  epicondyleHeight: (stature: number) =>
    ratioEstimate('shank', stature) + ratioEstimate('ankleHeight', stature),
  malleolusHeight: (stature: number) => ratioEstimate('ankleHeight', stature),
  acromialHeight: (stature: number) => ratioEstimate('shoulderHeight', stature),
  acromionRadialeLength: (stature: number) => ratioEstimate('upperArm', stature),
  radialeStylionLength: (stature: number) => ratioEstimate('forearm', stature),
  footLength: (stature: number) => ratioEstimate('footLength', stature),
} satisfies Partial<Record<SurveyMeasure, (stature: number) => number>>;
type Paired = keyof typeof PAIRED;
const MEASURES = Object.keys(PAIRED) as Paired[];

/** Root mean square error over the survey's population, millimetres, of a prediction that is a line on stature. */
function populationError(measure: Paired, sex: Sex, predict: (stature: number) => number): number {
  const { mean, sd } = surveyRow('stature', sex);
  const { slope, intercept, residualSd } = surveyRow(measure, sex);
  const bias = predict(mean / 1000) * 1000 - (slope * mean + intercept);
  const slopeError = (predict(1.8) - predict(1.6)) / 0.2 - slope;
  return Math.hypot(bias, slopeError * sd, residualSd);
}

/** Root mean square errors in millimetres: [ratio table, survey line]. */
const REPORT: Readonly<Record<Sex, Readonly<Record<Paired, readonly [number, number]>>>> = {
  male: {
    trochanterionHeight: [39.9, 25.9],
    epicondyleHeight: [16.6, 13.6],
    malleolusHeight: [6.7, 5.0],
    acromialHeight: [17.5, 16.2],
    acromionRadialeLength: [13.7, 10.6],
    radialeStylionLength: [15.8, 10.8],
    footLength: [10.1, 9.1],
  },
  female: {
    trochanterionHeight: [29.3, 23.0],
    epicondyleHeight: [16.8, 16.3],
    malleolusHeight: [4.7, 4.6],
    acromialHeight: [14.5, 13.7],
    acromionRadialeLength: [13.5, 10.5],
    radialeStylionLength: [11.7, 11.1],
    footLength: [8.7, 8.6],
  },
};

const EVERY = SEXES.flatMap((sex) => MEASURES.map((measure) => [measure, sex] as const));

describe('the choice between the two families', () => {
  it.each(EVERY)('%s (%s): errors as reported, the survey’s the smaller', (measure, sex) => {
    const ratio = populationError(measure, sex, PAIRED[measure]);
    const survey = populationError(measure, sex, (s) => surveyEstimate(measure, s, sex).value);
    expect([ratio, survey].map((error) => Math.round(error * 10) / 10)).toEqual(REPORT[sex][measure]);
    expect(survey).toBeLessThan(ratio);
  });

  // The persons are part of the survey's population, so this is no proof from outside; but 4,864 rows read one by one would
  // show a slip in either table that populations hide, and every person has a stature of their own.
  const persons = surveyedPersons();
  const errorOf = (measure: Paired, sex: Sex, predict: (stature: number) => number) => {
    const own = persons.filter((p) => p.sex === sex);
    const squares = own.reduce((sum, p) => sum + (predict(p.stature) - p.measures[measure]) ** 2, 0);
    return 1000 * Math.sqrt(squares / own.length);
  };

  it.each(EVERY)('%s (%s): person by person the survey errs less too', (measure, sex) => {
    const ratio = errorOf(measure, sex, PAIRED[measure]);
    const survey = errorOf(measure, sex, (s) => surveyEstimate(measure, s, sex).value);
    expect(survey).toBeLessThan(ratio);
    expect(Math.abs(ratio - REPORT[sex][measure][0])).toBeLessThan(0.6);
    expect(Math.abs(survey - REPORT[sex][measure][1])).toBeLessThan(0.6);
  });

  it.each(EVERY)('%s (%s): with the mass counted the survey errs no more', (measure, sex) => {
    const own = persons.filter((p) => p.sex === sex);
    const { line } = SURVEY_MODELS[sex];
    const squares = own.reduce(
      (sum, p) => sum + (line(measure, p.stature, p.mass).value - p.measures[measure]) ** 2,
      0,
    );
    const alone = errorOf(measure, sex, (s) => surveyEstimate(measure, s, sex).value);
    expect(1000 * Math.sqrt(squares / own.length)).toBeLessThan(alone + 0.01);
  });
});
