import { shareBelow } from '../body/normal.ts';
import { inverseOf } from './inverse.ts';
import { termDistances, termSlopes } from './objective.ts';
import { STANCE_UNKNOWNS } from './stance.ts';
import type { StanceProblem } from './stance-problem.ts';

const N = STANCE_UNKNOWNS.length;

/**
 * First-order response of a stance's unknowns when something else changes: the targets of its terms (which differ between
 * persons by the terms' tolerances), or the body. Unknowns in radians, order of `STANCE_UNKNOWNS`.
 */
export interface PostureResponse {
  /** How many terms there are. */
  readonly terms: number;
  /** Change of each unknown while one term's target moves by one tolerance: unknown by unknown. */
  readonly toTargets: Float64Array;
  /** Change of each unknown while a held one moves by a radian and the free ones follow: held by held. */
  readonly toHeld: Float64Array;
  /** Change of the unknowns while the terms' distances change by `change` (in tolerances) with the unknowns standing still. */
  follow(change: Float64Array): Float64Array;
}

/**
 * The linear answer of a stance at `q`. The stance minimises a sum of squares in units of the terms' tolerances, so its
 * posterior covariance is (JᵀJ)⁻¹ (Gauss–Newton, the Laplace approximation): `toTargets` times its transpose. A one-sided term
 * counts by the probability that it acts, √Φ(distance ÷ spread of the distance), so that nothing jumps where a limit is
 * touched. Unknowns that are not `free` are held and do not respond. With ordinary fittings the trunk's pitch has a standard
 * deviation of 5°.
 */
export function postureResponse(
  problem: StanceProblem,
  q: Float64Array,
  free: readonly boolean[],
): PostureResponse {
  const slopes = termSlopes(problem, q);
  const distances = termDistances(problem, q);
  const terms = distances.length;
  const gains = gainsOf(problem, { slopes, distances });
  for (let k = 0; k < N; k++) for (let t = 0; t < terms; t++) slopes[k * terms + t]! *= gains[t]!;
  const covariance = inverseOf(normalOf(slopes, terms, free), N);
  const toTargets = new Float64Array(N * terms);
  for (let k = 0; k < N; k++) {
    if (!free[k]) continue;
    for (let t = 0; t < terms; t++) {
      let sum = 0;
      for (let j = 0; j < N; j++) if (free[j]) sum += covariance[k * N + j]! * slopes[j * terms + t]!;
      toTargets[k * terms + t] = sum;
    }
  }
  const follow = (change: Float64Array) => {
    const moved = new Float64Array(N);
    for (let k = 0; k < N; k++)
      for (let t = 0; t < terms; t++) moved[k]! -= toTargets[k * terms + t]! * gains[t]! * change[t]!;
    return moved;
  };
  return { terms, toTargets, toHeld: heldAnswers({ slopes, toTargets, terms }, free), follow };
}

/** Row h: how every unknown changes per radian of the held unknown h; zero rows for free ones. */
function heldAnswers(
  { slopes, toTargets, terms }: { slopes: Float64Array; toTargets: Float64Array; terms: number },
  free: readonly boolean[],
): Float64Array {
  const out = new Float64Array(N * N);
  for (let h = 0; h < N; h++) {
    if (free[h]) continue;
    out[h * N + h] = 1;
    for (let k = 0; k < N; k++) {
      if (!free[k]) continue;
      for (let t = 0; t < terms; t++) out[h * N + k]! -= toTargets[k * terms + t]! * slopes[h * terms + t]!;
    }
  }
  return out;
}

/** Weight of each term: 1 for a departure; for a one-sided one, by the probability that it acts. */
function gainsOf(
  { terms }: StanceProblem,
  { slopes, distances }: { slopes: Float64Array; distances: Float64Array },
): Float64Array {
  const all = terms.length;
  const gains = Float64Array.from(terms, ({ sense }) => (sense === 'near' ? 1 : 0));
  const near = slopes.map((slope, i) => slope * gains[i % all]!);
  const covariance = inverseOf(
    normalOf(
      near,
      all,
      STANCE_UNKNOWNS.map(() => true),
    ),
    N,
  );
  terms.forEach(({ sense }, t) => {
    if (sense === 'near') return;
    let variance = 1;
    for (let i = 0; i < N; i++)
      for (let j = 0; j < N; j++)
        variance += slopes[i * all + t]! * covariance[i * N + j]! * slopes[j * all + t]!;
    gains[t] = Math.sqrt(shareBelow(distances[t]! / Math.sqrt(variance)));
  });
  return gains;
}

/** JᵀJ over the free unknowns; a held one gets a row of its own. */
function normalOf(slopes: Float64Array, terms: number, free: readonly boolean[]): Float64Array {
  const normal = new Float64Array(N * N);
  for (let i = 0; i < N; i++) {
    for (let j = 0; j < N; j++) {
      if (!free[i] || !free[j]) continue;
      for (let t = 0; t < terms; t++) normal[i * N + j]! += slopes[i * terms + t]! * slopes[j * terms + t]!;
    }
    if (!free[i]) normal[i * N + i] = 1;
  }
  return normal;
}
