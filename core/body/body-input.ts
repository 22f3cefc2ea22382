import type { TapeMeasure } from '../document/athlete-schema.ts';
import type { StatedSex } from './sex.ts';

/** One tape reading, metres. Without a standard deviation, the usual one of the measure is used (`TAPE_SD`). */
export interface TapeValue {
  /** What was read, metres. */
  readonly value: number;
  /** Standard deviation of the reading, metres. */
  readonly sd?: number | undefined;
}

/** What is known of a person: metres, kilograms, years. */
export interface BodyInput {
  /** Standing height without shoes, metres. */
  readonly stature: number;
  /** Body mass, kilograms. */
  readonly mass: number;
  readonly sex: StatedSex;
  readonly tape?: Readonly<Partial<Record<TapeMeasure, TapeValue>>> | undefined;
  /** Standard deviations of stature (metres) and mass (kilograms), where they differ from the usual ones. */
  readonly statureSd?: number | undefined;
  readonly massSd?: number | undefined;
  /** Whole years. Null or absent: not known, an adult is assumed. */
  readonly ageYears?: number | null | undefined;
}

/** Below this age the survey, of adults, is an extrapolation. */
const ADULT_YEARS = 18;

/** Whether the person is known to be younger than the survey's. */
export function isJunior({ ageYears }: Pick<BodyInput, 'ageYears'>): boolean {
  return ageYears !== undefined && ageYears !== null && ageYears < ADULT_YEARS;
}

/**
 * Factor on the spread of a junior's proportions (estimate). Sitting height, knee height and foot of 116 juniors spread 0.9 to
 * 1.2 times as far about the line of their age as adults' do (Snyder et al. 1977). Nothing is known of arms and shoulders.
 */
const JUNIOR_SPREAD = 1.25;

/** Factor on how far this person may depart from the survey's lines: 1 for an adult or an unknown age, 1.25 for a junior. */
export function personSpread(person: Pick<BodyInput, 'ageYears'>): number {
  return isJunior(person) ? JUNIOR_SPREAD : 1;
}
