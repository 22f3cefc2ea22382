import { BODY_LENGTHS, type BodyEstimate } from '../body/body.ts';

/** How a tape measure reads the body: its weights on the lengths (order of `BODY_LENGTHS`) and its own variance, m². */
export interface MeasureModel<Name extends string = string> {
  readonly measure: Name;
  readonly weights: readonly number[];
  readonly variance: number;
}

/** What taking one measure would do for a value's spread. */
export interface Tightening<Name extends string = string> {
  readonly measure: Name;
  /** Standard deviation now and after, in the value's unit. */
  readonly sdNow: number;
  readonly sdAfter: number;
}

/**
 * How much each tape measure would tighten a value that answers the body lengths with `slopes` (value's unit per metre,
 * order of `BODY_LENGTHS`), when `otherVariance` of its spread comes from elsewhere: the best first. Bayes' rule for
 * jointly normal quantities: Var(q | m) = Var q − Cov(q, m)² / Var m.
 */
export function tightenings<Name extends string>(
  body: BodyEstimate,
  value: { slopes: readonly number[]; otherVariance: number },
  models: readonly MeasureModel<Name>[],
): Tightening<Name>[] {
  const spread = times(body.covariance, value.slopes);
  const bodyVariance = dotted(value.slopes, spread);
  const sdNow = Math.sqrt(bodyVariance + value.otherVariance);
  return models
    .map(({ measure, weights, variance }) => {
      const shared = dotted(weights, spread);
      const own = dotted(weights, times(body.covariance, weights)) + variance;
      const left = Math.max(0, bodyVariance - (own > 0 ? shared ** 2 / own : 0));
      return { measure, sdNow, sdAfter: Math.sqrt(left + value.otherVariance) };
    })
    .sort((a, b) => a.sdAfter - b.sdAfter);
}

function times(matrix: readonly (readonly number[])[], vector: readonly number[]): number[] {
  return matrix.map((row) => dotted(row, vector));
}

function dotted(a: readonly number[], b: readonly number[]): number {
  let sum = 0;
  for (let i = 0; i < BODY_LENGTHS.length; i++) sum += (a[i] ?? 0) * (b[i] ?? 0);
  return sum;
}
