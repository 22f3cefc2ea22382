import type { Athlete } from '../document/athlete-schema.ts';
import { ageOn } from '../units/age.ts';
import { daysBetween } from './calendar-days.ts';

/**
 * Mean growth in stature at each age in whole years, metres a year, from the ninth to the eighteenth birthday. From memory of
 * charts of height velocity (Tanner and Whitehouse 1976): good enough for a reminder only.
 */
const YEARLY_GROWTH_M: Readonly<Record<'female' | 'male', readonly number[]>> = {
  female: [0.056, 0.058, 0.064, 0.064, 0.045, 0.025, 0.012, 0.006, 0.002],
  male: [0.051, 0.05, 0.05, 0.054, 0.067, 0.07, 0.051, 0.028, 0.012],
};
/** Age of the first entry of each list, years. */
const FIRST_AGE = 9;

/** A reminder is due once a body of that age has grown this much on average, metres: a front knee opens by about 2°. */
const DUE_M = 0.015;

/** Mean length of a year of the Julian calendar, days. */
const DAYS_A_YEAR = 365.25;
const DAYS_A_MONTH = DAYS_A_YEAR / 12;

/** Why an athlete should be measured again. */
export interface GrowthDue {
  /** Whole months since the last measurement. */
  readonly months: number;
  /** Whole years. */
  readonly ageYears: number;
  /** Growth of the stature since then, metres. */
  readonly likelyM: number;
}

/**
 * Whether age and time since the last measuring suggest that an athlete has outgrown what was measured; `today` is
 * `YYYY-MM-DD`. Each year of age since then counts by its own growth. Null where not, or where the birth or the day of measuring is not known. A boy of 13 measured five months
 * ago has grown 2.8 cm on average: due.
 */
export function measureAgain(athlete: Athlete, today: string): GrowthDue | null {
  const { bornOn, measuredOn } = athlete;
  if (!bornOn || !measuredOn) return null;
  const ageYears = ageOn(bornOn, today);
  let likelyM = 0;
  for (let age = ageOn(bornOn, measuredOn); age <= ageYears; age++) {
    const began = daysBetween(measuredOn, birthday(bornOn, age));
    const ended = Math.min(
      daysBetween(measuredOn, today),
      daysBetween(measuredOn, birthday(bornOn, age + 1)),
    );
    likelyM += ((ended - Math.max(0, began)) / DAYS_A_YEAR) * yearlyGrowth(athlete, age);
  }
  if (!(likelyM >= DUE_M)) return null;
  return { months: Math.floor(daysBetween(measuredOn, today) / DAYS_A_MONTH), ageYears, likelyM };
}

/** The day on which an age in whole years is reached. */
const birthday = (bornOn: string, age: number) => `${Number(bornOn.slice(0, 4)) + age}${bornOn.slice(4)}`;

/** Metres a year at an age; the mean of both tables where the sex is not given; 0 from the eighteenth birthday. */
function yearlyGrowth({ sex }: Athlete, ageYears: number): number {
  const at = (table: readonly number[]) => table[Math.max(0, ageYears - FIRST_AGE)] ?? 0;
  const { female, male } = YEARLY_GROWTH_M;
  if (sex === 'unspecified') return (at(female) + at(male)) / 2;
  return at(sex === 'female' ? female : male);
}
