import type { Format } from '../../../app/language/format.ts';
import { COORDINATES, type FittingCoordinate, isAngle } from '../../../core/document/coordinates.ts';
import { withUnit } from '../../../core/text/with-unit.ts';
import { toDegrees } from '../../../core/units/angle.ts';
import { LENGTH_UNITS } from '../../../core/units/length-text.ts';
import { say } from '../../language/messages.ts';
import type { StepEffect, StepSizes } from './step-effects.ts';

const TURN_DEG = 5;

/** The step that effects are told for: one centimetre (half an inch where inches are read), five degrees. */
export function stepsFor({ lengthUnit }: Format): StepSizes {
  return { placeM: lengthUnit === 'in' ? LENGTH_UNITS.in / 2 : 0.01, turnDeg: TURN_DEG };
}

/** From here on a share is told in whole percent: a tenth of it says nothing, and has no room. */
const WHOLE_FROM = 9.95;

/** Changes with one place more than the values themselves: tenths of a millimetre, of a degree, of a small share. */
export function effectText({ id, unit, by }: StepEffect, format: Format): string {
  if (by === null) return '–';
  const tenths = { decimals: 1, signed: true } as const;
  if (unit === 'rad') return format.degrees(toDegrees(by), tenths);
  if (unit === '1') {
    const decimals = Math.abs(by * 100) < WHOLE_FROM ? 1 : 0;
    return withUnit(format.number(by * 100, { ...tenths, decimals }), '%');
  }
  if (unit === 'm' && format.lengthUnit !== 'in') return withUnit(format.number(by * 1000, tenths), 'mm');
  return format.quantity(id, { signed: true })(by, unit);
}

/** Whether a change shows no digit but zero: it is written faintly. */
export function isNothing(text: string): boolean {
  return !/[1-9]/.test(text);
}

/** The direction in which a coordinate grows, in a word: "aft", "out", "up", "turn". */
export function directionWord(coordinate: FittingCoordinate): string {
  return say(`card.direction.${directionOf(coordinate)}`);
}

type Direction = 'aft' | 'forward' | 'out' | 'up' | 'down' | 'turn' | 'wedge' | 'length' | 'blade';

function directionOf(coordinate: FittingCoordinate): Direction {
  if (coordinate === 'paddle.lengthM') return 'length';
  if (coordinate === 'paddle.bladeLengthM') return 'blade';
  const { axis, sign } = COORDINATES[coordinate];
  if (axis === 'wedge') return 'wedge';
  if (isAngle(coordinate)) return 'turn';
  if (axis === 'forward') return sign < 0 ? 'aft' : 'forward';
  if (axis === 'across') return 'out';
  return axis === 'height' ? 'up' : 'down';
}
