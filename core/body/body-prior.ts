import { TAPE_MEASURES, type TapeMeasure } from '../fit/athlete-schema.ts';
import { BODY_LENGTHS, type BodyLength } from './body.ts';
import { figureLengths } from './figure-lengths.ts';
import { type Gaussian, mixed } from './gaussian.ts';
import { type Sex, type StatedSex, tablesOf } from './sex.ts';
import { surveyPerson } from './survey-person.ts';
import { tapeModels } from './tape-models.ts';
import { covarianceOf } from './uncertain.ts';

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
export interface PriorInput {
  readonly stature: number;
  /** Metres. */
  readonly statureSd: number;
  readonly sex: StatedSex;
  /** Factor on all departures from the survey's lines: 1 for an adult. */
  readonly spread: number;
}

/**
 * Joint spread of all body values, metres and m², given the stature alone. With the sex unspecified: the mean of both
 * tables, and the spread between them added.
 */
export function bodyPrior({ stature, statureSd, sex, spread }: PriorInput): Gaussian {
  return mixed(tablesOf(sex).map((table) => priorOfTable({ value: stature, sd: statureSd }, table, spread)));
}

function priorOfTable(stature: { value: number; sd: number }, table: Sex, spread: number): Gaussian {
  const person = surveyPerson(stature, table, spread);
  const lengths = figureLengths(person);
  const tapes = tapeModels(person, lengths);
  const values = [
    ...BODY_LENGTHS.map((name) => lengths[name]),
    ...TAPE_MEASURES.map((measure) => tapes[measure]),
  ];
  return {
    mean: values.map((value) => value.mean),
    covariance: values.map((a) => values.map((b) => covarianceOf(a, b))),
  };
}
