import { levenbergMarquardt } from 'ml-levenberg-marquardt';
import { bodyOfAthlete } from '../../core/body/body-of-athlete.ts';
import { createEvaluator } from '../../core/fit/evaluator.ts';
import type { Fit } from '../../core/fit/fit-schema.ts';
import { withCoordinate } from '../../core/fit/fitting-coordinate.ts';
import { propose } from '../../core/proposal/propose.ts';
import { NEUTRAL } from '../../core/stance/neutral-posture.ts';
import { type StanceProblem, stanceProblem } from '../../core/stance/objective.ts';
import { solveStance } from '../../core/stance/solve-stance.ts';
import { STANCE_UNKNOWNS } from '../../core/stance/stance.ts';
import { STANCE_TERMS } from '../../core/stance/stance-terms.ts';
import { exampleAthlete, exampleFit, exampleSeat } from '../core/example/example-fit.ts';
import { residualsAt } from '../core/stance/residuals-at.ts';
import { floatBench } from './float-bench.ts';
import { bytesPerCall, growthExponent, ratioOf, sideBySide } from './measure.ts';
import type { Fact, Found, Row, Times } from './row.ts';

/** The library's stance counts as the same when no angle differs by more than this, as in the reference test. */
const SAME_STANCE_DEG = 0.01;
const DEGREE = Math.PI / 180;

const STANCE = 'stance, one phase';
const BY_LIBRARY = 'stance by ml-levenberg-marquardt';
const CREWS = [
  [1, 'single'],
  [2, 'pair'],
  [4, 'four'],
] as const;

/** What the core costs: a stance, a drag's step, a whole evaluation, a proposal, and floating. */
export async function coreBench(): Promise<Found> {
  const [stance, whole, float] = [stanceBench(), evaluationBench(), await floatBench()];
  return {
    rows: [...stance.rows, ...whole.rows, ...float.rows],
    facts: [...stance.facts, ...whole.facts, ...float.facts],
  };
}

/** A made-up boat with so many paddlers aboard. */
function crewOf(seats: number): Fit {
  const sides = ['left', 'right', 'left', 'right'] as const;
  return exampleFit(
    sides
      .slice(0, seats)
      .map((side, i) => exampleSeat({ athlete: exampleAthlete({ side, massKg: 72 + 4 * i }), side })),
  );
}

const fact = (name: string, value: number, unit: string): Fact => ({ group: 'core', name, value, unit });
const row = (name: string, times: Times, ratio: Row['ratio'] = null): Row => ({
  group: 'core',
  name,
  ...times,
  ratio,
});

/** One stance beside the same objective handed to a general least-squares library, stopped where it agrees. */
function stanceBench(): Found {
  const seat = exampleSeat();
  const body = bodyOfAthlete(seat.athlete!);
  const problem = stanceProblem(body, seat, 'ready');
  const solve = () => solveStance({ body, seat, frame: { stationX: 0, floorZ: 0.03, side: 'left' } });
  const { iterations, apartDeg } = leastIterations(problem, solve().angles);
  const times = sideBySide({ [STANCE]: solve, [BY_LIBRARY]: () => byLibrary(problem, iterations) });
  const ratio = { to: STANCE, times: ratioOf(times[BY_LIBRARY]!, times[STANCE]!) };
  return {
    rows: [row(STANCE, times[STANCE]!), row(BY_LIBRARY, times[BY_LIBRARY]!, ratio)],
    facts: [
      fact('ml-levenberg-marquardt differs in its worst angle by', apartDeg, '°'),
      fact('iterations it was given for that', iterations, ''),
      fact('heap taken by one stance', bytesPerCall(solve), 'bytes'),
    ],
  };
}

function byLibrary(problem: StanceProblem, maxIterations: number): readonly number[] {
  const x = STANCE_TERMS.map((_, i) => i);
  const { parameterValues } = levenbergMarquardt(
    { x, y: x.map(() => 0) },
    (q: number[]) => {
      const residuals = residualsAt(q, problem);
      return (term: number) => residuals[term]!;
    },
    {
      initialValues: STANCE_UNKNOWNS.map((name) => NEUTRAL[name].at),
      gradientDifference: 1e-6,
      centralDifference: true,
      damping: 0.01,
      maxIterations,
      errorTolerance: 0,
    },
  );
  return parameterValues;
}

/** The fewest iterations after which the library has the same stance: it is given no more work than the answer needs. */
function leastIterations(
  problem: StanceProblem,
  ours: Readonly<Record<(typeof STANCE_UNKNOWNS)[number], number>>,
): { iterations: number; apartDeg: number } {
  for (let iterations = 1; iterations <= 400; iterations++) {
    const theirs = byLibrary(problem, iterations);
    const apart = STANCE_UNKNOWNS.map((name, i) => Math.abs(ours[name] - theirs[i]!) / DEGREE);
    const apartDeg = Math.max(...apart);
    if (apartDeg <= SAME_STANCE_DEG) return { iterations, apartDeg };
  }
  throw new Error('the least-squares library never came to the same stance; there is nothing to compare');
}

/** One step of a drag: the pad of the first seat a millimetre farther each time. */
function dragStep(fit: Fit): (call: number) => unknown {
  const evaluator = createEvaluator();
  const held = evaluator.evaluate(fit);
  return (call) => {
    const place = { seat: 0, coordinate: 'kneePad.aftM' } as const;
    return evaluator.evaluateHolding(withCoordinate(fit, place, 0.16 + 0.001 * (call % 40)), held);
  };
}

function evaluationBench(): Found {
  const crews = CREWS.map(([seats, word]) => ({
    seats,
    word,
    fit: crewOf(seats),
    step: dragStep(crewOf(seats)),
  }));
  const drag = sideBySide(Object.fromEntries(crews.map(({ word, step }) => [`drag step, ${word}`, step])));
  const evaluators = crews.map(({ word, fit }) => [word, createEvaluator(), fit] as const);
  const whole = sideBySide(
    Object.fromEntries([
      ...evaluators.map(([word, evaluator, fit]) => [
        `whole evaluation with spreads, ${word}`,
        () => evaluator.evaluate(fit),
      ]),
      ...evaluators.map(([word, evaluator, fit]) => [`proposal, ${word}`, () => propose(evaluator, fit)]),
    ]) as Record<string, () => unknown>,
    { rounds: 21, warmUpMs: 500 },
  );
  const points = crews.map(({ seats, word }) => [seats, drag[`drag step, ${word}`]!.medianUs] as const);
  return {
    rows: Object.entries({ ...drag, ...whole }).map(([name, times]) => row(name, times)),
    facts: [
      fact('a drag step grows with seats, to the power of', growthExponent(points), ''),
      ...crews.map(({ word, step }) =>
        fact(`heap taken by a drag step, ${word}`, bytesPerCall(step), 'bytes'),
      ),
    ],
  };
}
