/** Values with a joint normal spread: means and covariance in the same order. */
export interface Gaussian {
  /** Expected values, each in its own unit. */
  readonly mean: readonly number[];
  /** Square and symmetric, row by row; units are products of the values' units. */
  readonly covariance: readonly (readonly number[])[];
}

/** A reading of one of the values: which, what was read, and the standard deviation of the reading. */
export interface Reading {
  /** Its place among the values. */
  readonly index: number;
  /** What was read, in that value's unit. */
  readonly value: number;
  /** Standard deviation of the reading itself; 0 for a perfect one. */
  readonly sd: number;
}

/**
 * Bayes' rule for one reading of one value (the scalar step of a Kalman filter): every value moves by its covariance with the
 * read one, and no variance grows. If reading and value are both exact, nothing changes.
 */
export function conditioned(prior: Gaussian, reading: Reading): Gaussian {
  const with_ = prior.covariance.map((row) => row[reading.index] ?? 0);
  const variance = (with_[reading.index] ?? 0) + reading.sd ** 2;
  if (!(variance > 0)) return prior;
  const surprise = reading.value - (prior.mean[reading.index] ?? 0);
  return {
    mean: prior.mean.map((m, i) => m + ((with_[i] ?? 0) * surprise) / variance),
    covariance: prior.covariance.map((row, i) =>
      row.map((c, j) => c - ((with_[i] ?? 0) * (with_[j] ?? 0)) / variance),
    ),
  };
}

/**
 * Mean and covariance of an even mixture of normals: the mean of their covariances, plus the spread of their means.
 * `mixed([a])` is a.
 */
export function mixed(parts: readonly Gaussian[]): Gaussian {
  const n = parts.length;
  const size = parts[0]?.mean.length ?? 0;
  const average = (of: (part: Gaussian) => number) => parts.reduce((sum, p) => sum + of(p), 0) / n;
  const mean = Array.from({ length: size }, (_, i) => average((p) => p.mean[i]!));
  const covariance = mean.map((mi, i) =>
    mean.map((mj, j) => average((p) => p.covariance[i]![j]! + (p.mean[i]! - mi) * (p.mean[j]! - mj))),
  );
  return { mean, covariance };
}
