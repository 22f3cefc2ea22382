import { boundedStep } from './bounded-step.ts';

/**
 * A one-sided least-squares problem linearised at the present point: residual i counts only while it is positive,
 * max(0, residuals[i] + Σ jacobian[i][j]·d[j]). Beside it every unknown costs (weight·(at[j] + d[j]))².
 */
export interface OneSided {
  readonly residuals: readonly number[];
  readonly jacobian: readonly (readonly number[])[];
  readonly at: readonly number[];
  readonly weight: number;
}

/** Rounds of the inner search; 4 to 10 are usual. */
const MOST_ROUNDS = 40;

/** A round that lowers the cost by less than this share is the last one. */
const ENOUGH_SHARE = 1e-6;

/** Keeps a coordinate that changes nothing from dividing by nothing. */
const DAMPING = 1e-9;

/** An unknown this near an end of its interval stands at it, in scales. */
const AT_END = 1e-9;

/**
 * The step that minimises a one-sided problem within [low, high] of each unknown, which must contain 0: Newton's method
 * over the rows that count and the unknowns that are not held at an end, projected into the box (Bertsekas 1982). The
 * problem is convex, so there is one least cost. The step is never worse than no step.
 */
export function oneSidedStep(
  problem: OneSided,
  limits: { low: readonly number[]; high: readonly number[] },
): number[] {
  let step = problem.at.map(() => 0);
  let cost = modelCost(problem, step);
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const next = projected(problem, { step, cost }, limits);
    if (!next) break;
    const gain = (cost - next.cost) / cost;
    ({ step, cost } = next);
    if (gain < ENOUGH_SHARE) break;
  }
  return step;
}

/** One round: a Newton step of the unknowns that may move, shortened until it lowers the cost; null where none does. */
function projected(
  problem: OneSided,
  { step, cost }: { step: readonly number[]; cost: number },
  { low, high }: { low: readonly number[]; high: readonly number[] },
): { step: number[]; cost: number } | null {
  const rows = stacked(problem, step);
  const held = step.map((d, j) => {
    const slope = rows.residuals.reduce((sum, r, row) => sum + r * rows.jacobian[row]![j]!, 0);
    return (slope > 0 && d <= low[j]! + AT_END) || (slope < 0 && d >= high[j]! - AT_END);
  });
  const newton = boundedStep(rows, {
    low: held.map((h) => (h ? 0 : Number.NEGATIVE_INFINITY)),
    high: held.map((h) => (h ? 0 : Number.POSITIVE_INFINITY)),
    damping: DAMPING,
  });
  for (let share = 1; share > 1e-3; share /= 2) {
    const next = step.map((d, j) => Math.min(high[j]!, Math.max(low[j]!, d + share * newton[j]!)));
    const there = modelCost(problem, next);
    if (there < cost) return { step: next, cost: there };
  }
  return null;
}

function rowAfter({ residuals, jacobian }: OneSided, row: number, step: readonly number[]): number {
  const slopes = jacobian[row]!;
  let sum = residuals[row]!;
  for (let j = 0; j < step.length; j++) sum += slopes[j]! * step[j]!;
  return sum;
}

/** The cost of the linearised problem after a step: what each round must lower. */
function modelCost(problem: OneSided, step: readonly number[]): number {
  let cost = 0;
  for (let row = 0; row < problem.residuals.length; row++) {
    cost += Math.max(0, rowAfter(problem, row, step)) ** 2;
  }
  for (let j = 0; j < step.length; j++) cost += (problem.weight * (problem.at[j]! + step[j]!)) ** 2;
  return cost;
}

/** The rows that count after a step, and one row for the cost of each unknown, as plain least squares about that step. */
function stacked(problem: OneSided, step: readonly number[]) {
  const { residuals, jacobian, at, weight } = problem;
  const values = residuals.map((_, row) => rowAfter(problem, row, step));
  const counting = values.flatMap((value, row) => (value > 0 ? [row] : []));
  const costs = at.map((_, i) => at.map((__, j) => (i === j ? weight : 0)));
  return {
    residuals: [...counting.map((row) => values[row]!), ...at.map((x, j) => weight * (x + step[j]!))],
    jacobian: [...counting.map((row) => jacobian[row]!), ...costs],
  };
}
