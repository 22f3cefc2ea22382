import { expect } from 'vitest';

/** The same list, for a loop of checks that must go through something: without it a loop over nothing checks nothing. */
export function notEmpty<T>(list: readonly T[], what = 'what is checked one by one'): readonly T[] {
  expect(list.length, what).toBeGreaterThan(0);
  return list;
}
