import type { Boat } from '../document/boat-schema.ts';

/** Limits of a racing class as known on a date. */
export interface ClassLimits {
  /** Length over all, metres. */
  readonly greatestLengthM: number;
  /** Of the empty boat, kilograms. */
  readonly leastMassKg: number;
}

/** The day at which these limits were last known to hold. The message `band-source.class-rule` names their source. */
export const CLASS_LIMITS_DATE = '2025-01-01';
/** Dated class data. A boat of class `none` has no limits. */
export const CLASS_LIMITS: Readonly<Record<Exclude<Boat['boatClass'], 'none'>, ClassLimits>> = {
  C1: { greatestLengthM: 5.2, leastMassKg: 14 },
  C2: { greatestLengthM: 6.5, leastMassKg: 20 },
  C4: { greatestLengthM: 9, leastMassKg: 30 },
};
