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
    let along = 0;
    let count = 0;
    for (let t = 0; t < terms; t++) {
      const slope = slopes[i * terms + t]!;
      if (slope === 0) continue;
      along += slope * residuals[t]!;
      live[count++] = t;
    }
    gradient[i] = free[i] ? along : 0;
    for (let j = 0; j <= i; j++) {
      let product = 0;
      for (let k = 0; k < count; k++) {
        const t = live[k]!;
        product += slopes[i * terms + t]! * slopes[j * terms + t]!;
      }
      normal[i * n + j] = free[i] && free[j] ? product : 0;
    }
    if (!free[i]) normal[i * n + i] = 1;
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
    let right = -gradient[i]!;
    for (let j = 0; j <= i; j++) {
      let sum = normal[i * n + j]!;
      if (i === j) sum = sum * (1 + damping) + LEAST_PIVOT;
      for (let k = 0; k < j; k++) sum -= l[i * n + k]! * l[j * n + k]!;
      l[i * n + j] = i === j ? Math.sqrt(Math.max(sum, LEAST_PIVOT)) : sum / l[j * n + j]!;
      if (j < i) right -= l[i * n + j]! * d[j]!;
    }
    d[i] = right / l[i * n + i]!;
  }
  for (let i = n - 1; i >= 0; i--) {
    let right = d[i]!;
    for (let k = i + 1; k < n; k++) right -= l[k * n + i]! * d[k]!;
    d[i] = right / l[i * n + i]!;
  }
}
