import type { Format } from '../../../app/language/format.ts';
import { COORDINATES, type FittingCoordinate, isAngle } from '../../../core/document/coordinates.ts';
import { say } from '../../language/messages.ts';

/** A coordinate as said beside the hand, from its datum: "17.5 cm aft", "3.5 cm out", "12° turned". Metres or degrees in. */
export function coordinateWords(coordinate: FittingCoordinate, value: number, format: Format): string {
  if (isAngle(coordinate)) {
    return say('drawing.turned', { by: format.degrees(value, { decimals: value % 1 === 0 ? 0 : 1 }) });
  }
  const by = format.length(Math.abs(value), { exact: true });
  const { axis, sign } = COORDINATES[coordinate];
  if (axis === 'forward')
    return say(sign * value < 0 ? 'drawing.place.aft' : 'drawing.place.forward', { by });
  if (axis === 'across')
    return say(value < 0 ? 'drawing.place.off-side' : 'drawing.place.kneeling-side', { by });
  if (axis === 'height') return say('drawing.place.up', { by });
  return say('drawing.place.from-grip', { by });
}

/** The same beside a dimension line, which itself shows what is measured from where: the value alone, and the side. */
export function dimensionWords(coordinate: FittingCoordinate, value: number, format: Format): string {
  if (COORDINATES[coordinate].axis !== 'across') return coordinateWords(coordinate, value, format);
  const by = format.length(Math.abs(value), { exact: true });
  return say(value < 0 ? 'drawing.place.off' : 'drawing.place.out', { by });
}
