import { describe, expect, it } from 'vitest';
import { squareRootOf } from '../../core/body/covariance-root.ts';
import { PERSON_MEASURES } from '../../core/body/person-measures.ts';
import { SEXES } from '../../core/body/sex.ts';
import { SURVEY_REGRESSIONS } from '../../core/body/survey-regressions.ts';
import { surveyRow } from '../../core/body/survey-table.ts';
import { regressionsOf } from './body-regressions.ts';
import { surveyedPersons } from './body-survey-persons.ts';

// The generated table against the survey's persons (ANSUR II, 4,864 of its public release), and against the survey's own
// summary of all 6,068, which was computed by others.

const PERSONS = surveyedPersons();

describe.each(SEXES)('regressions on stature and mass (%s)', (sex) => {
  const table = SURVEY_REGRESSIONS[sex];
  const anew = regressionsOf(PERSONS.filter((p) => p.sex === sex));

  it('are those of the persons', () => {
    expect(table.persons).toBe({ male: 3261, female: 1603 }[sex]);
    expect(anew.persons).toBe(table.persons);
    table.massOnStature.forEach((value, i) => {
      expect(Math.abs(value / anew.massOnStature[i]! - 1)).toBeLessThan(1e-5);
    });
    for (const measure of PERSON_MEASURES) {
      table.rows[measure].forEach((value, i) => {
        expect(Math.abs(value / anew.rows[measure][i]! - 1)).toBeLessThan(1e-5);
      });
    }
    anew.correlations.forEach((row, i) => {
      row.forEach((value, j) => {
        expect(Math.abs(table.correlations[i]![j]! - value)).toBeLessThan(6e-5);
      });
    });
  });

  it('leave no more than stature alone leaves in the survey’s own summary', () => {
    for (const measure of PERSON_MEASURES) {
      const alone = surveyRow(measure, sex).residualSd;
      // Four fifths of the survey's persons: their spread may differ from that of all by a few per cent.
      expect(table.rows[measure][3]).toBeLessThan(1.02 * alone);
    }
  });

  // The knee's depth of men, for example, from 9.4 mm to about 7.3 mm.
  it.each([
    ['kneeDepth', 0.79],
    ['buttockKneeLength', 0.88],
  ] as const)('%s is told better with the mass: %f of the spread', (measure, most) => {
    expect(table.rows[measure][3]).toBeLessThan(most * surveyRow(measure, sex).residualSd);
  });

  it('have correlations that can be taken apart: positive definite', () => {
    const full = PERSON_MEASURES.map((_, i) =>
      PERSON_MEASURES.map((_, j) => (i === j ? 1 : table.correlations[Math.max(i, j)]![Math.min(i, j)]!)),
    );
    const pivots = squareRootOf(full).map((column, k) => column[k]!);
    expect(Math.min(...pivots)).toBeGreaterThan(0.3);
  });
});
