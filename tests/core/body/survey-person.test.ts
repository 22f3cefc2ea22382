import { describe, expect, it } from 'vitest';
import { PERSON_MEASURES } from '../../../core/body/person-measures.ts';
import { SEXES } from '../../../core/body/sex.ts';
import { SURVEY_MODELS } from '../../../core/body/survey-model.ts';
import { surveyPerson } from '../../../core/body/survey-person.ts';
import { covarianceOf, varianceOf } from '../../../core/body/uncertain.ts';

const KNOWN = { stature: 1.75, statureSd: 0, mass: 75, massSd: 0, spread: 1, ageYears: null } as const;

describe('the survey’s person', () => {
  it.each(SEXES)('has the survey’s expectation and spread in every measure (%s)', (sex) => {
    const person = surveyPerson(KNOWN, sex);
    for (const measure of PERSON_MEASURES) {
      const line = SURVEY_MODELS[sex].line(measure, 1.75, 75);
      expect(person[measure].mean).toBeCloseTo(line.value, 12);
      expect(Math.sqrt(varianceOf(person[measure]))).toBeCloseTo(line.sd, 9);
    }
  });

  it.each(SEXES)('has the table’s correlations (%s)', (sex) => {
    const person = surveyPerson(KNOWN, sex);
    for (const a of PERSON_MEASURES) {
      for (const b of PERSON_MEASURES) {
        const [va, vb] = [varianceOf(person[a]), varianceOf(person[b])];
        const found = covarianceOf(person[a], person[b]) / Math.sqrt(va * vb);
        expect(found).toBeCloseTo(SURVEY_MODELS[sex].correlation(a, b), 9);
      }
    }
  });

  it('shares the errors of stature and mass among all its measures', () => {
    const person = surveyPerson({ ...KNOWN, statureSd: 0.01, massSd: 2, spread: 0 }, 'male');
    expect(Math.sqrt(varianceOf(person.stature))).toBeCloseTo(0.01, 12);
    // With no departures at all, 1 cm of stature is 6.3 mm of trochanterion height, and 2 kg are 0.9 mm of knee depth.
    expect(covarianceOf(person.stature, person.trochanterionHeight) / 0.01).toBeCloseTo(0.006311, 6);
    expect(person.kneeDepth.sources.mass).toBeCloseTo(2 * 0.000466828, 9);
  });

  it('with the mass unknown takes that which goes with the stature, and its spread', () => {
    const unweighed = surveyPerson({ ...KNOWN, mass: null }, 'male');
    const usual = SURVEY_MODELS.male.massFor(1.75);
    // The survey's men of 1.75 m weigh 85.1 ± 12.6 kg.
    expect(usual.value).toBeCloseTo(85.11, 1);
    expect(usual.sd).toBeCloseTo(12.59, 2);
    const weighed = surveyPerson({ ...KNOWN, mass: usual.value }, 'male');
    for (const measure of PERSON_MEASURES) {
      expect(unweighed[measure].mean).toBeCloseTo(weighed[measure].mean, 12);
      expect(varianceOf(unweighed[measure])).toBeGreaterThanOrEqual(varianceOf(weighed[measure]) - 1e-15);
    }
    // From stature alone the survey leaves 9.4 mm of the knee's depth, with the mass 7.4 mm.
    expect(Math.sqrt(varianceOf(unweighed.kneeDepth)) * 1000).toBeCloseTo(9.43, 1);
    expect(Math.sqrt(varianceOf(weighed.kneeDepth)) * 1000).toBeCloseTo(7.37, 2);
  });

  it('spreads departures by a factor', () => {
    const [adult, wider] = [1, 1.5].map((spread) => surveyPerson({ ...KNOWN, spread }, 'female'));
    for (const measure of PERSON_MEASURES) {
      expect(varianceOf(wider![measure])).toBeCloseTo(2.25 * varianceOf(adult![measure]), 12);
      expect(wider![measure].mean).toBe(adult![measure].mean);
    }
  });
});
