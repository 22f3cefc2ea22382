import type { Fit } from '../document/fit-schema.ts';
import { coordinateOf } from '../document/fitting-coordinate.ts';
import { type Search, startOf } from './moves.ts';
import type { CoordinatePlace } from './sensitivity.ts';

/** One fitting's move in a proposal, in the coordinate's own unit. */
export interface ProposedMove extends CoordinatePlace {
  /** Before. */
  readonly from: number;
  /** After, on the coordinate's snap steps. */
  readonly to: number;
}

/** The moves that lead from a search's fit to another. */
export function movesBetween(search: Pick<Search, 'fit' | 'places'>, to: Fit): ProposedMove[] {
  return search.places.flatMap((place) => {
    const [was, is] = [startOf(search, place), coordinateOf(to.seats[place.seat]!, place.coordinate)];
    return is === was ? [] : [{ ...place, from: was, to: is }];
  });
}
