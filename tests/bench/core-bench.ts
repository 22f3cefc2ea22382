import { levenbergMarquardt } from 'ml-levenberg-marquardt';
import { bodyOfAthlete } from '../../core/body/body-of-athlete.ts';
import { createEvaluator } from '../../core/fit/evaluator.ts';
import type { Fit } from '../../core/fit/fit-schema.ts';
import { withCoordinate } from '../../core/fit/fitting-coordinate.ts';
import { propose } from '../../core/proposal/propose.ts';
import { NEUTRAL } from '../../core/stance/neutral-posture.ts';
import { stanceProblem } from '../../core/stance/objective.ts';
import { solveStance } from '../../core/stance/solve-stance.ts';
import { STANCE_UNKNOWNS } from '../../core/stance/stance.ts';
import { STANCE_TERMS } from '../../core/stance/stance-terms.ts';
import { exampleAthlete, exampleFit, exampleSeat } from '../core/example/example-fit.ts';
import { residualsAt } from '../core/stance/residuals-at.ts';
import { floatBench } from './float-bench.ts';
import { growthExponent, type Row, sideBySide } from './measure.ts';

const ROUNDS = 400;

/** A made-up boat with so many paddlers aboard. */
function crewOf(seats: number): Fit {
  const sides = ['left', 'right', 'left', 'right'] as const;
  return exampleFit(
    sides
      .slice(0, seats)
      .map((side, i) => exampleSeat({ athlete: exampleAthlete({ side, massKg: 72 + 4 * i }), side })),
  );
}

/** One step of a drag: the pad of the first seat a millimetre farther each time. */
function dragStep(fit: Fit): () => unknown {
  const evaluator = createEvaluator();
  const held = evaluator.evaluate(fit);
  let step = 0;
  return () => {
    step = (step + 1) % 40;
    const moved = withCoordinate(fit, { seat: 0, coordinate: 'kneePad.aftM' }, 0.16 + 0.001 * step);
    return evaluator.evaluateHolding(moved, held);
  };
}

function byLibrary(problem: ReturnType<typeof stanceProblem>): () => unknown {
  const x = STANCE_TERMS.map((_, i) => i);
  return () =>
    levenbergMarquardt(
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
        maxIterations: 60,
        errorTolerance: 0,
      },
    );
}

/** What the core measures: rows, and how cost grows with the number of seats. */
export async function coreBench(): Promise<{ rows: Row[]; facts: Record<string, number> }> {
  const fit = crewOf(1);
  const seat = fit.seats[0]!;
  const body = bodyOfAthlete(seat.athlete!);
  const frame = { stationX: 0, floorZ: 0.03, side: 'left' as const };
  const quick = sideBySide(
    {
      'stance, one solve': () => solveStance({ body, seat, frame }),
      'drag step, single': dragStep(fit),
      'drag step, pair': dragStep(crewOf(2)),
      'drag step, four': dragStep(crewOf(4)),
    },
    { rounds: ROUNDS },
  );
  const slow = sideBySide(
    {
      'stance by ml-levenberg-marquardt, same objective': byLibrary(stanceProblem(body, seat, 'ready')),
      'whole evaluation with spreads, single': () => createEvaluator().evaluate(fit),
      'proposal, single': () => propose(createEvaluator(), fit),
    },
    { rounds: 15 },
  );
  const float = await floatBench();
  const stance = quick['stance, one solve']!.medianUs;
  const rows: Row[] = Object.entries({ ...quick, ...slow }).map(([name, times]) => ({
    group: 'core',
    name,
    ...times,
    ratio: name.startsWith('stance by') ? { to: 'stance, one solve', times: times.medianUs / stance } : null,
  }));
  for (const { what, medianUs, p95Us, timesSlower } of float.rows) {
    const ratio = timesSlower && { to: timesSlower.than, times: timesSlower.ratio };
    rows.push({ group: 'core', name: what, medianUs, p95Us, runs: 0, ratio });
  }
  const perSeats = ([1, 2, 4] as const).map(
    (n) => [n, quick[`drag step, ${n === 1 ? 'single' : n === 2 ? 'pair' : 'four'}`]!.medianUs] as const,
  );
  return {
    rows,
    facts: {
      'growth of a drag step with seats (exponent)': growthExponent(perSeats),
      'growth of hydrostatics with stations (exponent)': float.growth.stations,
      'growth of hydrostatics with section points (exponent)': float.growth.sectionPoints,
      'bytes allocated by one set of immersed properties': float.bytesPerCall.properties,
      'bytes allocated by one equilibrium': float.bytesPerCall.equilibrium,
    },
  };
}
