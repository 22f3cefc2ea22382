import type { Athlete } from '../document/athlete-schema.ts';
import { ageOn } from '../units/age.ts';
import type { BodyEstimate } from './body.ts';
import type { BodyInput, TapeValue } from './body-input.ts';
import { estimateBody } from './estimate-body.ts';

/**
 * The body of an athlete as written in a fit. The age is counted from the birth date to the day of measuring, and is
 * unknown unless both are given.
 */
export function bodyOfAthlete(athlete: Athlete): BodyEstimate {
  return estimateBody(bodyInputOf(athlete));
}

/** The input of the body estimate for an athlete: metres, kilograms, whole years. */
export function bodyInputOf(athlete: Athlete): BodyInput {
  const tape = Object.entries(athlete.tape).map(([measure, reading]): [string, TapeValue] => [
    measure,
    { value: reading.valueM, sd: reading.sdM },
  ]);
  return {
    stature: athlete.statureM,
    mass: athlete.massKg,
    sex: athlete.sex,
    tape: Object.fromEntries(tape),
    ageYears: ageWhenMeasured(athlete),
  };
}

/** Whole years on the day of measuring; null where birth date or day is not known. */
export function ageWhenMeasured({
  bornOn,
  measuredOn,
}: Pick<Athlete, 'bornOn' | 'measuredOn'>): number | null {
  return bornOn && measuredOn ? ageOn(bornOn, measuredOn) : null;
}
