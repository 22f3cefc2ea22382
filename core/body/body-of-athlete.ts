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

/** What the core's body estimate is told of an athlete: metres, kilograms, whole years. */
export function bodyInputOf(athlete: Athlete): BodyInput {
  const tape = Object.entries(athlete.tape).map(([measure, reading]): [string, TapeValue] => [
    measure,
    { value: reading.valueM, sd: reading.sdM },
  ]);
  const { bornOn, measuredOn } = athlete;
  return {
    stature: athlete.statureM,
    mass: athlete.massKg,
    sex: athlete.sex,
    tape: Object.fromEntries(tape),
    ageYears: bornOn && measuredOn ? ageOn(bornOn, measuredOn) : null,
  };
}
