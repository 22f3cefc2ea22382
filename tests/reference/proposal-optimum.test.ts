import { describe, expect, it } from 'vitest';
import type { FittingCoordinate } from '../../core/document/coordinates.ts';
import { freeCoordinates, withCoordinate } from '../../core/document/fitting-coordinate.ts';
import { createEvaluator } from '../../core/evaluation/evaluator.ts';
import { totalViolation } from '../../core/optimise/objective.ts';
import { propose } from '../../core/optimise/propose.ts';
import { costOf, searchMoves } from '../../core/optimise/search.ts';
import { cases } from '../cases.ts';
import { costByLibrary } from './proposal-by-library.ts';
import { firstFit, randomAthletes, sampleBoat } from './proposal-random.ts';

const SEED = 77;
const evaluator = createEvaluator();
const all = (['single', 'training'] as const).flatMap((name) => {
  const boat = sampleBoat(name);
  return randomAthletes(SEED, 3).map((athlete) => ({
    title: `${name}, ${athlete.statureM} m`,
    fit: firstFit(boat, athlete),
  }));
});

/** The quick run takes one of them. */
const settings = all.slice(0, cases(1, all.length));

/** Rounding to holes of 1 cm and to millimetres may cost this much of an optimum that lies between. */
const ROUNDING_TROUBLE = 0.05;

describe('a proposal against brute force: every setting of a coarse grid over four coordinates', () => {
  const GRID: readonly [FittingCoordinate, number[]][] = [
    ['kneePad.aftM', [0.15, 0.16, 0.17, 0.18, 0.19, 0.2]],
    ['kneePad.heightM', [0.08, 0.1, 0.12, 0.135, 0.15]],
    ['frontFoot.forwardM', [0.22, 0.27, 0.32, 0.37, 0.42, 0.47]],
    ['rearRest.aftM', [0.5, 0.55, 0.6, 0.65, 0.7]],
  ];

  it.each(settings)('$title', ({ fit }) => {
    const { report } = propose(evaluator, fit);
    let grid = [fit];
    for (const [coordinate, values] of GRID) {
      grid = grid.flatMap((now) => values.map((v) => withCoordinate(now, { seat: 0, coordinate }, v)));
    }
    const least = Math.min(...grid.map((now) => totalViolation(evaluator.evaluateHolding(now, report))));
    expect(grid).toHaveLength(900);
    expect(totalViolation(report)).toBeLessThanOrEqual(least + ROUNDING_TROUBLE);
  });
});

describe('the search against a general-purpose least-squares library on the same objective (Levenberg–Marquardt)', () => {
  const ITERATIONS = 40;

  it.each(settings)('$title: never worse', ({ fit }) => {
    const held = evaluator.evaluate(fit);
    const places = freeCoordinates(fit.seats[0]!).map((coordinate) => ({ seat: 0, coordinate }));
    const search = { evaluator, fit, held, places };
    const found = searchMoves(search);
    const library = costByLibrary(search, ITERATIONS);
    expect(library).toBeLessThan(costOf(held, []));
    expect(found.cost, `library ${library}`).toBeLessThanOrEqual(1.02 * library + 0.01);
  });
});
