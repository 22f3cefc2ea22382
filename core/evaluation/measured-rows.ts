import type { Row } from './seat-rows.ts';

/** A value that was measured: its key, and the doubt of the reading in the value's unit. */
export interface Measured {
  /** As `keyOf` makes it. */
  readonly key: string;
  /** One standard deviation. */
  readonly sd: number;
}

/** Σ aᵢbᵢ: the covariance of two values, or with a row twice its variance. */
export function productOf(a: Row, b: Row): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += a[i]! * b[i]!;
  return sum;
}

/**
 * Rows after something was measured: Bayes' rule for jointly normal values, each reading in turn. With h the row of the measured
 * value and s its reading's doubt, the sources' covariance becomes (I + hhᵀ/s²)⁻¹; every row is multiplied by that matrix's
 * square root, which shortens what lies along h and leaves the rest, so that no variance grows. A value known to ± 4 and read to
 * ± 3 is then known to ± 2.4.
 */
export function conditionedRows(
  rows: ReadonlyMap<string, Row>,
  measured: readonly Measured[],
): ReadonlyMap<string, Row> {
  let now = rows;
  for (const { key, sd } of measured) {
    const h = now.get(key);
    const square = h ? productOf(h, h) : 0;
    if (!h || square === 0) continue;
    const shorter = (1 - sd / Math.sqrt(sd ** 2 + square)) / square;
    now = new Map([...now].map(([name, row]) => [name, without(row, h, shorter * productOf(row, h))]));
  }
  return now;
}

/** A row less a share of another. */
function without(row: Row, h: Row, share: number): Row {
  return share === 0 ? row : row.map((value, i) => value - share * h[i]!);
}
