import { describe, expect, it } from 'vitest';
import { SEXES } from '../../../core/body/sex.ts';
import { measureCorrelations, PERSON_MEASURES } from '../../../core/body/survey-correlations.ts';
import { surveyLine } from '../../../core/body/survey-estimate.ts';
import { surveyPerson } from '../../../core/body/survey-person.ts';
import { surveyRow } from '../../../core/body/survey-table.ts';
import { combine, covarianceOf, varianceOf } from '../../../core/body/uncertain.ts';

const KNOWN = { value: 1.75, sd: 0 };

describe('the survey’s person', () => {
  it.each(SEXES)('has the survey’s mean and spread in every measure (%s)', (sex) => {
    const person = surveyPerson(KNOWN, sex, 1);
    for (const measure of PERSON_MEASURES) {
      const line = surveyLine(measure, KNOWN.value, sex);
      expect(person[measure].mean).toBeCloseTo(line.value, 12);
      expect(Math.sqrt(varianceOf(person[measure]))).toBeCloseTo(line.sd, 9);
    }
  });

  it.each(SEXES)('has the table’s correlations (%s)', (sex) => {
    const person = surveyPerson(KNOWN, sex, 1);
    const table = measureCorrelations(sex);
    PERSON_MEASURES.forEach((a, i) => {
      PERSON_MEASURES.forEach((b, j) => {
        const [va, vb] = [varianceOf(person[a]), varianceOf(person[b])];
        expect(covarianceOf(person[a], person[b]) / Math.sqrt(va * vb)).toBeCloseTo(table[i]![j]!, 9);
      });
    });
  });

  // Differences formed in the model have the spread that the survey found for them person by person.
  it.each(SEXES)('has the survey’s spread in the differences that tie pairs (%s)', (sex) => {
    const person = surveyPerson(KNOWN, sex, 1);
    const rows = [
      ['trochanterionLessEpicondyle', 'trochanterionHeight', 'epicondyleHeight', -1],
      ['epicondyleLessMalleolus', 'epicondyleHeight', 'malleolusHeight', -1],
      ['acromionLessTrochanterion', 'acromialHeight', 'trochanterionHeight', -1],
      ['acromionLessRadiale', 'acromialHeight', 'acromionRadialeLength', -1],
      ['radialePlusStylion', 'acromionRadialeLength', 'radialeStylionLength', 1],
      ['forearmGripLessStylion', 'forearmGripLength', 'radialeStylionLength', -1],
      ['toeLength', 'footLength', 'ballOfFootLength', -1],
      ['buttockPoplitealLength', 'buttockKneeLength', 'kneeDepth', -1],
      ['kneeTopLessEpicondyle', 'kneeHeightSitting', 'epicondyleHeight', -1],
      ['acromionLessTibial', 'acromialHeight', 'tibialHeight', -1],
    ] as const;
    for (const [row, a, b, sign] of rows) {
      const formed = combine([
        [1, person[a]],
        [sign, person[b]],
      ]);
      expect(Math.sqrt(varianceOf(formed)) * 1000).toBeCloseTo(surveyRow(row, sex).residualSd, 2);
      expect(formed.mean * 1000).toBeCloseTo(surveyLine(row, KNOWN.value, sex).value * 1000, 2);
    }
  });

  it('shares the error of the stature among all its measures', () => {
    const person = surveyPerson({ value: 1.75, sd: 0.01 }, 'male', 0);
    expect(Math.sqrt(varianceOf(person.stature))).toBeCloseTo(0.01, 12);
    // With no departures at all, 1 cm of stature is 6.1 mm of trochanterion height (slope 0.6098).
    expect(covarianceOf(person.stature, person.trochanterionHeight) / 0.01).toBeCloseTo(0.006098, 6);
    expect(Math.sqrt(varianceOf(person.trochanterionHeight))).toBeCloseTo(0.006098, 6);
  });

  it('spreads departures by a factor', () => {
    const [adult, junior] = [1, 1.5].map((spread) => surveyPerson(KNOWN, 'female', spread));
    for (const measure of PERSON_MEASURES) {
      expect(varianceOf(junior![measure])).toBeCloseTo(2.25 * varianceOf(adult![measure]), 12);
      expect(junior![measure].mean).toBe(adult![measure].mean);
    }
  });
});
