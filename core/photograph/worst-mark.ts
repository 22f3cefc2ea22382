import { leftOutMarks } from './left-out-mark.ts';
import type { PlacedMark, ReadyProblem } from './posture-problem.ts';

/** A mark, and its squared distance in spreads. */
export interface FarMark {
  /** The mark that agrees least with the others. */
  readonly mark: PlacedMark;
  /** No unit: compared with a chi-squared value. */
  readonly square: number;
}

/** Marks by how much each disagrees with all others, the worst first. */
export function worstMarks(ready: ReadyProblem, x: Float64Array): FarMark[] {
  return leftOutMarks({ ready, x }).sort((a, b) => b.square - a.square);
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
