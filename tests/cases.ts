/**
 * Whether this is the long run (`npm run test:long`), which takes all the random cases that the quick one leaves out. This
 * is the one place that reads it; the test configuration sets it.
 */
export const LONG = process.env.KNEELWRIGHT_LONG === '1';

/**
 * How many random cases a test takes: a few in the quick run, all of them in the long one. Both start from the test's own
 * seed, so the quick cases are the first of the long ones. A test file that calls this is run in both, and must import it
 * itself: the test configuration finds it by that.
 */
export function cases(quick: number, long: number): number {
  return LONG ? long : quick;
}
