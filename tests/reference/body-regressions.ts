import {
  PERSON_MEASURES,
  type RegressionRow,
  type SurveyRegressions,
} from '../../core/body/person-measures.ts';
import type { SurveyedPerson } from './body-survey-persons.ts';

// Ordinary least squares over the survey's persons: where the table in core/body/survey-regressions.ts comes from.

const MM = 1000;

/** Least squares of each column of `ys` on a constant and the columns of `xs`: coefficients, and what they leave. */
function leastSquares(xs: readonly (readonly number[])[], ys: readonly number[]) {
  const rows = xs.map((x) => [1, ...x]);
  const size = rows[0]!.length;
  const normal = Array.from({ length: size }, (_, i) => [
    ...Array.from({ length: size }, (_, j) => rows.reduce((sum, row) => sum + row[i]! * row[j]!, 0)),
    rows.reduce((sum, row, k) => sum + row[i]! * ys[k]!, 0),
  ]);
  for (let k = 0; k < size; k++) {
    for (let i = 0; i < size; i++) {
      if (i === k) continue;
      const factor = normal[i]![k]! / normal[k]![k]!;
      normal[i] = normal[i]!.map((value, j) => value - factor * normal[k]![j]!);
    }
  }
  const coefficients = normal.map((row, i) => row[size]! / row[i]!);
  const left = rows.map((row, k) => ys[k]! - row.reduce((sum, x, i) => sum + x * coefficients[i]!, 0));
  return { coefficients, left, sd: Math.sqrt(dot(left, left) / (ys.length - size)) };
}

const dot = (a: readonly number[], b: readonly number[]) => a.reduce((sum, x, i) => sum + x * b[i]!, 0);

/** The regressions of persons of one sex. Stature is centred for the sake of the arithmetic. */
export function regressionsOf(persons: readonly SurveyedPerson[]): SurveyRegressions {
  const middle = persons.reduce((sum, p) => sum + p.stature, 0) / persons.length;
  const statures = persons.map((p) => (p.stature - middle) * MM);
  const onMass = leastSquares(
    statures.map((s) => [s]),
    persons.map((p) => p.mass),
  );
  const fits = PERSON_MEASURES.map((measure) =>
    leastSquares(
      persons.map((p, i) => [statures[i]!, p.mass]),
      persons.map((p) => p.measures[measure] * MM),
    ),
  );
  const rows = PERSON_MEASURES.map((measure, i) => {
    const [constant = 0, perMm = 0, perKg = 0] = fits[i]!.coefficients;
    return [measure, [constant - perMm * middle * MM, perMm, perKg, fits[i]!.sd] as RegressionRow] as const;
  });
  const [mass = 0, massPerMm = 0] = onMass.coefficients;
  return {
    persons: persons.length,
    massOnStature: [mass - massPerMm * middle * MM, massPerMm, onMass.sd],
    rows: Object.fromEntries(rows) as SurveyRegressions['rows'],
    correlations: fits.map((a, i) =>
      fits.slice(0, i).map((b) => dot(a.left, b.left) / Math.sqrt(dot(a.left, a.left) * dot(b.left, b.left))),
    ),
  };
}
