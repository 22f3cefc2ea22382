import { inverseOf } from '../posture/inverse.ts';
import type { LeastSquares } from '../posture/minimise.ts';
import { normalEquations } from '../posture/normal-equations.ts';

/** Step of forward differences, in the unknown's own unit: all are of the order of one (radians, metres, spreads). */
const STEP = 1e-6;

/** Residuals of a least-squares problem, written at `q`. */
export type Residuals = (q: Float64Array, into: Float64Array) => void;

/** A least-squares problem whose slopes are taken by forward differences: a call for each unknown. */
export function byDifferences(residualsAt: Residuals, terms: number): LeastSquares {
  const at: { q: Float64Array } = { q: new Float64Array(0) };
  let slopes = new Float64Array(0);
  return {
    terms,
    residualsAt(q, into) {
      at.q = q;
      residualsAt(q, into);
    },
    equationsThere(into, residuals) {
      if (slopes.length === 0) slopes = new Float64Array(at.q.length * terms);
      differenceSlopes(residualsAt, at.q, { terms, into: slopes });
      normalEquations(into, { slopes, residuals });
    },
  };
}

/** Slopes of `terms` values at `q`: unknown by unknown, `terms` numbers each. */
export function differenceSlopes(
  valuesAt: Residuals,
  q: Float64Array,
  { terms, into = new Float64Array(q.length * terms) }: { terms: number; into?: Float64Array },
): Float64Array {
  const moved = Float64Array.from(q);
  const [here, ahead] = [new Float64Array(terms), new Float64Array(terms)];
  valuesAt(q, here);
  for (let k = 0; k < q.length; k++) {
    moved[k] = q[k]! + STEP;
    valuesAt(moved, ahead);
    moved[k] = q[k]!;
    for (let t = 0; t < terms; t++) into[k * terms + t] = (ahead[t]! - here[t]!) / STEP;
  }
  return into;
}

/**
 * Factor on a residual under Cauchy's loss ρ = ln(1 + s²) (Huber & Ronchetti 2009, Robust Statistics): its square times this
 * factor's square is the loss. `length` is the residual in units of where the loss begins to bend; 1 for a small one.
 */
export function cauchyFactor(length: number): number {
  const square = length ** 2;
  return square < 1e-8 ? 1 : Math.sqrt(Math.log1p(square) / square);
}

/** Covariance of the unknowns of a sum of squares in units of their spreads, (JᵀJ)⁻¹, row by row: Gauss–Newton. */
export function covarianceAt(residualsAt: Residuals, q: Float64Array, terms: number): Float64Array {
  const n = q.length;
  const slopes = differenceSlopes(residualsAt, q, { terms });
  const normal = new Float64Array(n * n);
  for (let i = 0; i < n; i++)
    for (let j = 0; j < n; j++)
      for (let t = 0; t < terms; t++) normal[i * n + j]! += slopes[i * terms + t]! * slopes[j * terms + t]!;
  return inverseOf(normal, n);
}
