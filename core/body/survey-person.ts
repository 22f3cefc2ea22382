import { squareRootOf } from '../fit/covariance-root.ts';
import type { Sex } from './sex.ts';
import { measureCorrelations, PERSON_MEASURES, type PersonMeasure } from './survey-correlations.ts';
import { surveyLine } from './survey-estimate.ts';
import { combine, exactly, type Uncertain, uncertain } from './uncertain.ts';

/** A person of whom the stature is known: it and what the survey then says of every measure, with shared doubts, metres. */
export type SurveyPerson = Readonly<Record<PersonMeasure | 'stature', Uncertain>>;

/** Columns of the root of each table's correlations: how independent unit doubts make up the departures. */
const ROOTS: Readonly<Record<Sex, readonly (readonly number[])[]>> = {
  female: squareRootOf(measureCorrelations('female')),
  male: squareRootOf(measureCorrelations('male')),
};

/**
 * The survey's person of a stature (metres, with its standard deviation) by one table: every measure is its line at that
 * stature, moved by the error of the stature and by a departure from the line; departures have the survey's spread and
 * correlations. `spread` multiplies all departures: 1 for an adult.
 */
export function surveyPerson(
  stature: { readonly value: number; readonly sd: number },
  sex: Sex,
  spread: number,
): SurveyPerson {
  const statureError = uncertain(0, stature.sd, 'stature');
  const measures = PERSON_MEASURES.map((measure, i): [PersonMeasure, Uncertain] => {
    const line = surveyLine(measure, stature.value, sex);
    const sources = PERSON_MEASURES.map((source, k) => [source, ROOTS[sex][k]?.[i] ?? 0] as const);
    const departure: Uncertain = {
      mean: 0,
      sources: Object.fromEntries(sources.filter(([, reach]) => reach)),
    };
    return [
      measure,
      combine([
        [1, exactly(line.value)],
        [line.slope, statureError],
        [line.sd * spread, departure],
      ]),
    ];
  });
  return {
    ...(Object.fromEntries(measures) as Record<PersonMeasure, Uncertain>),
    stature: uncertain(stature.value, stature.sd, 'stature'),
  };
}
