import fc from 'fast-check';
import type { Hull } from '../../../core/hull/hull.ts';
import type { Afloat, FloatResult, PointMass } from '../../../core/hydrostatics/afloat.ts';
import { SAMPLE_HULLS, sampleHull } from '../../reference/hydro-sample-hulls.ts';

export const SEED = 20260301;
export const WATER = 999.1;

export const hulls = Object.fromEntries(SAMPLE_HULLS.map((name) => [name, sampleHull(name)])) as Record<
  (typeof SAMPLE_HULLS)[number],
  Hull
>;

export function afloat(result: FloatResult): Afloat {
  if (result.kind !== 'afloat') throw new Error(`not afloat: ${JSON.stringify(result)}`);
  return result;
}

export function numbersIn(value: unknown): number[] {
  if (typeof value === 'number') return [value];
  return value && typeof value === 'object' ? Object.values(value).flatMap(numbersIn) : [];
}

/** Crew of n kneelers of 80 kg with paddles, seats spread over the boat, and the boat itself. */
export function crewed(own: number, crew: number): PointMass[] {
  const seats = Array.from({ length: crew }, (_, i) => 1.15 * ((crew - 1) / 2 - i));
  return [{ mass: own, x: 0, y: 0, z: 0.13 }, ...seats.map((x) => ({ mass: 83, x: x - 0.05, y: 0, z: 0.6 }))];
}

export const anyLoad = fc.record({
  which: fc.constantFrom(...SAMPLE_HULLS),
  mass: fc.double({ min: 20, max: 330, noNaN: true }),
  x: fc.double({ min: -0.5, max: 0.5, noNaN: true }),
  z: fc.double({ min: 0.1, max: 0.9, noNaN: true }),
  heel: fc.double({ min: -0.25, max: 0.25, noNaN: true }),
});

export const massesOf = ({ mass, x, z }: { mass: number; x: number; z: number }): PointMass[] => [
  { mass: 15, x: 0, y: 0, z: 0.13 },
  { mass, x, y: 0, z },
];
