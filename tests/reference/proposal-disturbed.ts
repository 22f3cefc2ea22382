import { COORDINATES } from '../../core/document/coordinates.ts';
import type { Fit } from '../../core/document/fit-schema.ts';
import {
  coordinateOf,
  freeCoordinates,
  holePitch,
  withCoordinate,
} from '../../core/document/fitting-coordinate.ts';
import { uniform } from '../random32.ts';
import { firstFit, randomAthletes, sampleBoat } from './proposal-random.ts';

/** Farthest that a coordinate is disturbed, in units of moves: 5 cm, 15°. */
const FARTHEST = 5;

/**
 * First settings of seeded random athletes in the single and the training hull by turns, every free coordinate but the
 * paddle's moved at random, uniformly up to 5 cm or 15°, onto its grid or into a hole.
 */
export function disturbedFits(seed: number, count: number): Fit[] {
  const next = uniform(seed);
  return randomAthletes(seed, count).map((athlete, i) => {
    const fit = firstFit(sampleBoat(i % 2 === 0 ? 'single' : 'training'), athlete);
    return freeCoordinates(fit.seats[0]!)
      .filter((coordinate) => COORDINATES[coordinate].fitting !== 'paddle')
      .reduce((now, coordinate) => {
        const { moveUnit, snapStep, allowed } = COORDINATES[coordinate];
        const step = holePitch(fit, coordinate) ?? snapStep;
        const to = coordinateOf(fit.seats[0]!, coordinate) + FARTHEST * moveUnit * (2 * next() - 1);
        const within = Math.min(allowed[1], Math.max(allowed[0], to));
        return withCoordinate(
          now,
          { seat: 0, coordinate },
          Number((step * Math.round(within / step)).toFixed(6)),
        );
      }, fit);
  });
}
