import { levenbergMarquardt } from 'ml-levenberg-marquardt';
import { bodyOfAthlete } from '../../core/body/body-of-athlete.ts';
import { minimise } from '../../core/posture/minimise.ts';
import { NEUTRAL } from '../../core/posture/neutral-posture.ts';
import { stanceObjective, termSlopes } from '../../core/posture/objective.ts';
import { solveStance } from '../../core/posture/solve-stance.ts';
import { STANCE_UNKNOWNS } from '../../core/posture/stance.ts';
import { type StanceProblem, stanceProblem } from '../../core/posture/stance-problem.ts';
import { exampleSeat } from '../core/example/example-fit.ts';
import { bytesPerCall, ratioOf, sideBySide } from './measure.ts';
import { type Fact, type Found, rowOf } from './row.ts';

const STANCE = 'stance, one phase, with its points, masses and forces';
const MINIMUM = 'of it: the least of the objective';
const BY_LIBRARY = 'the same least by ml-levenberg-marquardt, as near';
const BY_LIBRARY_WITH_SLOPES = 'the same, handed our slopes';

/** As near is no farther from the least in any angle than this, degrees: about where this project's own search ends. */
const AS_NEAR_DEG = 1e-6;

const HOW_COMPARED =
  'both are Levenberg–Marquardt on one objective; the library takes its slopes by central differences, as anybody would who has only the objective';

const DEGREE = Math.PI / 180;
/** Most iterations that the library is given to come as near; it needs about as many as this project's own search. */
const MOST_ITERATIONS = 200;

const START = STANCE_UNKNOWNS.map((name) => NEUTRAL[name].at);
const FREE = START.map(() => true);

/** One objective for all, so that none is handed more work than another. */
function madeUpProblem() {
  const seat = exampleSeat();
  const body = bodyOfAthlete(seat.athlete!);
  const problem = stanceProblem(body, seat, { phase: 'ready' });
  return { seat, body, problem, objective: stanceObjective(problem) };
}

type Objective = ReturnType<typeof stanceObjective>;
/** Where a search ends after so many iterations. */
type Search = (iterations: number) => ArrayLike<number>;

/**
 * One stance beside the same objective, from the same start, handed to a general least-squares library that stops after the
 * first iteration that leaves it as near to the least: by its own differences, and with our slopes.
 */
export async function stanceBench(): Promise<Found> {
  const { seat, body, problem, objective } = madeUpProblem();
  const least = leastOf(objective);
  const ours = minimise(objective, { start: START, free: FREE });
  const stance = () => solveStance({ body, seat, frame: { stationX: 0, floorZ: 0.03, side: 'left' } });
  const byDifferences: Search = (iterations) => byLibrary(objective, { iterations });
  const withSlopes: Search = (iterations) => byLibrary(objective, { iterations, slopesOf: problem });
  const needed = iterationsNeeded(byDifferences, least);
  const neededWithSlopes = iterationsNeeded(withSlopes, least);
  const times = sideBySide({
    [STANCE]: stance,
    [MINIMUM]: () => minimise(objective, { start: START, free: FREE }),
    [BY_LIBRARY]: () => byDifferences(needed),
    [BY_LIBRARY_WITH_SLOPES]: () => withSlopes(neededWithSlopes),
  });
  const toMinimum = (name: keyof typeof times) => ({
    to: MINIMUM,
    times: ratioOf(times[name]!, times[MINIMUM]!),
  });
  const fact = (name: string, value: number, rest: Pick<Fact, 'unit' | 'note'>): Fact => ({
    group: 'core',
    name,
    value,
    ...rest,
  });
  return {
    rows: [
      rowOf('core', STANCE, { times: times[STANCE]! }),
      rowOf('core', MINIMUM, { times: times[MINIMUM]! }),
      rowOf('core', BY_LIBRARY, { times: times[BY_LIBRARY]!, ratio: toMinimum(BY_LIBRARY) }),
      rowOf('core', BY_LIBRARY_WITH_SLOPES, {
        times: times[BY_LIBRARY_WITH_SLOPES]!,
        ratio: toMinimum(BY_LIBRARY_WITH_SLOPES),
      }),
    ],
    facts: [
      fact('a stance ends from the least in its worst angle', apart(ours.q, least), { unit: '°' }),
      fact('ml-levenberg-marquardt ends from it', apart(byDifferences(needed), least), { unit: '°' }),
      fact('iterations of the library for that', needed, {
        unit: `(with our slopes ${neededWithSlopes}, ours ${ours.iterations})`,
        note: HOW_COMPARED,
      }),
      fact('heap taken by one stance', await bytesPerCall(stance), { unit: 'bytes' }),
    ],
  };
}

/** The least itself: searched again from where the search ended until nothing moves. */
function leastOf(objective: Objective): Float64Array {
  let q = minimise(objective, { start: START, free: FREE }).q;
  for (let again = 0; again < 4; again++) q = minimise(objective, { start: [...q], free: FREE }).q;
  return q;
}

/** Greatest difference of any unknown, degrees. */
function apart(q: ArrayLike<number>, least: Float64Array): number {
  return Math.max(...Array.from(least, (at, i) => Math.abs(at - q[i]!))) / DEGREE;
}

/** The fewest iterations after which the library is as near: it is given no more work than the answer needs. */
function iterationsNeeded(search: Search, least: Float64Array): number {
  for (let iterations = 1; iterations <= MOST_ITERATIONS; iterations++) {
    if (apart(search(iterations), least) <= AS_NEAR_DEG) return iterations;
  }
  throw new Error('the least-squares library never came as near; there is nothing to compare');
}

/** Without a problem to take slopes of, the library finds them by its own central differences. */
function byLibrary(
  objective: Objective,
  { iterations, slopesOf }: { iterations: number; slopesOf?: StanceProblem },
): readonly number[] {
  const x = Array.from({ length: objective.terms }, (_, i) => i);
  const { parameterValues } = levenbergMarquardt(
    { x, y: x.map(() => 0) },
    (q: number[]) => {
      const residuals = new Float64Array(objective.terms);
      objective.residualsAt(Float64Array.from(q), residuals);
      return (term: number) => residuals[term]!;
    },
    {
      initialValues: START,
      gradientDifference: 1e-6,
      centralDifference: true,
      damping: 0.01,
      maxIterations: iterations,
      errorTolerance: 0,
      ...(slopesOf && { jacobianFunction: slopesFor(slopesOf, objective) }),
    },
  );
  return parameterValues;
}

/** The slopes of each residual by all unknowns, as the library asks for them. */
function slopesFor(problem: StanceProblem, objective: Objective) {
  return (q: number[]) => {
    const at = Float64Array.from(q);
    const residuals = new Float64Array(objective.terms);
    objective.residualsAt(at, residuals);
    const slopes = termSlopes(problem, at);
    return (term: number) => {
      const counts = problem.terms[term]!.sense === 'near' ? 1 : Math.sign(residuals[term]!);
      return START.map((_, k) => counts * slopes[k * objective.terms + term]!);
    };
  };
}
