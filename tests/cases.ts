/**
 * Whether this is the long run (`npm run test:long`), which takes all the random cases that the quick one leaves out. This
 * is the one place that reads it; the test configuration sets it.
 */
export const LONG = process.env.KNEELWRIGHT_LONG === '1';

/** How many times its usual cases the long run takes: `KNEELWRIGHT_CASES`, 1 if it is not set; 4 for a weekend, 0.2 for a look. */
const TIMES = timesOf(process.env.KNEELWRIGHT_CASES);

/**
 * How many random cases a test takes: a few in the quick run, all of them in the long one. Both start from the test's own
 * seed, so the quick cases are the first of the long ones. A test file that calls this is run in both, and must import it
 * itself: the test configuration finds it by that. Where `long` is less than `quick` they are steps of a sweep.
 */
export function cases(quick: number, long: number): number {
  return LONG ? scaled({ quick, long }, TIMES) : quick;
}

/** The long run's whole number of cases, or the steps of its sweep, times as many; never fewer cases than the quick run takes. */
export function scaled({ quick, long }: { quick: number; long: number }, times: number): number {
  if (long < quick) return Math.min(quick, Math.max(1, Math.round(long / times)));
  return Math.max(quick, Math.round(long * times));
}

/** A number over 0 out of an environment variable, 1 without one. */
export function timesOf(text: string | undefined): number {
  const times = Number(text ?? 1);
  if (Number.isFinite(times) && times > 0) return times;
  throw new Error(`KNEELWRIGHT_CASES is “${text}”, and must be a number over 0`);
}
