import { TAPE_MEASURES, type TapeMeasure } from '../document/athlete-schema.ts';
import { BODY_LENGTHS, type BodyLength } from './body.ts';
import { figureLengths } from './figure-lengths.ts';
import { type Gaussian, mixed } from './gaussian.ts';
import { type StatedSex, tablesOf } from './sex.ts';
import { SURVEY_MODELS, type SurveyModels } from './survey-model.ts';
import { type KnownPerson, type SurveyPerson, surveyPerson } from './survey-person.ts';
import { tapeModels } from './tape-models.ts';
import { covarianceMatrix } from './uncertain.ts';

/** Order of the values in a body's joint spread: the figure's lengths, then what a perfect tape would read. */
export const BODY_VALUES = [...BODY_LENGTHS, ...TAPE_MEASURES] as const;

/** Place of a length in the joint spread. */
export function lengthIndex(length: BodyLength): number {
  return BODY_LENGTHS.indexOf(length);
}

/** Place of a tape measure's true value in the joint spread. */
export function tapeIndex(measure: TapeMeasure): number {
  return BODY_LENGTHS.length + TAPE_MEASURES.indexOf(measure);
}

/** What is known before any tape measure. */
export interface PriorInput extends KnownPerson {
  readonly sex: StatedSex;
}

/**
 * Joint spread of all body values, metres and m², given stature and mass alone. With the sex unspecified: the mean of both
 * tables, and the spread between them added. `models`: other regressions than the survey's, for tests.
 */
export function bodyPrior(known: PriorInput, models: SurveyModels = SURVEY_MODELS): Gaussian {
  return mixed(tablesOf(known.sex).map((table) => priorOfTable(surveyPerson(known, table, models))));
}

/** Joint spread of the body's lengths and of what a tape would read, by one sex's table. */
function priorOfTable(person: SurveyPerson): Gaussian {
  const lengths = figureLengths(person);
  const tapes = tapeModels(person, lengths);
  const values = [
    ...BODY_LENGTHS.map((name) => lengths[name]),
    ...TAPE_MEASURES.map((measure) => tapes[measure]),
  ];
  return { mean: values.map((value) => value.mean), covariance: covarianceMatrix(values) };
}
