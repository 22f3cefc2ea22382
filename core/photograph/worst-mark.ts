import { covarianceAt, slopesAt } from './differences.ts';
import type { PlacedMark, ReadyProblem } from './posture-problem.ts';

/** A mark, and its squared distance in spreads. */
export interface FarMark {
  /** The mark that agrees least with the others. */
  readonly mark: PlacedMark;
  readonly square: number;
}

/** Keeps a mark that alone holds an unknown from dividing by nothing. */
const LEAST_FREE = 1e-6;

/**
 * Marks by how much each disagrees with all others, the worst first: rᵀ(I − H)⁻¹r with H its part of the hat matrix, which is by how much the cost
 * falls without it (to first order). χ² with two degrees of freedom for a good mark.
 */
export function worstMarks({ problem, residualsAt, terms }: ReadyProblem, x: Float64Array): FarMark[] {
  const covariance = covarianceAt(residualsAt, x, terms);
  const slopes = slopesAt(residualsAt, x, { terms });
  const residuals = new Float64Array(terms);
  residualsAt(x, residuals);
  const n = x.length;
  const hat = (a: number, b: number) => {
    let sum = 0;
    for (let i = 0; i < n; i++)
      for (let j = 0; j < n; j++)
        sum += slopes[i * terms + a]! * covariance[i * n + j]! * slopes[j * terms + b]!;
    return sum;
  };
  return problem.marks
    .map((mark, index) => {
      const [a, b] = [2 * index, 2 * index + 1];
      const [across, down] = [1 - hat(a, a), 1 - hat(b, b)];
      const both = -hat(a, b);
      const whole = Math.max(LEAST_FREE, across * down - both ** 2);
      const [r, s] = [residuals[a]!, residuals[b]!];
      return { mark, square: (down * r ** 2 - 2 * both * r * s + across * s ** 2) / whole };
    })
    .sort((a, b) => b.square - a.square);
}

/** Those of `among` by how far they lie from where a posture has them, the farthest first. */
export function farthestMarks(
  { problem, residualsAt, terms }: ReadyProblem,
  x: Float64Array,
  among: readonly PlacedMark[],
): FarMark[] {
  const residuals = new Float64Array(terms);
  residualsAt(x, residuals);
  return problem.marks
    .map((mark, i) => ({ mark, square: residuals[2 * i]! ** 2 + residuals[2 * i + 1]! ** 2 }))
    .filter(({ mark }) => among.includes(mark))
    .sort((a, b) => b.square - a.square);
}
