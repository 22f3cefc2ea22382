import { COORDINATES, type FittingCoordinate, isAngle } from '../../../core/document/coordinates.ts';
import type { Fit } from '../../../core/document/fit-schema.ts';
import { holePitch } from '../../../core/document/fitting-coordinate.ts';
import type { Report } from '../../../core/evaluation/report.ts';
import { toDegrees } from '../../../core/units/angle.ts';
import { QUANTITY_OF } from './handle.ts';

/** What guides one coordinate during a drag, in its own unit (metres or degrees). */
export interface DragLimits {
  /** The hardware's travel: it cannot be pulled past these unless Alt is held. */
  readonly least: number;
  readonly most: number;
  /** What wood and water allow at all. */
  readonly utmost: readonly [number, number];
  /** Edges of its band: soft, drawn, a little magnetic. Null where open or where there is no band. */
  readonly bandLeast: number | null;
  readonly bandMost: number | null;
  /** Distance between holes, counted from the seat's datum; null where it may stand anywhere. */
  readonly pitch: number | null;
}

/** The limits of one coordinate of a seat. Bands are those that its findings were judged by, the coach's own included. */
export function dragLimits(
  coordinate: FittingCoordinate,
  { fit, report, seat }: { fit: Fit; report: Report; seat: number },
): DragLimits {
  const [least, most] = limits(coordinate, fit, seat);
  const id = QUANTITY_OF[coordinate];
  const band = report.findings.find((f) => f.quantity === id && f.seat === seat)?.band;
  const edge = (value: number | null | undefined) =>
    value === null || value === undefined ? null : isAngle(coordinate) ? toDegrees(value) : value;
  return {
    least,
    most,
    utmost: possibleRange(coordinate, fit, seat),
    bandLeast: edge(band?.min),
    bandMost: edge(band?.max),
    pitch: holePitch(fit, coordinate),
  };
}

function limits(coordinate: FittingCoordinate, fit: Fit, seat: number): readonly [number, number] {
  const { hardware } = fit.boat;
  if (coordinate === 'kneePad.aftM') return sorted(hardware.padTravelM);
  if (coordinate === 'rearRest.aftM') return sorted(hardware.restTravelM);
  return possibleRange(coordinate, fit, seat);
}

/** What wood and water allow of a coordinate at all, in its own unit; inside what the document allows. */
export function possibleRange(
  coordinate: FittingCoordinate,
  fit: Fit,
  seat: number,
): readonly [number, number] {
  const [least, most] = COORDINATES[coordinate].reachable;
  const { lengthM, bladeLengthM } = fit.seats[seat]!.paddle;
  switch (coordinate) {
    case 'paddle.lowerHandM':
      return [least, Math.max(least, lengthM - bladeLengthM)];
    case 'paddle.bladeLengthM':
      return [least, Math.max(least, Math.min(most, lengthM - NEAREST_HAND))];
    case 'paddle.lengthM':
      return [Math.min(most, Math.max(least, bladeLengthM + NEAREST_HAND)), most];
    default:
      return [least, most];
  }
}

/** A paddle has room for a hand at least between grip and blade, metres. */
const NEAREST_HAND = COORDINATES['paddle.lowerHandM'].reachable[0];

function sorted([a, b]: readonly [number, number]): readonly [number, number] {
  return a < b ? [a, b] : [b, a];
}
