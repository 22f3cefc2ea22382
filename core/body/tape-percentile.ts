import type { TapeMeasure } from '../document/athlete-schema.ts';
import { personSpread } from './body-input.ts';
import { bodyPrior, tapeIndex } from './body-prior.ts';
import { SIGMAS_TO_1_PERCENT, shareBelow } from './normal.ts';
import type { StatedSex } from './sex.ts';
import { MASS_SD, STATURE_SD, TAPE_SD } from './tape-sd.ts';

/** The person measured: stature in metres, mass in kilograms, age in whole years. Null or left out: not known. */
export interface TapePerson {
  /** Standing height, metres. */
  readonly stature: number;
  readonly mass?: number | null | undefined;
  readonly sex: StatedSex;
  readonly ageYears?: number | null | undefined;
}

/** Where a tape reading stands among persons of that stature and mass; lengths in metres. */
export interface TapePlace {
  /** What the tape reads on the average of such persons. */
  readonly expected: number;
  /** Standard deviation of readings: persons, stature and tape together. */
  readonly sd: number;
  /** Share of readings below this one, 0–1. */
  readonly percentile: number;
  /** The 1st and 99th percentile, metres: a reading outside is more likely an error than a person. */
  readonly low: number;
  /** As `low`, at the other end. */
  readonly high: number;
  readonly usual: boolean;
}

/**
 * Where a tape reading (metres) stands among persons of that stature and mass by the survey: a guard against wrong readings and
 * typing errors. For a man of 1.80 m, a knee height sitting of 0.56 m is the 23rd percentile; 0.65 m is surely an error. For a
 * junior the range is wider, because the survey is of adults.
 */
export function tapePercentile(measure: TapeMeasure, value: number, person: TapePerson): TapePlace {
  const { stature, mass = null, sex, ageYears = null } = person;
  const doubt = { statureSd: STATURE_SD, massSd: MASS_SD, spread: personSpread(person) };
  const prior = bodyPrior({ stature, mass, sex, ageYears, ...doubt });
  const i = tapeIndex(measure);
  const expected = prior.mean[i]!;
  const sd = Math.sqrt(prior.covariance[i]![i]! + TAPE_SD[measure] ** 2);
  const reach = SIGMAS_TO_1_PERCENT * sd;
  return {
    expected,
    sd,
    percentile: shareBelow((value - expected) / sd),
    low: expected - reach,
    high: expected + reach,
    usual: Math.abs(value - expected) <= reach,
  };
}
