/**
 * The equations of one step of a search, written over in each: JᵀJ (its lower half), Jᵀr, and room for the factor. Square arrays
 * hold row after row.
 */
export interface NormalEquations {
  readonly normal: Float64Array;
  readonly gradient: Float64Array;
  readonly factor: Float64Array;
}

/** Room for the equations of so many unknowns. */
export function equationsFor(unknowns: number): NormalEquations {
  return {
    normal: new Float64Array(unknowns * unknowns),
    gradient: new Float64Array(unknowns),
    factor: new Float64Array(unknowns * unknowns),
  };
}

/** A pivot that vanishes is held up to this, and the least damping that every pivot has. */
const LEAST_PIVOT = 1e-9;

/**
 * Fills in JᵀJ and Jᵀr from the slopes J (unknown by unknown) and the residuals r. A mark in one photograph does not move with
 * the camera of another: zero slopes, most of all, are passed over.
 */
export function normalEquations(
  { normal, gradient }: NormalEquations,
  { slopes, residuals }: { slopes: Float64Array; residuals: Float64Array },
): void {
  const n = gradient.length;
  const terms = residuals.length;
  const live = new Uint32Array(terms);
  for (let i = 0; i < n; i++) {
    const row = i * terms;
    let along = 0;
    let count = 0;
    for (let t = 0; t < terms; t++) {
      const slope = slopes[row + t]!;
      if (slope === 0) continue;
      along += slope * residuals[t]!;
      live[count++] = t;
    }
    gradient[i] = along;
    for (let j = 0; j <= i; j++) {
      const other = j * terms;
      let product = 0;
      for (let k = 0; k < count; k++) product += slopes[row + live[k]!]! * slopes[other + live[k]!]!;
      normal[i * n + j] = product;
    }
  }
}

/** Gives each unknown that is not `free` an equation of its own that asks for no step. */
export function holdUnknowns({ normal, gradient }: NormalEquations, free: readonly boolean[]): void {
  const n = gradient.length;
  for (let i = 0; i < n; i++) {
    if (free[i]) continue;
    gradient[i] = 0;
    for (let j = 0; j < n; j++) {
      normal[i * n + j] = 0;
      normal[j * n + i] = 0;
    }
    normal[i * n + i] = 1;
  }
}

/**
 * Solves (N + damping·diag N) d = −g. N is factored into L·D·Lᵀ, without a square root (Golub & Van Loan 2013, Matrix
 * computations, 4.1): L stands below the diagonal of `factor`, 1/D on it. A pivot that vanishes is held up, so that an idle
 * unknown takes no step.
 */
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
      // Until its pivot is known, an entry of this row is L·D.
      for (let k = 0; k < j; k++) sum -= l[row + k]! * l[other + k]!;
      l[row + j] = sum;
    }
    for (let j = 0; j < i; j++) {
      const scaled = l[row + j]!;
      const entry = scaled * l[j * n + j]!;
      l[row + j] = entry;
      pivot -= scaled * entry;
      right -= entry * d[j]!;
    }
    l[row + i] = 1 / Math.max(pivot, LEAST_PIVOT);
    d[i] = right;
  }
  for (let i = n - 1; i >= 0; i--) {
    let right = d[i]! * l[i * n + i]!;
    for (let k = i + 1; k < n; k++) right -= l[k * n + i]! * d[k]!;
    d[i] = right;
  }
}
