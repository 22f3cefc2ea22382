import { describe, expect, it } from 'vitest';
import { COORDINATES } from '../../../core/document/coordinates.ts';
import { coordinateOf, freeCoordinates } from '../../../core/document/fitting-coordinate.ts';
import type { Seat } from '../../../core/document/seat-schema.ts';
import { createEvaluator, type Evaluator } from '../../../core/evaluation/evaluator.ts';
import { totalViolation } from '../../../core/optimise/objective.ts';
import { propose } from '../../../core/optimise/propose.ts';
import { pointAt, type Search, searchMoves } from '../../../core/optimise/search.ts';
import { exampleFit, exampleSeat } from '../example/example-fit.ts';

/** Evaluations of values that one search may take: a first setting in a tenth of a second rests on it. */
const MOST_EVALUATIONS = 75;

function counted(): { evaluator: Evaluator; count: () => { values: number; spreads: number } } {
  const inner = createEvaluator();
  const counts = { values: 0, spreads: 0 };
  return {
    evaluator: {
      evaluate(fit, sources) {
        counts.spreads++;
        return inner.evaluate(fit, sources);
      },
      evaluateHolding(fit, held) {
        counts.values++;
        return inner.evaluateHolding(fit, held);
      },
    },
    count: () => ({ ...counts }),
  };
}

function spoilt(): Seat {
  const seat = exampleSeat();
  return {
    ...seat,
    kneePad: { ...seat.kneePad, aftM: 0.24, heightM: 0.06 },
    frontFoot: { ...seat.frontFoot, forwardM: 0.2 },
  };
}

function searchOf(seat: Seat, evaluator: Evaluator): Search {
  const fit = exampleFit([seat]);
  const places = freeCoordinates(seat).map((coordinate) => ({ seat: 0, coordinate }));
  return { evaluator, fit, held: evaluator.evaluate(fit), places };
}

describe('searchMoves', () => {
  const { evaluator, count } = counted();
  const search = searchOf(spoilt(), evaluator);
  const found = searchMoves(search);
  const counts = count();

  it('brings the cost down a long way and reports the point it ends at', () => {
    expect(found.cost).toBeLessThan(0.2 * totalViolation(search.held));
    expect(found.cost).toBe(pointAt(search, found.x).cost);
  });

  it('takes few evaluations', () => {
    expect(counts.values).toBeLessThan(MOST_EVALUATIONS);
  });

  it('is where it stays: no single coordinate moved by 2 mm or half a degree costs clearly less', () => {
    found.x.forEach((_, i) => {
      for (const by of [-0.2, 0.2]) {
        const there = pointAt(
          search,
          found.x.map((d, k) => (k === i ? d + by : d)),
        );
        const outside = isOutside(search, there.x, i);
        if (!outside) expect(there.cost, search.places[i]!.coordinate).toBeGreaterThan(0.97 * found.cost);
      }
    });
  });

  it('keeps every coordinate between the ends of its rule', () => {
    found.x.forEach((_, i) => {
      expect(isOutside(search, found.x, i), search.places[i]!.coordinate).toBe(false);
    });
  });

  it('comes near with one measuring of the slopes', () => {
    const near = counted();
    const begun = searchOf(spoilt(), near.evaluator);
    const first = near.count().values;
    const point = searchMoves(begun, { near: true });
    expect(near.count().values - first).toBeLessThan(found.x.length + 25);
    expect(point.cost).toBeLessThan(2 * found.cost + 0.2);
  });
});

function isOutside({ fit, places }: Search, x: readonly number[], i: number): boolean {
  const { seat, coordinate } = places[i]!;
  const {
    usual: [least, most],
    moveUnit: scale,
  } = COORDINATES[coordinate];
  const to = coordinateOf(fit.seats[seat]!, coordinate) + x[i]! * scale;
  return to < least - 1e-9 || to > most + 1e-9;
}

describe('propose', () => {
  it('computes spreads three times and values a few dozen times for a single', () => {
    const { evaluator, count } = counted();
    propose(evaluator, exampleFit([spoilt()]));
    expect(count().spreads).toBeLessThanOrEqual(3);
    expect(count().values).toBeLessThan(130);
  });

  it('sets drilled fittings in holes', () => {
    const fit = exampleFit([spoilt()]);
    const drilled = {
      ...fit,
      boat: { ...fit.boat, hardware: { ...fit.boat.hardware, padHolePitchM: 0.025, restHolePitchM: 0.02 } },
    };
    const { kneePad, rearRest } = propose(createEvaluator(), drilled).fit.seats[0]!;
    expect(kneePad.aftM / 0.025).toBeCloseTo(Math.round(kneePad.aftM / 0.025), 6);
    expect(rearRest.aftM / 0.02).toBeCloseTo(Math.round(rearRest.aftM / 0.02), 6);
  });

  it('makes no move that brings nothing: taking any one back costs more', () => {
    const evaluator = createEvaluator();
    const fit = exampleFit([spoilt()]);
    const { moves, report } = propose(evaluator, fit);
    const places = moves.map(({ seat, coordinate }) => ({ seat, coordinate }));
    const search = { evaluator, fit, held: report, places };
    const x = moves.map((m) => (m.to - m.from) / COORDINATES[m.coordinate].moveUnit);
    const cost = pointAt(search, x).cost;
    x.forEach((_, i) => {
      const without = x.map((d, k) => (k === i ? 0 : d));
      expect(pointAt(search, without).cost, moves[i]!.coordinate).toBeGreaterThan(cost - 0.02);
    });
  });

  it('moves nothing where everything is locked', () => {
    const seat = { ...spoilt(), locks: ['kneePad', 'rearRest', 'frontFoot', 'paddle'] as Seat['locks'] };
    const proposal = propose(createEvaluator(), exampleFit([seat]));
    expect(proposal.moves).toEqual([]);
    expect(proposal.uncleared.length).toBeGreaterThan(0);
  });
});
