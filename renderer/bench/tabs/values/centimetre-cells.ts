import type { Format } from '../../../../app/language/format.ts';
import { type FittingCoordinate, isAngle } from '../../../../core/document/coordinates.ts';
import type { Quantity } from '../../../../core/evaluation/finding.ts';
import type { Derivative } from '../../../../core/optimise/sensitivity.ts';
import { isYesOrNo } from '../../../../core/text/sentences.ts';
import { stepsFor } from '../../card/effect-text.ts';

/** How much of a coordinate one step of the table is, in its own unit. */
export function tableStepOf(coordinate: FittingCoordinate, format: Format): number {
  const { placeM, turnDeg } = stepsFor(format);
  return isAngle(coordinate) ? turnDeg : placeM;
}

/** The step of place as it is written: "1 cm", "1/2 in". */
export function stepText(format: Format): string {
  return format.spokenLength(stepsFor(format).placeM);
}

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
  const { perSi, decimals } = format.changeUnit(derivative);
  return format.number(derivative.perUnit * step * perSi, { decimals, signed: true });
}
