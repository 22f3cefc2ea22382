import { type Athlete, TAPE_MEASURES, type TapeMeasure } from '../document/athlete-schema.ts';
import { ageWhenMeasured } from './body-of-athlete.ts';
import { type TapePlace, tapePercentile } from './tape-percentile.ts';

/** A tape measure that few persons of that stature have, metres. */
export interface UnusualTape {
  /** Which measure. */
  readonly measure: TapeMeasure;
  /** As it was read. */
  readonly valueM: number;
  /** Its place among persons of that stature and mass. */
  readonly place: TapePlace;
}

/**
 * Every tape measure of an athlete outside the survey's 1–99 % at that stature and mass: more likely an error than a person.
 * The age is that on the day of measuring; without birth date or day an adult is assumed. A foot of 0.33 m at a stature of 1.52
 * m is one.
 */
export function unusualTapes(
  athlete: Pick<Athlete, 'statureM' | 'sex' | 'tape' | 'bornOn' | 'measuredOn'> &
    Partial<Pick<Athlete, 'massKg'>>,
): UnusualTape[] {
  const { statureM: stature, massKg: mass, sex, tape } = athlete;
  const ageYears = ageWhenMeasured(athlete);
  return TAPE_MEASURES.flatMap((measure) => {
    const valueM = tape[measure]?.valueM;
    if (valueM === undefined) return [];
    const place = tapePercentile(measure, valueM, { stature, mass, sex, ageYears });
    return place.usual ? [] : [{ measure, valueM, place }];
  });
}
