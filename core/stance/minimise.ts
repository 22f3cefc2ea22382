import type { Jet } from './jet.ts';

/** A step smaller than this, radians, ends the search: a hundred-thousandth of a degree. */
export const STEP_TOLERANCE = 2e-7;

/** More steps than this are never needed by a plausible stance (6 to 20 are usual); an impossible one stops here, still finite. */
const MOST_ITERATIONS = 250;

/** Unknowns are kept within this of upright, radians: past it a leaning has no meaning. */
const FARTHEST = 1.4;

const FIRST_DAMPING = 1e-3;
const LEAST_DAMPING = 1e-9;
const MOST_DAMPING = 1e9;

/** Where a search ended. */
export interface Minimum {
  readonly q: readonly number[];
  readonly residuals: readonly Jet[];
  readonly cost: number;
  readonly iterations: number;
  readonly converged: boolean;
}

/**
 * Levenberg–Marquardt (Marquardt 1963) on Σ rᵢ² over the free unknowns, from `start`; unknowns not in `free` stay where
 * they are. Deterministic; every step lowers the cost or is not taken. Radians.
 */
export function minimise(
  residualsAt: (q: readonly number[]) => Jet[],
  { start, free }: { start: readonly number[]; free: readonly number[] },
): Minimum {
  let q = [...start];
  let residuals = residualsAt(q);
  let cost = costOf(residuals);
  let damping = FIRST_DAMPING;
  for (let iterations = 1; iterations <= MOST_ITERATIONS; iterations++) {
    const { normal, gradient } = normalEquations(residuals, free);
    let taken = 0;
    while (damping < MOST_DAMPING) {
      const step = dampedStep(normal, gradient, damping);
      const next = moved(q, free, step);
      const there = residualsAt(next);
      const nextCost = costOf(there);
      if (nextCost <= cost) {
        taken = Math.max(...next.map((v, i) => Math.abs(v - q[i]!)));
        q = next;
        residuals = there;
        cost = nextCost;
        damping = Math.max(LEAST_DAMPING, damping / 10);
        break;
      }
      damping *= 10;
    }
    if (taken < STEP_TOLERANCE) return { q, residuals, cost, iterations, converged: true };
  }
  return { q, residuals, cost, iterations: MOST_ITERATIONS, converged: false };
}

function costOf(residuals: readonly Jet[]): number {
  let sum = 0;
  for (const { v } of residuals) sum += v * v;
  return sum;
}

/** JᵀJ and Jᵀr over the free unknowns. */
function normalEquations(residuals: readonly Jet[], free: readonly number[]) {
  const n = free.length;
  const normal = Array.from({ length: n }, () => new Array<number>(n).fill(0));
  const gradient = new Array<number>(n).fill(0);
  for (const r of residuals) {
    const row = [r.a, r.b, r.c, r.d, r.e];
    for (let i = 0; i < n; i++) {
      const slope = row[free[i]!]!;
      gradient[i]! += slope * r.v;
      for (let j = 0; j <= i; j++) normal[i]![j]! += slope * row[free[j]!]!;
    }
  }
  return { normal, gradient };
}

/** Solves (N + damping·diag N) d = −g by Cholesky. */
function dampedStep(
  normal: readonly (readonly number[])[],
  gradient: readonly number[],
  damping: number,
): number[] {
  const n = gradient.length;
  const l = normal.map((row) => [...row]);
  const d = gradient.map((g) => -g);
  for (let i = 0; i < n; i++) {
    l[i]![i]! = l[i]![i]! * (1 + damping) + LEAST_DAMPING;
    for (let j = 0; j <= i; j++) {
      for (let k = 0; k < j; k++) l[i]![j]! -= l[i]![k]! * l[j]![k]!;
      if (j < i) l[i]![j]! /= l[j]![j]!;
      else l[i]![i]! = Math.sqrt(Math.max(l[i]![i]!, LEAST_DAMPING));
    }
    for (let k = 0; k < i; k++) d[i]! -= l[i]![k]! * d[k]!;
    d[i]! /= l[i]![i]!;
  }
  for (let i = n - 1; i >= 0; i--) {
    for (let k = i + 1; k < n; k++) d[i]! -= l[k]![i]! * d[k]!;
    d[i]! /= l[i]![i]!;
  }
  return d;
}

function moved(q: readonly number[], free: readonly number[], step: readonly number[]): number[] {
  const next = [...q];
  free.forEach((index, i) => {
    next[index] = Math.min(FARTHEST, Math.max(-FARTHEST, next[index]! + step[i]!));
  });
  return next;
}
