import { squareRootOf } from '../body/covariance-root.ts';

/**
 * A quantity that is a kinked or strongly bent function of others that vary smoothly: the least of two, the part above zero, an
 * angle that stays constant once a leg is straight. Its slope at the stance alone does not give its spread.
 */
export interface Fold {
  /** Keys of the smooth values that it is made of: one to four. */
  readonly of: readonly string[];
  /** The folded value where the smooth ones are these. */
  value(at: readonly number[]): number;
  /**
   * From which value a probability is computed: the mean of the folded value, the smooth value itself, or the value as shown.
   */
  readonly judgedBy: 'mean' | 'smooth' | 'value';
}

/** Mean and standard deviation of a folded value. */
export interface Moments {
  /** Expected value. */
  readonly mean: number;
  /** Square root of the variance about that mean. */
  readonly sd: number;
}

/** A point of a quadrature and its weight. */
interface Node {
  /** In standard deviations from the mean, one for each smooth value. */
  readonly at: readonly number[];
  /** All weights of a rule sum to 1. */
  readonly weight: number;
}

/** Half of the points of Gauss–Hermite quadrature for the standard normal spread, and their weights (Golub & Welsch 1969). */
const NINE: readonly (readonly [at: number, weight: number])[] = [
  [0, 0.40634920634920635],
  [1.0232556637891326, 0.2440975028949387],
  [2.07684797867783, 0.04991640676521789],
  [3.2054290028564703, 0.002789141321231763],
  [4.512745863399783, 0.00002234584400774653],
];
/**
 * Gauss–Hermite rule of five points for a standard normal (Abramowitz and Stegun 25.4.46, in standard deviations); the mirrored
 * points follow in `nodesIn`.
 */
const FIVE: readonly (readonly [at: number, weight: number])[] = [
  [0, 0.5333333333333333],
  [1.3556261799742659, 0.2220759220056126],
  [2.8569700138728056, 0.011257411327720689],
];

/** The points of a quadrature in `dimensions` directions. */
function nodesIn(dimensions: number, half: typeof NINE): Node[] {
  const line = half.flatMap(([at, weight]) =>
    at === 0 ? [{ at, weight }] : [at, -at].map((z) => ({ at: z, weight })),
  );
  let nodes: Node[] = [{ at: [], weight: 1 }];
  for (let i = 0; i < dimensions; i++)
    nodes = nodes.flatMap((n) => line.map((z) => ({ at: [...n.at, z.at], weight: n.weight * z.weight })));
  return nodes;
}

/** Along one smooth value, over two, over three, over four. */
const NODES = [nodesIn(1, NINE), nodesIn(2, NINE), nodesIn(3, FIVE), nodesIn(4, FIVE)] as const;

/**
 * Mean and spread of a folded value whose one to four smooth values are jointly normal about `at` with `covariance`. Exact for
 * polynomials, within 4 % at a kink: for the greater of 0 and a standard normal number it gives 0.61 instead of 0.58.
 */
export function foldMoments(
  fold: Fold,
  at: readonly number[],
  covariance: readonly (readonly number[])[],
): Moments {
  const roots = squareRootOf(covariance);
  const nodes = NODES[at.length - 1]!;
  const values = new Float64Array(nodes.length);
  const there = [...at];
  let mean = 0;
  for (let n = 0; n < nodes.length; n++) {
    const node = nodes[n]!;
    for (let i = 0; i < at.length; i++) {
      there[i] = at[i]!;
      // Each root begins at its own value: what comes before is zero.
      for (let c = 0; c <= i; c++) there[i]! += roots[c]![i]! * node.at[c]!;
    }
    values[n] = fold.value(there);
    mean += node.weight * values[n]!;
  }
  let variance = 0;
  for (let n = 0; n < nodes.length; n++) variance += nodes[n]!.weight * (values[n]! - mean) ** 2;
  return { mean, sd: Math.sqrt(variance) };
}
