import { PERSON_MEASURES } from '../../core/body/person-measures.ts';
import { SEXES } from '../../core/body/sex.ts';
import { regressionsOf } from './body-regressions.ts';
import { surveyedPersons } from './body-survey-persons.ts';

// Prints the body of core/body/survey-regressions.ts from the survey's persons: npm run survey-regressions

const digits = (value: number) => Number(value.toPrecision(6));

for (const sex of SEXES) {
  const { persons, massOnStature, rows, correlations } = regressionsOf(
    surveyedPersons().filter((p) => p.sex === sex),
  );
  console.log(`  ${sex}: {`);
  console.log(`    persons: ${persons},`);
  console.log(`    massOnStature: [${massOnStature.map(digits).join(', ')}],`);
  console.log('    rows: {');
  for (const measure of PERSON_MEASURES) {
    console.log(`      ${measure}: [${rows[measure].map(digits).join(', ')}],`);
  }
  console.log('    },\n    correlations: [');
  for (const row of correlations) console.log(`      [${row.map((r) => Number(r.toFixed(4))).join(', ')}],`);
  console.log('    ],\n  },');
}
