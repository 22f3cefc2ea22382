/** A pivot below this is held up: the matrix is not positive definite there, and its inverse is left large but finite. */
const LEAST_PIVOT = 1e-12;

/**
 * The inverse of a symmetric positive definite matrix of `n` rows, row by row, by Gauss–Jordan without pivoting (none is needed
 * for such a matrix). Used for five unknowns and fewer.
 */
export function inverseOf(matrix: Float64Array, n: number): Float64Array {
  const a = Float64Array.from(matrix);
  const b = new Float64Array(n * n);
  for (let i = 0; i < n; i++) b[i * n + i] = 1;
  for (let i = 0; i < n; i++) {
    const pivot = Math.max(LEAST_PIVOT, a[i * n + i]!);
    for (let j = 0; j < n; j++) {
      a[i * n + j]! /= pivot;
      b[i * n + j]! /= pivot;
    }
    for (let k = 0; k < n; k++) {
      const by = k === i ? 0 : a[k * n + i]!;
      if (by === 0) continue;
      for (let j = 0; j < n; j++) {
        a[k * n + j]! -= by * a[i * n + j]!;
        b[k * n + j]! -= by * b[i * n + j]!;
      }
    }
  }
  return b;
}
