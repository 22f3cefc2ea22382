import { ageOn } from '../units/age.ts';
import type { Athlete, Consent } from './athlete-schema.ts';

/** Below this age a guardian consents, years: the age of majority in most countries. Local rules may differ. */
export const MAJORITY_YEARS = 18;

/** Whether an athlete is a minor on a day (`YYYY-MM-DD`); null where the birth date is not known. */
export function isMinor({ bornOn }: Pick<Athlete, 'bornOn'>, day: string): boolean | null {
  return bornOn === undefined ? null : ageOn(bornOn, day) < MAJORITY_YEARS;
}

/** The consents among `wanted` that a minor lacks on a day. Empty for an adult, or where the age is not known. */
export function missingConsents(
  athlete: Pick<Athlete, 'bornOn' | 'consent'>,
  wanted: readonly Consent[],
  day: string,
): Consent[] {
  if (!isMinor(athlete, day)) return [];
  return wanted.filter((consent) => !athlete.consent?.[consent]);
}

/** The athlete as a fit stores a copy: without the consents, which name another person and stay in the athlete's record. */
export function forFit(athlete: Athlete): Athlete {
  const { consent: _left, ...rest } = athlete;
  return rest;
}
