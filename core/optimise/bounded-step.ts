/** A least-squares problem linearised at the present point: residuals r (m) and Jacobian J (m × n, row by row). */
export interface Linearised {
  /** m numbers. */
  readonly residuals: readonly number[];
  /** m rows of n slopes. */
  readonly jacobian: readonly (readonly number[])[];
}

/** Least pivot: smaller ones are raised to it. */
const PIVOT_FLOOR = 1e-14;

/** JᵀJ (its lower half, row by row) and Jᵀr of a linearised problem. */
interface Normal {
  readonly matrix: Float64Array;
  readonly slope: Float64Array;
}

/**
 * The damped Gauss–Newton step d that minimises |r + J d|² + Σ damping·d², kept within [low, high] for each unknown
 * by fixing those that would leave and solving the rest again (active set). Units are the unknowns' own.
 */
export function boundedStep(
  problem: Linearised,
  { low, high, damping }: { low: readonly number[]; high: readonly number[]; damping: number },
): number[] {
  const normal = normalOf(problem, low.length);
  const fixed = low.map((least, i) => (least === high[i] ? least : null));
  for (let pass = 0; pass <= low.length; pass++) {
    const step = solveFree(normal, fixed, damping);
    const leaves = step.map((d, i) => fixed[i] === null && (d < low[i]! || d > high[i]!));
    if (!leaves.includes(true)) return step;
    leaves.forEach((does, i) => {
      if (does) fixed[i] = step[i]! < low[i]! ? low[i]! : high[i]!;
    });
  }
  return fixed.map((f) => f ?? 0);
}

/** Row by row, skipping zeros: a crew's rows are mostly zero, because each seat depends on its own fittings. */
function normalOf({ residuals, jacobian }: Linearised, n: number): Normal {
  const matrix = new Float64Array(n * n);
  const slope = new Float64Array(n);
  jacobian.forEach((row, k) => {
    for (let i = 0; i < n; i++) {
      const a = row[i]!;
      if (a === 0) continue;
      slope[i]! += a * residuals[k]!;
      for (let j = 0; j <= i; j++) matrix[i * n + j]! += a * row[j]!;
    }
  });
  return { matrix, slope };
}

/** The step with some unknowns fixed: the normal equations of the others, with the fixed ones' part on the right side. */
function solveFree({ matrix, slope }: Normal, fixed: readonly (number | null)[], damping: number): number[] {
  const n = fixed.length;
  const product = (i: number, j: number) => matrix[i < j ? j * n + i : i * n + j]!;
  const step = fixed.map((f) => f ?? 0);
  const free = fixed.flatMap((f, i) => (f === null ? [i] : []));
  const held = step.flatMap((d, i) => (fixed[i] !== null && d !== 0 ? [i] : []));
  const lower = new Float64Array(free.length ** 2);
  const x = new Float64Array(free.length);
  free.forEach((i, a) => {
    for (let b = 0; b <= a; b++) lower[a * free.length + b] = product(i, free[b]!) + (a === b ? damping : 0);
    x[a] = -held.reduce((sum, j) => sum + product(i, j) * step[j]!, slope[i]!);
  });
  choleskySolve(lower, x);
  free.forEach((i, a) => {
    step[i] = x[a]!;
  });
  return step;
}

/**
 * Solves A x = b for a symmetric positive definite A, given by its lower half (destroyed); x holds b at first. A pivot that
 * vanishes is lifted to a floor.
 */
function choleskySolve(a: Float64Array, x: Float64Array): void {
  const n = x.length;
  for (let i = 0; i < n; i++) {
    for (let j = 0; j <= i; j++) {
      let sum = a[i * n + j]!;
      for (let k = 0; k < j; k++) sum -= a[i * n + k]! * a[j * n + k]!;
      a[i * n + j] = i === j ? Math.sqrt(Math.max(sum, PIVOT_FLOOR)) : sum / a[j * n + j]!;
    }
    for (let k = 0; k < i; k++) x[i]! -= a[i * n + k]! * x[k]!;
    x[i]! /= a[i * n + i]!;
  }
  for (let i = n - 1; i >= 0; i--) {
    for (let k = i + 1; k < n; k++) x[i]! -= a[k * n + i]! * x[k]!;
    x[i]! /= a[i * n + i]!;
  }
}
