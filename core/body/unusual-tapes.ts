import { type Athlete, TAPE_MEASURES, type TapeMeasure } from '../document/athlete-schema.ts';
import { ageOn } from '../units/age.ts';
import { type TapePlace, tapePercentile } from './tape-percentile.ts';

/** A tape measure that few persons of that stature have, metres. */
export interface UnusualTape {
  /** Which measure. */
  readonly measure: TapeMeasure;
  /** As it was read. */
  readonly valueM: number;
  /** Where it stands among others. */
  readonly place: TapePlace;
}

/**
 * Every tape measure of an athlete outside the survey's 1–99 % at that stature and mass: more likely a slip than a person. The age
 * is that on the day of measuring; without birth date or day an adult is assumed. 0.33 m of foot at 1.52 m of stature is one.
 */
export function unusualTapes(
  athlete: Pick<Athlete, 'statureM' | 'sex' | 'tape' | 'bornOn' | 'measuredOn'> &
    Partial<Pick<Athlete, 'massKg'>>,
): UnusualTape[] {
  const { statureM: stature, massKg: mass, sex, bornOn, measuredOn, tape } = athlete;
  const ageYears = bornOn && measuredOn ? ageOn(bornOn, measuredOn) : null;
  return TAPE_MEASURES.flatMap((measure) => {
    const valueM = tape[measure]?.valueM;
    if (valueM === undefined) return [];
    const place = tapePercentile(measure, valueM, { stature, mass, sex, ageYears });
    return place.usual ? [] : [{ measure, valueM, place }];
  });
}
