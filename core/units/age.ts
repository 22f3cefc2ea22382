/**
 * Whole years from one calendar date to another, both `YYYY-MM-DD`; a birthday counts from its own day on, and a 29
 * February from the 1 March of a common year. `ageOn('2008-07-02', '2026-07-01')` is 17. Negative before birth.
 */
export function ageOn(bornOn: string, day: string): number {
  const [bornYear, bornRest] = [Number(bornOn.slice(0, 4)), bornOn.slice(5)];
  const [year, rest] = [Number(day.slice(0, 4)), day.slice(5)];
  return year - bornYear - (rest < bornRest ? 1 : 0);
}
