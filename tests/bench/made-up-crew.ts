import type { Fit } from '../../core/document/fit-schema.ts';
import { exampleAthlete, exampleFit, exampleSeat } from '../core/example/example-fit.ts';

/** The crews that are measured: seats aboard and what they are called. */
export const CREWS = [
  [1, 'single'],
  [2, 'pair'],
  [4, 'four'],
] as const;

/** A made-up boat with so many paddlers aboard, each heavier than the one ahead. */
export function crewOf(seats: number): Fit {
  const sides = ['left', 'right', 'left', 'right'] as const;
  return exampleFit(
    sides
      .slice(0, seats)
      .map((side, i) => exampleSeat({ athlete: exampleAthlete({ side, massKg: 72 + 4 * i }), side })),
  );
}
