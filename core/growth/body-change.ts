import { daysBetween } from './calendar-days.ts';

/** One dated value of an athlete's course of growth; metres or kilograms. */
export interface DatedValue {
  /** `YYYY-MM-DD`. */
  readonly takenOn: string;
  /** Metres for lengths, kilograms for mass. */
  readonly value: number;
}

/** Change between two dated values, in the values' own unit, and how far apart they are. */
export interface BodyChange {
  readonly from: DatedValue;
  readonly to: DatedValue;
  /** Later less earlier: positive is growth. */
  readonly by: number;
  /** Whole days between the two dates. */
  readonly days: number;
}

/** Two measurings nearer than this show the time of day more than growth, days (estimate). */
const LEAST_DAYS = 28;

/**
 * Change from the last earlier value that lies four weeks or more back to the newest one; null where there is none. Values
 * in any order; 1.52 m in March and 1.56 m in September is +0.04 m in 184 days.
 */
export function latestChange(values: readonly DatedValue[]): BodyChange | null {
  const sorted = values.toSorted((a, b) => a.takenOn.localeCompare(b.takenOn));
  const to = sorted.at(-1);
  if (!to) return null;
  const from = sorted.findLast(({ takenOn }) => daysBetween(takenOn, to.takenOn) >= LEAST_DAYS);
  return from ? { from, to, by: to.value - from.value, days: daysBetween(from.takenOn, to.takenOn) } : null;
}

/** Why a stature or a mass is not believable after an earlier one: more likely an error than a body. */
export type BodySlip = 'shrunk' | 'shot-up' | 'mass-jumped';

/** A stature may read this much less than before, metres: two hands, morning and evening (three of `STATURE_SD`). */
const STATURE_DROP_M = 0.018;
/** Fastest growth of a child in a spurt, metres a year, with room above the 9–12 cm of textbooks (from memory). */
const FASTEST_GROWTH_M = 0.15;
/** A mass may change by this share at once, and by as much again in every year (estimate). */
const MASS_SHARE = 0.15;

/**
 * Whether a stature and mass are believable after what was measured before; an empty list means yes. Metres, kilograms. Of
 * 1.60 m a year ago, 1.86 m has `shot-up` and 1.57 m has `shrunk`.
 */
export function bodySlips(
  before: { readonly takenOn: string; readonly statureM: number | null; readonly massKg: number | null },
  now: { readonly takenOn: string; readonly statureM: number | null; readonly massKg: number | null },
): BodySlip[] {
  const years = Math.max(0, daysBetween(before.takenOn, now.takenOn)) / 365.25;
  const slips: BodySlip[] = [];
  if (before.statureM !== null && now.statureM !== null) {
    const grown = now.statureM - before.statureM;
    if (grown < -STATURE_DROP_M) slips.push('shrunk');
    if (grown > STATURE_DROP_M + FASTEST_GROWTH_M * years) slips.push('shot-up');
  }
  if (before.massKg !== null && now.massKg !== null) {
    const share = Math.abs(now.massKg / before.massKg - 1);
    if (share > MASS_SHARE * (1 + years)) slips.push('mass-jumped');
  }
  return slips;
}
