import type { Finding } from '../evaluation/finding.ts';

/** A sentence, or how it is chosen: where one band edge can lie on either side of 0, the sign of the value decides the words. */
export type Words = string | ((finding: Pick<Finding, 'value' | 'severity'>) => string);

/** What is said of a quantity: its name, and for each side of its band a coach's and an athlete's sentence. */
export interface Wording {
  /** As a coach would say it, without a verb. */
  readonly name: string;
  readonly coach: Readonly<Record<'good' | 'low' | 'high', Words>>;
  readonly athlete: Readonly<Record<'good' | 'low' | 'high', Words>>;
}

/** A wording from its name, three coach sentences and three athlete sentences: good, low, high. */
export const say = (
  name: string,
  coach: readonly [good: Words, low: Words, high: Words],
  athlete: readonly [good: Words, low: Words, high: Words],
): Wording => ({
  name,
  coach: { good: coach[0], low: coach[1], high: coach[2] },
  athlete: { good: athlete[0], low: athlete[1], high: athlete[2] },
});

/** The sentence that holds for a finding. */
export function spoken(words: Words, finding: Pick<Finding, 'value' | 'severity'>): string {
  return typeof words === 'string' ? words : words(finding);
}

/** One sentence for values under 0 and another from 0 up: a band of the coach's own may have its edge on either side. */
export const bySign =
  (under: string, over: string): Words =>
  ({ value }) =>
    value < 0 ? under : over;

/** One sentence up to 0 (in contact, or through each other) and another where there is still room. */
export const byContact =
  (touching: string, close: string): Words =>
  ({ value }) =>
    value <= 0 ? touching : close;
