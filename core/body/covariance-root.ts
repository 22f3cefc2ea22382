/** Pivots smaller than this share of the greatest variance count as zero: the matrix is only semidefinite there. */
const PIVOT_SHARE = 1e-12;

/**
 * Columns c₁…cₙ with Σ cᵢcᵢᵀ equal to a covariance matrix (Cholesky; a zero pivot gives a zero column), so that
 * moving the values by each column in turn spans the whole spread. Unit: the square root of the matrix's unit.
 */
export function squareRootOf(covariance: readonly (readonly number[])[]): number[][] {
  const n = covariance.length;
  const columns: number[][] = [];
  const rest = covariance.map((row) => [...row]);
  const floor = PIVOT_SHARE * Math.max(0, ...covariance.map((row, i) => row[i] ?? 0));
  for (let k = 0; k < n; k++) {
    const pivot = rest[k]![k]!;
    const column = new Array<number>(n).fill(0);
    if (pivot > floor) {
      const root = Math.sqrt(pivot);
      for (let i = k; i < n; i++) column[i] = rest[i]![k]! / root;
      for (let i = k; i < n; i++) {
        for (let j = k; j < n; j++) rest[i]![j]! -= column[i]! * column[j]!;
      }
    }
    columns.push(column);
  }
  return columns;
}
