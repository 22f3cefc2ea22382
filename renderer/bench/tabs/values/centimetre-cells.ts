import type { Format } from '../../../../app/language/format.ts';
import { type FittingCoordinate, isAngle } from '../../../../core/document/coordinates.ts';
import type { Quantity, Unit } from '../../../../core/evaluation/finding.ts';
import { quantityDefinition } from '../../../../core/evaluation/quantities.ts';
import type { Derivative } from '../../../../core/optimise/sensitivity.ts';
import { isYesOrNo } from '../../../../core/text/sentences.ts';
import { LENGTH_UNITS } from '../../../../core/units/length-text.ts';

/** A step of place: a centimetre, or half an inch where inches are read; a step of turn: five degrees. */
const TURN_DEG = 5;

/** How much of a coordinate one step of the table is, in its own unit. */
export function stepOf(coordinate: FittingCoordinate, format: Format): number {
  if (isAngle(coordinate)) return TURN_DEG;
  return format.lengthUnit === 'in' ? LENGTH_UNITS.in / 2 : 0.01;
}

/** How the changes of a quantity are written: in which shown unit, so many of them to one of its SI unit. */
export interface ShownUnit {
  readonly unit: string;
  readonly perSi: number;
  readonly decimals: number;
}

/** Angles whose own step is finer than this, radians, are written to a thousandth of a degree. */
const FINE_ANGLE = 0.005;

/** The unit that a quantity's changes are shown in: small ones, since steps are small. */
export function shownUnit({ id, unit }: { id: string; unit: Unit }, format: Format): ShownUnit {
  switch (unit) {
    case 'm':
      return format.lengthUnit === 'in'
        ? { unit: 'in', perSi: 1 / LENGTH_UNITS.in, decimals: 3 }
        : { unit: 'mm', perSi: 1000, decimals: 1 };
    case 'rad':
      return { unit: '°', perSi: 180 / Math.PI, decimals: isFine(id) ? 3 : 1 };
    case '1':
      return { unit: '%', perSi: 100, decimals: 1 };
    case 'Pa':
      return { unit: 'kPa', perSi: 1e-3, decimals: 1 };
    case 'N·m/°':
      return { unit, perSi: 1, decimals: 2 };
    case 'kg':
      return { unit: 'kg', perSi: 1, decimals: 2 };
    default:
      return { unit, perSi: 1, decimals: 1 };
  }
}

const isFine = (id: string) => (quantityDefinition(id)?.step ?? 1) < FINE_ANGLE;

/** Quantities that have a slope at all: yes and no, and what is given, have none. */
export function hasSlope({ id }: Quantity): boolean {
  return !isYesOrNo(id) && id !== 'boatLength' && id !== 'boatMass';
}

/** One cell: what one step of a coordinate changes a quantity by, signed, in the shown unit; null where not computed. */
export function cellText(
  derivative: Derivative | undefined,
  { step, format }: { step: number; format: Format },
): string | null {
  if (!derivative || !Number.isFinite(derivative.perUnit)) return null;
  const { perSi, decimals } = shownUnit(derivative, format);
  return format.number(derivative.perUnit * step * perSi, { decimals, signed: true });
}
