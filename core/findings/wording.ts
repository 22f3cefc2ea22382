/** What is said of a quantity: its name, and for each side of its band a coach's and an athlete's sentence. */
export interface Wording {
  /** As a coach would say it, without a verb. */
  readonly name: string;
  readonly coach: { readonly good: string; readonly low: string; readonly high: string };
  readonly athlete: { readonly good: string; readonly low: string; readonly high: string };
}

/** A wording from its name, three coach sentences and three athlete sentences: good, low, high. */
export const say = (
  name: string,
  coach: readonly [good: string, low: string, high: string],
  athlete: readonly [good: string, low: string, high: string],
): Wording => ({
  name,
  coach: { good: coach[0], low: coach[1], high: coach[2] },
  athlete: { good: athlete[0], low: athlete[1], high: athlete[2] },
});
