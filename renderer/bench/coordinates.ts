import type { FittingCoordinate } from '../../core/findings/finding.ts';
import type { Lockable } from '../../core/fit/seat-schema.ts';
import { say } from '../language/messages.ts';

/** The measures of each fitting, in the order that a tape takes them. */
export const COORDINATES_OF: Readonly<Record<Lockable, readonly FittingCoordinate[]>> = {
  kneePad: ['kneePad.aftM', 'kneePad.outM', 'kneePad.heightM', 'kneePad.recessTurnDeg'],
  rearRest: ['rearRest.aftM', 'rearRest.outM', 'rearRest.heightM', 'rearRest.turnDeg'],
  frontFoot: [
    'frontFoot.forwardM',
    'frontFoot.outM',
    'frontFoot.heightM',
    'frontFoot.toeOutDeg',
    'frontFoot.wedgeDeg',
  ],
  paddle: ['paddle.lengthM', 'paddle.bladeLengthM', 'paddle.lowerHandM'],
};

/** A coordinate's name with its fitting's: "Knee pad: aft of the mark". */
export function coordinateName(coordinate: FittingCoordinate): string {
  const fitting = coordinate.split('.')[0] as Lockable;
  return say('measures.named', {
    fitting: say(`fitting.${fitting}`),
    coordinate: say(`coordinate.${coordinate}`),
  });
}
