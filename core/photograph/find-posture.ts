import { type Minimum, minimise } from '../posture/minimise.ts';
import { NEUTRAL } from '../posture/neutral-posture.ts';
import { STANCE_UNKNOWNS } from '../posture/stance.ts';
import { byDifferences, covarianceAt, differenceSlopes } from './differences.ts';
import { addedVariance, type DoubtedMark } from './hidden-bad-marks.ts';
import {
  type PlacedMark,
  type PostureProblem,
  type ProblemPoint,
  type ReadyProblem,
  readyProblem,
} from './posture-problem.ts';
import { pitchTaken } from './seen-moment.ts';
import { farthestMarks, worstMarks } from './worst-mark.ts';

/** A mark this many spreads off begins to pull less, while the search does not yet know which are bad. */
const ROBUST_AT = 3;
/** Squared studentised distance past which a mark is bad: one in a thousand of good ones. */
export const BAD_MARK = 13.8;
/** One mark in so many may be bad. */
const BAD_SHARE = 4;
/** Unknowns are kept within this: radians, and standard deviations. */
const FARTHEST = 12;
/** A step under this ends the search, radians and standard deviations: a hundredth of a degree is far below any doubt. */
const LEAST_STEP = 1e-4;

/** A place that was found, and what it costs. */
interface Found extends ProblemPoint {
  /** No unit: the less, the better the place. */
  readonly cost: number;
}

/**
 * The posture that meets a problem best without the marks that disagree with the rest. `left` are marks left out to begin with; one
 * of them that agrees with the others after all is taken back.
 */
export function findPosture(problem: PostureProblem, left: readonly PlacedMark[] = []): ProblemPoint {
  const robust = readyProblem(problem, ROBUST_AT);
  const soft = leastFrom(robust, startOf(robust)).q;
  const most = Math.floor(problem.marks.length / BAD_SHARE);
  let found = foundWithout(problem, left, soft);
  for (let out = left.length; out < most; out++) {
    const next = withoutOneMore(found, { problem, soft });
    if (!next) break;
    found = next;
  }
  return withThoseThatAgree(found, problem);
}

/**
 * The best posture with one mark less; null where no mark disagrees. Several suspects are tried, for one bad mark may bend the
 * figure so far that another seems worse.
 */
function withoutOneMore(
  found: Found,
  { problem, soft }: { problem: PostureProblem; soft: Float64Array },
): Found | null {
  const { marks } = found.ready.problem;
  const worst = worstMarks(found.ready, found.x);
  if (!worst[0] || worst[0].square < BAD_MARK) return null;
  const far = farthestMarks(readyProblem(problem, null), soft, marks);
  const suspects = new Set([...worst.slice(0, 2), ...far.slice(0, 2)].map(({ mark }) => mark));
  const gone = problem.marks.filter((mark) => !marks.includes(mark));
  return [...suspects]
    .map((suspect) => foundWithout(problem, [...gone, suspect], soft))
    .reduce((a, b) => (b.cost < a.cost ? b : a));
}

/** Takes back each mark left out that costs less than a bad one. */
function withThoseThatAgree(found: Found, problem: PostureProblem): Found {
  let best = found;
  for (const mark of problem.marks.filter((m) => !found.ready.problem.marks.includes(m))) {
    const out = problem.marks.filter((m) => m !== mark && !best.ready.problem.marks.includes(m));
    const more = foundWithout(problem, out, best.x);
    if (more.cost - best.cost < BAD_MARK) best = more;
  }
  return best;
}

/** The best posture with some marks left out. */
function foundWithout(problem: PostureProblem, left: readonly PlacedMark[], start: Float64Array): Found {
  const ready = readyProblem(
    { ...problem, marks: problem.marks.filter((mark) => !left.includes(mark)) },
    null,
  );
  const { q, cost } = leastFrom(ready, start);
  return { ready, x: q, cost };
}

/** Where the search begins: everybody's posture, the body as estimated, the cameras as solved. */
function startOf({ problem, unknowns }: ReadyProblem): Float64Array {
  const start = new Float64Array(unknowns);
  STANCE_UNKNOWNS.forEach((name, i) => {
    start[i] = NEUTRAL[name].at;
  });
  const pitch = pitchTaken(problem.seat, problem.moment);
  if (pitch) start[STANCE_UNKNOWNS.indexOf('trunkPitch')] = pitch.at;
  return start;
}

/** The least cost from a start, with derivatives by differences. */
function leastFrom({ residualsAt, terms }: ReadyProblem, start: Float64Array): Minimum {
  return minimise(byDifferences(residualsAt, terms), {
    start: Array.from(start),
    farthest: FARTHEST,
    leastStep: LEAST_STEP,
  });
}

/** Standard deviations of `count` values that follow from the unknowns, to first order; `doubted` are marks that may be bad. */
export function spreadsOf(
  { ready, x, doubted = [] }: ProblemPoint & { readonly doubted?: readonly DoubtedMark[] },
  count: number,
  valuesAt: (x: Float64Array, into: Float64Array) => void,
): number[] {
  const covariance = covarianceAt(ready.residualsAt, x, ready.terms);
  const slopes = differenceSlopes(valuesAt, x, { terms: count });
  const n = x.length;
  return Array.from({ length: count }, (_, v) => {
    let variance = addedVariance(doubted, (i) => slopes[i * count + v]!);
    for (let i = 0; i < n; i++)
      for (let j = 0; j < n; j++)
        variance += slopes[i * count + v]! * covariance[i * n + j]! * slopes[j * count + v]!;
    return Math.sqrt(Math.max(0, variance));
  });
}
