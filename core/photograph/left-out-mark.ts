import { covarianceAt, differenceSlopes } from './differences.ts';
import type { PlacedMark, ProblemPoint } from './posture-problem.ts';

/** Two numbers of a mark: across and down. */
export type Both = readonly [number, number];

/** A mark, and what a posture would be without it, to first order (Cook and Weisberg 1982). In spreads. */
export interface LeftOutMark {
  /** The mark that is left out. */
  readonly mark: PlacedMark;
  /** How far it lies from where all others together have it. */
  readonly off: Both;
  /** Covariance of that distance: how well the other marks predict it. `across`, `down` and what is common to both. */
  readonly variance: { readonly across: number; readonly down: number; readonly both: number };
  /** rᵀ(I − H)⁻¹r: by how much the cost falls without it. χ² with two degrees of freedom for a good mark. */
  readonly square: number;
  /** How far each unknown is pulled by the mark, for each spread that it lies off the others. */
  readonly pull: readonly Both[];
}

/** Keeps a mark that alone holds an unknown from dividing by nothing. */
const LEAST_FREE = 1e-6;

/** Each mark that counts in a posture, left out in turn. H is the mark's own part of the hat matrix, r its residual. */
export function leftOutMarks({ ready, x }: ProblemPoint): LeftOutMark[] {
  const { problem, residualsAt, terms } = ready;
  const covariance = covarianceAt(residualsAt, x, terms);
  const slopes = differenceSlopes(residualsAt, x, { terms });
  const residuals = new Float64Array(terms);
  residualsAt(x, residuals);
  const n = x.length;
  const pullOf = (term: number) =>
    Array.from({ length: n }, (_, i) => {
      let sum = 0;
      for (let j = 0; j < n; j++) sum += covariance[i * n + j]! * slopes[j * terms + term]!;
      return sum;
    });
  const along = (term: number, pull: readonly number[]) =>
    pull.reduce((sum, by, i) => sum + slopes[i * terms + term]! * by, 0);
  return problem.marks.map((mark, index) => {
    const [a, b] = [2 * index, 2 * index + 1];
    const [pullA, pullB] = [pullOf(a), pullOf(b)];
    const [freeA, freeB, common] = [1 - along(a, pullA), 1 - along(b, pullB), -along(a, pullB)];
    const whole = Math.max(LEAST_FREE, freeA * freeB - common ** 2);
    const variance = { across: freeB / whole, down: freeA / whole, both: -common / whole };
    const [r, s] = [residuals[a]!, residuals[b]!];
    const off = [variance.across * r + variance.both * s, variance.both * r + variance.down * s] as const;
    const square = r * off[0] + s * off[1];
    return { mark, off, variance, square, pull: pullA.map((by, i) => [by, pullB[i]!] as const) };
  });
}
