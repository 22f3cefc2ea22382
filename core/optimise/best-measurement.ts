/**
 * Response of a tape reading to the body: its covariances with the body lengths and its own variance, including the doubt of
 * the reading. m².
 */
export interface MeasureModel<Name extends string = string> {
  readonly measure: Name;
  /** In the order of the lengths. */
  readonly withLengths: readonly number[];
  /** Of the reading, m². */
  readonly variance: number;
}

/** Effect of taking one measure on a value's spread. */
export interface Tightening<Name extends string = string> {
  readonly measure: Name;
  /** Standard deviation now and after, in the value's unit. */
  readonly sdNow: number;
  /** Never more than `sdNow`. */
  readonly sdAfter: number;
}

/**
 * How much each tape measure would narrow a value that depends on the body lengths by `slopes` (value's unit per metre) and
 * whose variance is `variance` in all: the best first. Bayes' rule for jointly normal quantities: Var(q | m) = Var q − Cov(q,
 * m)² / Var m.
 */
export function tightenings<Name extends string>(
  value: { slopes: readonly number[]; variance: number },
  models: readonly MeasureModel<Name>[],
): Tightening<Name>[] {
  const sdNow = Math.sqrt(Math.max(0, value.variance));
  return models
    .map(({ measure, withLengths, variance }) => {
      const shared = value.slopes.reduce((sum, slope, i) => sum + slope * (withLengths[i] ?? 0), 0);
      const gained = variance > 0 ? shared ** 2 / variance : 0;
      return { measure, sdNow, sdAfter: Math.sqrt(Math.max(0, value.variance - gained)) };
    })
    .sort((a, b) => a.sdAfter - b.sdAfter);
}
