import { levenbergMarquardt } from 'ml-levenberg-marquardt';
import { bodyOfAthlete } from '../../core/body/body-of-athlete.ts';
import { minimise } from '../../core/posture/minimise.ts';
import { NEUTRAL } from '../../core/posture/neutral-posture.ts';
import { stanceObjective } from '../../core/posture/objective.ts';
import { solveStance } from '../../core/posture/solve-stance.ts';
import { STANCE_UNKNOWNS } from '../../core/posture/stance.ts';
import { stanceProblem } from '../../core/posture/stance-problem.ts';
import { exampleSeat } from '../core/example/example-fit.ts';
import { bytesPerCall, ratioOf, sideBySide } from './measure.ts';
import { type Fact, type Found, rowOf } from './row.ts';

const STANCE = 'stance, one phase, with its points, masses and forces';
const MINIMUM = 'of it: the least of the objective';
const BY_LIBRARY = 'the same least by ml-levenberg-marquardt, as near';

/** As near is no farther from the least in any angle than this, degrees: about where this project's own search ends. */
const AS_NEAR_DEG = 1e-6;

const WHY_NOT_TWENTY =
  'both are Levenberg–Marquardt on one objective, most of the work of either; only its slopes are cheaper here, by hand';

const DEGREE = Math.PI / 180;
/** Most iterations that the library is given to come as near; it needs about as many as this project's own search. */
const MOST_ITERATIONS = 200;

const START = STANCE_UNKNOWNS.map((name) => NEUTRAL[name].at);
const FREE = START.map(() => true);

/** One objective for both, so that neither is handed more work than the other. */
function madeUpProblem() {
  const seat = exampleSeat();
  const body = bodyOfAthlete(seat.athlete!);
  return { seat, body, objective: stanceObjective(stanceProblem(body, seat, { phase: 'ready' })) };
}

type Objective = ReturnType<typeof stanceObjective>;

/**
 * One stance beside the same objective, from the same start, handed to a general least-squares library that stops after the
 * first iteration that leaves it as near to the least.
 */
export function stanceBench(): Found {
  const { seat, body, objective } = madeUpProblem();
  const least = leastOf(objective);
  const ours = minimise(objective, { start: START, free: FREE });
  const iterations = iterationsNeeded(objective, least);
  const times = sideBySide({
    [STANCE]: () => solveStance({ body, seat, frame: { stationX: 0, floorZ: 0.03, side: 'left' } }),
    [MINIMUM]: () => minimise(objective, { start: START, free: FREE }),
    [BY_LIBRARY]: () => byLibrary(objective, iterations),
  });
  const ratio = { to: MINIMUM, times: ratioOf(times[BY_LIBRARY]!, times[MINIMUM]!) };
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
      rowOf('core', BY_LIBRARY, { times: times[BY_LIBRARY]!, ratio }),
    ],
    facts: [
      fact('a stance ends from the least in its worst angle', apart(ours.q, least), { unit: '°' }),
      fact('ml-levenberg-marquardt ends from it', apart(byLibrary(objective, iterations), least), {
        unit: '°',
      }),
      fact('iterations of the library for that', iterations, {
        unit: `(ours ${ours.iterations})`,
        note: WHY_NOT_TWENTY,
      }),
      fact(
        'heap taken by one stance',
        bytesPerCall(() => solveStance({ body, seat, frame: { stationX: 0, floorZ: 0.03, side: 'left' } })),
        { unit: 'bytes' },
      ),
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
function iterationsNeeded(objective: Objective, least: Float64Array): number {
  for (let iterations = 1; iterations <= MOST_ITERATIONS; iterations++) {
    if (apart(byLibrary(objective, iterations), least) <= AS_NEAR_DEG) return iterations;
  }
  throw new Error('the least-squares library never came as near; there is nothing to compare');
}

function byLibrary(objective: Objective, maxIterations: number): readonly number[] {
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
      maxIterations,
      errorTolerance: 0,
    },
  );
  return parameterValues;
}
