import type { TapeMeasure } from '../document/athlete-schema.ts';
import type { BodyNote } from './body.ts';
import { type BodyInput, isJunior } from './body-input.ts';
import type { Gaussian, Reading } from './gaussian.ts';
import { SURVEYED_STATURE } from './survey-estimate.ts';

/** Masses for which the tables of mass are used without a note, kilograms (estimate). */
export const TABLED_MASS = { low: 30, high: 140 } as const;

/** A reading farther than this many standard deviations from what is expected is reported (one reading in 370 by chance). */
const DISAGREES_SIGMAS = 3;

/** A tape reading with the place of its measure in the joint spread. */
export interface TapeReading extends Reading {
  readonly measure: TapeMeasure;
}

/** What a coach must know about an estimate. `prior` is the joint spread before any tape. */
export function bodyNotes(input: BodyInput, prior: Gaussian, readings: readonly TapeReading[]): BodyNote[] {
  const { stature, mass } = input;
  const notes: BodyNote[] = [];
  if (stature < SURVEYED_STATURE.low || stature > SURVEYED_STATURE.high) {
    notes.push({ code: 'extrapolates-stature', value: stature });
  }
  if (mass < TABLED_MASS.low || mass > TABLED_MASS.high) {
    notes.push({ code: 'extrapolates-mass', value: mass });
  }
  if (isJunior(input)) notes.push({ code: 'junior', ageYears: input.ageYears ?? null });
  return [...notes, ...readings.flatMap((reading) => disagreement(prior, reading))];
}

/** A note on a reading that lies far from what stature and mass predict; empty where it does not. */
function disagreement(prior: Gaussian, { measure, index, value, sd }: TapeReading): BodyNote[] {
  const spread = Math.sqrt(prior.covariance[index]![index]! + sd ** 2);
  const sigmas = Math.abs(value - prior.mean[index]!) / spread;
  return sigmas > DISAGREES_SIGMAS ? [{ code: 'tape-disagrees', measure, sigmas }] : [];
}
