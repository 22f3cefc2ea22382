import { COORDINATES, type FittingCoordinate } from '../document/coordinates.ts';
import type { Fit } from '../document/fit-schema.ts';
import { coordinateOf, withCoordinate } from '../document/fitting-coordinate.ts';
import type { Evaluator } from '../evaluation/evaluator.ts';
import type { Unit } from '../evaluation/finding.ts';
import type { Report } from '../evaluation/report.ts';
import { keyOf } from '../evaluation/value-table.ts';

/** Half-step of the central difference: 2 mm of place, 0.5° of turn. Small against bands, large against solver noise. */
const HALF_STEP = { m: 0.002, deg: 0.5 } as const;

/** Change of one quantity per metre or per degree of a coordinate, in its own SI unit. */
export interface Derivative {
  readonly id: string;
  /** Seat that the quantity is of; null for the whole boat. */
  readonly seat: number | null;
  readonly unit: Unit;
  /** Change of the quantity for one unit of the coordinate. */
  readonly perUnit: number;
}

/** A coordinate of a seat. */
export interface CoordinatePlace {
  /** Index of the seat, bow first. */
  readonly seat: number;
  readonly coordinate: FittingCoordinate;
}

/**
 * Derivatives of every quantity to one fitting coordinate, by central differences of the whole pipeline (stance, loads,
 * equilibrium). Per metre for places, per degree for turns; multiply by 0.01 for *what one centimetre does*.
 */
export function derivativesTo(
  work: { evaluator: Evaluator; fit: Fit; report: Report },
  place: CoordinatePlace,
): Derivative[] {
  const { evaluator, fit, report } = work;
  const half = HALF_STEP[COORDINATES[place.coordinate].unit];
  const at = coordinateOf(fit.seats[place.seat]!, place.coordinate);
  const less = evaluator.evaluateHolding(withCoordinate(fit, place, at - half), report).quantities;
  const more = evaluator.evaluateHolding(withCoordinate(fit, place, at + half), report).quantities;
  const before = new Map(less.map((q) => [keyOf(q.id, q.seat), q.value]));
  return more.flatMap(({ id, seat, unit, value }) => {
    const was = before.get(keyOf(id, seat));
    return was === undefined ? [] : [{ id, seat, unit, perUnit: (value - was) / (2 * half) }];
  });
}
