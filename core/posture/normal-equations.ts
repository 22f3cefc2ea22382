/**
 * The equations of one step of a search, written over in each: JᵀJ (its lower half), Jᵀr, and room for the factor and for the
 * numbers of the terms that count. Square arrays hold row after row.
 */
export interface NormalEquations {
  readonly normal: Float64Array;
  readonly gradient: Float64Array;
  readonly factor: Float64Array;
  readonly live: Uint16Array;
}

/** Room for the equations of so many unknowns and terms. */
export function equationsFor(unknowns: number, terms: number): NormalEquations {
  return {
    normal: new Float64Array(unknowns * unknowns),
    gradient: new Float64Array(unknowns),
    factor: new Float64Array(unknowns * unknowns),
    live: new Uint16Array(terms),
  };
}

/** A pivot that vanishes is held up to this, and the least damping that every pivot has. */
const LEAST_PIVOT = 1e-9;

/**
 * Fills in JᵀJ and Jᵀr from the slopes J (unknown by unknown) and the residuals r; a held unknown gets a row of its own that
 * asks for no step. Most terms of a stance depend on one unknown or, on their free side, none: zero products, more than half of
 * all, are skipped.
 */
export function normalEquations(
  { normal, gradient, live }: NormalEquations,
  { slopes, residuals, free }: { slopes: Float64Array; residuals: Float64Array; free: readonly boolean[] },
): void {
  const n = gradient.length;
  const terms = residuals.length;
  for (let i = 0; i < n; i++) {
    if (!free[i]) {
      gradient[i] = 0;
      normal.fill(0, i * n, i * n + i);
      normal[i * n + i] = 1;
      continue;
    }
    const row = i * terms;
    let along = 0;
    let square = 0;
    let count = 0;
    for (let t = 0; t < terms; t++) {
      const slope = slopes[row + t]!;
      if (slope === 0) continue;
      along += slope * residuals[t]!;
      square += slope * slope;
      live[count++] = t;
    }
    gradient[i] = along;
    normal[i * n + i] = square;
    for (let j = 0; j < i; j++) {
      const other = j * terms;
      let product = 0;
      if (free[j]) {
        for (let k = 0; k < count; k++) {
          const t = live[k]!;
          product += slopes[row + t]! * slopes[other + t]!;
        }
      }
      normal[i * n + j] = product;
    }
  }
}

/** Solves (N + damping·diag N) d = −g by Cholesky; a pivot that vanishes is held up, so that an idle unknown takes no step. */
export function dampedStep(
  { normal, gradient, factor: l }: NormalEquations,
  damping: number,
  d: Float64Array,
): void {
  const n = gradient.length;
  for (let i = 0; i < n; i++) {
    const row = i * n;
    let right = -gradient[i]!;
    let pivot = normal[row + i]! * (1 + damping) + LEAST_PIVOT;
    for (let j = 0; j < i; j++) {
      const other = j * n;
      let sum = normal[row + j]!;
      for (let k = 0; k < j; k++) sum -= l[row + k]! * l[other + k]!;
      const entry = sum / l[other + j]!;
      l[row + j] = entry;
      pivot -= entry * entry;
      right -= entry * d[j]!;
    }
    const root = Math.sqrt(Math.max(pivot, LEAST_PIVOT));
    l[row + i] = root;
    d[i] = right / root;
  }
  for (let i = n - 1; i >= 0; i--) {
    let right = d[i]!;
    for (let k = i + 1; k < n; k++) right -= l[k * n + i]! * d[k]!;
    d[i] = right / l[i * n + i]!;
  }
}
