/**
 * Whole days from one calendar date to another, both `YYYY-MM-DD` of the Gregorian calendar; negative backwards.
 * `daysBetween('2024-02-01', '2024-03-01')` is 29.
 */
export function daysBetween(from: string, to: string): number {
  return dayNumber(to) - dayNumber(from);
}

/** A running number of days: years are begun in March, so that the leap day is the last of its year. */
function dayNumber(date: string): number {
  const [year = 0, month = 0, day = 0] = date.split('-').map(Number);
  const marchYear = month > 2 ? year : year - 1;
  const sinceMarch = (month + 9) % 12;
  const leapDays = Math.floor(marchYear / 4) - Math.floor(marchYear / 100) + Math.floor(marchYear / 400);
  return 365 * marchYear + leapDays + Math.floor((153 * sinceMarch + 2) / 5) + day;
}
