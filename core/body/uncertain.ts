/**
 * A quantity that is known up to independent sources of doubt: its mean, and how far one standard deviation of each source
 * moves it, same unit. Two quantities that share a source vary together. Covariances built this way are always positive
 * semidefinite.
 */
export interface Uncertain {
  /** Expected value, in the quantity's unit. */
  readonly mean: number;
  readonly sources: Readonly<Record<string, number>>;
}

/** A value without doubt. */
export function exactly(mean: number): Uncertain {
  return { mean, sources: {} };
}

/** A value with one source of doubt of its own; the same source name elsewhere means the same doubt. */
export function uncertain(mean: number, sd: number, source: string): Uncertain {
  return { mean, sources: { [source]: sd } };
}

/** Σ weight × quantity: `combine([[1, hip], [-1, knee]])` is the distance between two heights. */
export function combine(terms: readonly (readonly [weight: number, quantity: Uncertain])[]): Uncertain {
  const sources: Record<string, number> = {};
  let mean = 0;
  for (const [weight, quantity] of terms) {
    mean += weight * quantity.mean;
    for (const [source, reach] of Object.entries(quantity.sources)) {
      sources[source] = (sources[source] ?? 0) + weight * reach;
    }
  }
  return { mean, sources };
}

/** Covariance of two quantities: the sum over shared sources, in the product of their units. */
export function covarianceOf(a: Uncertain, b: Uncertain): number {
  let sum = 0;
  for (const [source, reach] of Object.entries(a.sources)) sum += reach * (b.sources[source] ?? 0);
  return sum;
}

/** Covariances of several quantities with one another: symmetric, rows and columns in their order. */
export function covarianceMatrix(quantities: readonly Uncertain[]): number[][] {
  const names = [...new Set(quantities.flatMap(({ sources }) => Object.keys(sources)))];
  const rows = quantities.map(({ sources }) => names.map((name) => sources[name] ?? 0));
  const matrix = rows.map(() => new Array<number>(rows.length).fill(0));
  rows.forEach((a, i) => {
    for (let j = 0; j <= i; j++) {
      const b = rows[j]!;
      let sum = 0;
      for (let k = 0; k < a.length; k++) sum += a[k]! * b[k]!;
      matrix[i]![j] = sum;
      matrix[j]![i] = sum;
    }
  });
  return matrix;
}

/** Variance of a quantity. */
export function varianceOf(quantity: Uncertain): number {
  return covarianceOf(quantity, quantity);
}
