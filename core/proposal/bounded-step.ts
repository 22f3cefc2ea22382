/** A least-squares problem linearised at the present point: residuals r (m) and Jacobian J (m × n, row by row). */
export interface Linearised {
  readonly residuals: readonly number[];
  readonly jacobian: readonly (readonly number[])[];
}

/** A step that changes no unknown by more than this share of its scale is no step. */
const PIVOT_FLOOR = 1e-14;

/**
 * The damped Gauss–Newton step d that minimises |r + J d|² + Σ damping·d², kept within [low, high] for each unknown
 * by fixing those that would leave and solving the rest again (active set). Units are the unknowns' own.
 */
export function boundedStep(
  { residuals, jacobian }: Linearised,
  limits: { low: readonly number[]; high: readonly number[]; damping: number },
): number[] {
  const n = limits.low.length;
  const fixed = new Array<number | null>(n).fill(null);
  for (let pass = 0; pass <= n; pass++) {
    const step = solveFree({ residuals, jacobian }, fixed, limits.damping);
    const out = step.findIndex((d, i) => fixed[i] === null && (d < limits.low[i]! || d > limits.high[i]!));
    if (out < 0) return step;
    for (let i = 0; i < n; i++) {
      if (fixed[i] !== null) continue;
      if (step[i]! < limits.low[i]!) fixed[i] = limits.low[i]!;
      else if (step[i]! > limits.high[i]!) fixed[i] = limits.high[i]!;
    }
  }
  return fixed.map((f) => f ?? 0);
}

function solveFree(
  { residuals, jacobian }: Linearised,
  fixed: readonly (number | null)[],
  damping: number,
): number[] {
  const free = fixed.flatMap((f, i) => (f === null ? [i] : []));
  const k = free.length;
  const normal = free.map((i, a) =>
    free.map((j, b) => columnProduct(jacobian, i, j) + (a === b ? damping : 0)),
  );
  const right = free.map((i) => {
    let sum = 0;
    for (let row = 0; row < residuals.length; row++) {
      let r = residuals[row]!;
      for (let j = 0; j < fixed.length; j++) r += jacobian[row]![j]! * (fixed[j] ?? 0);
      sum -= jacobian[row]![i]! * r;
    }
    return sum;
  });
  const solved = k === 0 ? [] : choleskySolve(normal, right);
  const step = fixed.map((f) => f ?? 0);
  free.forEach((i, a) => {
    step[i] = solved[a]!;
  });
  return step;
}

function columnProduct(jacobian: readonly (readonly number[])[], i: number, j: number): number {
  let sum = 0;
  for (const row of jacobian) sum += row[i]! * row[j]!;
  return sum;
}

/** Solves A x = b for a symmetric positive definite A (destroyed); vanishing pivots give a zero unknown. */
function choleskySolve(a: number[][], b: readonly number[]): number[] {
  const n = b.length;
  const x = [...b];
  for (let k = 0; k < n; k++) {
    for (let j = 0; j < k; j++) {
      for (let i = k; i < n; i++) a[i]![k]! -= a[i]![j]! * a[k]![j]!;
    }
    const root = Math.sqrt(Math.max(a[k]![k]!, PIVOT_FLOOR));
    for (let i = k; i < n; i++) a[i]![k]! /= root;
  }
  for (let i = 0; i < n; i++) {
    for (let j = 0; j < i; j++) x[i]! -= a[i]![j]! * x[j]!;
    x[i]! /= a[i]![i]!;
  }
  for (let i = n - 1; i >= 0; i--) {
    for (let j = i + 1; j < n; j++) x[i]! -= a[j]![i]! * x[j]!;
    x[i]! /= a[i]![i]!;
  }
  return x;
}
