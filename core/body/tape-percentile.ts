import type { TapeMeasure } from '../document/athlete-schema.ts';
import { personSpread } from './body-input.ts';
import { bodyPrior, tapeIndex } from './body-prior.ts';
import { SIGMAS_TO_1_PERCENT, shareBelow } from './normal.ts';
import type { StatedSex } from './sex.ts';
import { MASS_SD, STATURE_SD, TAPE_SD } from './tape-sd.ts';

/** Whom the reading is of: stature in metres, mass in kilograms, age in whole years, null or left out where not known. */
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
  /** Spread of readings: of persons, of the stature and of the tape. */
  readonly sd: number;
  /** Share of readings below this one, 0–1. */
  readonly percentile: number;
  /** The 1st and 99th percentile: a reading outside is more likely a slip than a person. */
  readonly low: number;
  /** As `low`, at the other end. */
  readonly high: number;
  readonly usual: boolean;
}

/**
 * Where a tape reading (metres) stands among persons of that stature and mass by the survey, as a guard against slips of the
 * tape or of the pen. Of 1.80 m men, 0.56 m of knee height sitting is the 23rd percentile, and 0.65 m is no slip of nature's.
 * For a junior the range is wider, as the survey is of adults.
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
