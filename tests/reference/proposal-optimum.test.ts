import { levenbergMarquardt } from 'ml-levenberg-marquardt';
import { describe, expect, it } from 'vitest';
import type { FittingCoordinate } from '../../core/findings/finding.ts';
import { createEvaluator } from '../../core/fit/evaluator.ts';
import {
  COORDINATE_RULES,
  coordinateOf,
  freeCoordinates,
  withCoordinate,
} from '../../core/fit/fitting-coordinate.ts';
import { excessTrouble, placeable, totalTrouble } from '../../core/proposal/objective.ts';
import { propose } from '../../core/proposal/propose.ts';
import { costOf, pointAt, type Search, searchMoves } from '../../core/proposal/search.ts';
import { firstFit, randomAthletes, sampleBoat } from './proposal-random.ts';

const SEED = 77;
const evaluator = createEvaluator();
const cases = (['single', 'training'] as const).flatMap((name) => {
  const boat = sampleBoat(name);
  return randomAthletes(SEED, 3).map((athlete) => ({
    title: `${name}, ${athlete.statureM} m`,
    fit: firstFit(boat, athlete),
  }));
});

/** Rounding to holes of 1 cm and to millimetres may cost this much of an optimum that lies between. */
const ROUNDING_TROUBLE = 0.05;

describe('a proposal against brute force: every setting of a coarse grid over four coordinates', () => {
  const GRID: readonly [FittingCoordinate, number[]][] = [
    ['kneePad.aftM', [0.15, 0.16, 0.17, 0.18, 0.19, 0.2]],
    ['kneePad.heightM', [0.08, 0.1, 0.12, 0.135, 0.15]],
    ['frontFoot.forwardM', [0.22, 0.27, 0.32, 0.37, 0.42, 0.47]],
    ['rearRest.aftM', [0.5, 0.55, 0.6, 0.65, 0.7]],
  ];

  it.each(cases)('$title', ({ fit }) => {
    const { report } = propose(evaluator, fit);
    let settings = [fit];
    for (const [coordinate, values] of GRID) {
      settings = settings.flatMap((now) =>
        values.map((v) => withCoordinate(now, { seat: 0, coordinate }, v)),
      );
    }
    const least = Math.min(...settings.map((now) => totalTrouble(evaluator.evaluateHolding(now, report))));
    expect(settings).toHaveLength(900);
    expect(totalTrouble(report)).toBeLessThanOrEqual(least + ROUNDING_TROUBLE);
  });
});

describe('the search against a general-purpose least-squares library on the same objective (Levenberg–Marquardt)', () => {
  const MOVE_WEIGHT = 0.02;

  /** The library's best: residuals are the troubles of every finding and the weighed moves, to be brought to zero. */
  function byLibrary(search: Search): number {
    const n = search.places.length;
    const ids = placeable(search.held.findings).map((f) => f.id);
    const rowsAt = (x: readonly number[]) => {
      const { report } = pointAt(search, x);
      const troubles = new Map(placeable(report.findings).map((f) => [f.id, excessTrouble(f)]));
      return [...ids.map((id) => troubles.get(id) ?? 0), ...x.map((d) => MOVE_WEIGHT * d)];
    };
    const ends = search.places.map(({ seat, coordinate }) => {
      const { least, most, scale } = COORDINATE_RULES[coordinate];
      const from = coordinateOf(search.fit.seats[seat]!, coordinate);
      return [Math.max(-25, (least - from) / scale), Math.min(25, (most - from) / scale)] as const;
    });
    const rows = ids.length + n;
    const fitted = levenbergMarquardt(
      { x: Array.from({ length: rows }, (_, i) => i), y: new Array<number>(rows).fill(0) },
      (x: number[]) => {
        const values = rowsAt(x);
        return (row: number) => values[row]!;
      },
      {
        initialValues: new Array<number>(n).fill(0),
        minValues: ends.map(([least]) => least),
        maxValues: ends.map(([, most]) => most),
        gradientDifference: 0.05,
        centralDifference: true,
        damping: 0.1,
        maxIterations: 40,
      },
    );
    return costOf(pointAt(search, fitted.parameterValues).report, fitted.parameterValues);
  }

  it.each(cases)('$title: never worse', ({ fit }) => {
    const held = evaluator.evaluate(fit);
    const places = freeCoordinates(fit.seats[0]!).map((coordinate) => ({ seat: 0, coordinate }));
    const search = { evaluator, fit, held, places };
    const found = searchMoves(search);
    const library = byLibrary(search);
    expect(library).toBeLessThan(costOf(held, []));
    expect(found.cost, `library ${library}`).toBeLessThanOrEqual(1.02 * library + 0.01);
  });
});
