import { TAPE_MEASURES, type TapeMeasure } from '../document/athlete-schema.ts';
import { recordOf } from '../units/entries.ts';
import { personSpread, type TapeValue } from './body-input.ts';
import { bodyPrior, tapeIndex } from './body-prior.ts';
import { conditioned, type Gaussian } from './gaussian.ts';
import type { StatedSex } from './sex.ts';
import { TAPE_SD } from './tape-sd.ts';

/** A tape already taken: as an athlete's document has it, or a bare number; metres. */
export type TapeTaken = number | { readonly valueM: number; readonly sdM?: number | undefined } | TapeValue;

/** A person whose tape measures are predicted: metres, kilograms, whole years. */
export interface PredictedPerson {
  /** Standing height, metres. */
  readonly stature: number;
  readonly mass?: number | null | undefined;
  readonly sex?: StatedSex | undefined;
  readonly tape?: Readonly<Partial<Record<TapeMeasure, TapeTaken | undefined>>> | undefined;
  /** Whole years. Null or absent: not known, an adult is assumed. */
  readonly ageYears?: number | null | undefined;
  /** Standard deviations of stature (metres) and mass (kilograms). Absent: both are exact. */
  readonly statureSd?: number | undefined;
  readonly massSd?: number | undefined;
}

/** What a perfect tape would read, metres: expectation and standard deviation. */
export interface PredictedTape {
  /** Expected reading, metres. */
  readonly value: number;
  /** One standard deviation between persons of that stature and mass, metres. */
  readonly sd: number;
}

/**
 * What a perfect tape would read for every tape measure of a person, metres: the survey's regressions on stature (metres) and
 * mass (kilograms; null or absent where not known), narrowed by the tapes already taken (Bayes' rule on the joint normal
 * spread). `value ± 1.96 sd` holds 95 % of persons. A tape without a standard deviation has the usual one of a careful reading,
 * `TAPE_SD`. A measure that was taken is predicted too, and is then known better than by the one reading. With the sex
 * unspecified or absent: the mean of both tables, their difference in the spread. `tapeModels` says which survey column each
 * measure is. Source: ANSUR II, see `survey-regressions.ts`; for a junior see `juniorShift`. `predictTapes({ stature: 1.8,
 * mass: 80, sex: 'male' }).kneeHeightSitting` is 0.568 ± 0.012 m.
 */
export function predictTapes(person: PredictedPerson): Record<TapeMeasure, PredictedTape> {
  const { stature, mass = null, sex = 'unspecified', ageYears = null, statureSd = 0, massSd = 0 } = person;
  const known = { stature, statureSd, mass, massSd, sex, ageYears, spread: personSpread(person) };
  return tapesOf(withTapes(bodyPrior(known), person.tape ?? {}));
}

/** A body's joint spread, given the tapes already taken. */
export function withTapes(prior: Gaussian, tape: NonNullable<PredictedPerson['tape']>): Gaussian {
  const readings = TAPE_MEASURES.flatMap((measure) => {
    const taken = tape[measure];
    return taken === undefined ? [] : [{ index: tapeIndex(measure), ...readingOf(measure, taken) }];
  });
  return readings.reduce(conditioned, prior);
}

/** What a joint spread says a perfect tape would read, metres. */
export function tapesOf({ mean, covariance }: Gaussian): Record<TapeMeasure, PredictedTape> {
  return recordOf(TAPE_MEASURES, (measure) => {
    const i = tapeIndex(measure);
    return { value: mean[i]!, sd: Math.sqrt(Math.max(0, covariance[i]![i]!)) };
  });
}

/** A tape reading with its doubt, metres, from any of the three forms. */
function readingOf(measure: TapeMeasure, taken: TapeTaken): { value: number; sd: number } {
  if (typeof taken === 'number') return { value: taken, sd: TAPE_SD[measure] };
  if ('valueM' in taken) return { value: taken.valueM, sd: taken.sdM ?? TAPE_SD[measure] };
  return { value: taken.value, sd: taken.sd ?? TAPE_SD[measure] };
}
