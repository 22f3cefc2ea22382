import { COORDINATES, type FittingCoordinate } from '../../core/document/coordinates.ts';
import { say } from '../language/messages.ts';

/** A coordinate's name with its fitting's: "Knee pad: Aft of the mark". */
export function coordinateName(coordinate: FittingCoordinate): string {
  const { fitting } = COORDINATES[coordinate];
  return say('measures.named', {
    fitting: say(`fitting.${fitting}`),
    coordinate: say(`measure.${coordinate}`),
  });
}
