import type { Fit } from '../../../core/document/fit-schema.ts';
import type { Seat } from '../../../core/document/seat-schema.ts';
import { partsOfSeat } from '../../../core/evaluation/parts-of.ts';
import type { Report } from '../../../core/evaluation/report.ts';
import { seatFrame } from '../../../core/evaluation/seat-state.ts';
import { type SeatFrame, sideSign, toBoatFrame } from '../../../core/frame/mirror.ts';
import type { BoatPoint } from '../../../core/frame/vec3.ts';
import type { SeatParts } from '../../../core/parts/seat-parts.ts';
import { toRadians } from '../../../core/units/angle.ts';
import type { HandleId } from './handle.ts';

/** How far beyond the wood a turning handle stands, metres, so that it can be taken without covering anything. */
const BEYOND = 0.045;

/** Length of a foot to stand the toe-out handle by when a seat is empty, metres (ANSUR II mean, both sexes, about 0.26). */
const USUAL_FOOT = 0.26;

/** A seat of a fit with its report, and the frame it stands in. */
export interface SeatPlace {
  readonly seat: Seat;
  readonly frame: SeatFrame;
  readonly footLength: number;
  /** Pad, rest and front foot as solids, boat frame. */
  readonly parts: SeatParts;
  /** Hands on the shaft; null in an empty seat. */
  readonly hands: { readonly top: BoatPoint; readonly lower: BoatPoint } | null;
}

/** Looks a seat up in a fit and its report. */
export function seatPlace(fit: Fit, report: Report, index: number): SeatPlace {
  const seat = fit.seats[index]!;
  const seated = report.seats[index];
  const points = seated?.stances.ready.points;
  const frame = seatFrame(fit.boat, seat, index);
  const footLength = seated?.body.lengths.footLength.value ?? USUAL_FOOT;
  let parts: SeatParts | undefined;
  return {
    seat,
    frame,
    footLength,
    // Only the drawing asks for them: most who look a seat up do not.
    get parts() {
      parts ??= partsOfSeat(fit.boat, seat, { index, frame, footLength });
      return parts;
    },
    hands: points ? { top: points.topHand, lower: points.lowerHand } : null,
  };
}

/** Where a fitting's bearing point is, boat frame, metres: what it is placed by and turned about. */
export function bearingPoint({ seat, frame }: SeatPlace, handle: HandleId): BoatPoint {
  const { kneePad, rearRest, frontFoot } = seat;
  switch (handle) {
    case 'kneePad':
    case 'padTurn':
      return toBoatFrame({ x: -kneePad.aftM, y: kneePad.outM, z: kneePad.heightM }, frame);
    case 'rearRest':
    case 'restTurn':
      return toBoatFrame({ x: -rearRest.aftM, y: rearRest.outM, z: rearRest.heightM }, frame);
    default:
      return toBoatFrame({ x: frontFoot.forwardM, y: frontFoot.outM, z: frontFoot.heightM }, frame);
  }
}

/** Arm from the bearing point to a turning handle in the paddler's plan: length and direction from +x toward the kneeling side. */
function arm({ seat, footLength }: SeatPlace, handle: HandleId): { reach: number; turn: number } {
  const { kneePad, rearRest, frontFoot } = seat;
  switch (handle) {
    case 'padTurn':
      return { reach: kneePad.lengthM * 0.55 + BEYOND, turn: Math.PI + toRadians(kneePad.recessTurnDeg) };
    case 'restTurn':
      return { reach: rearRest.widthM / 2 + BEYOND, turn: toRadians(rearRest.turnDeg) - Math.PI / 2 };
    default:
      return { reach: footLength + BEYOND, turn: -toRadians(frontFoot.toeOutDeg) };
  }
}

/** Where a handle stands, boat frame, metres; null for a hand that no paddler holds. */
export function handlePlace(place: SeatPlace, handle: HandleId): BoatPoint | null {
  const bearing = bearingPoint(place, handle);
  switch (handle) {
    case 'kneePad':
    case 'rearRest':
    case 'frontFoot':
      return bearing;
    case 'lowerHand':
      return place.hands?.lower ?? null;
    default: {
      const { reach, turn } = arm(place, handle);
      const sign = sideSign(place.frame.side);
      return {
        ...bearing,
        x: bearing.x + reach * Math.cos(turn),
        y: bearing.y + reach * Math.sin(turn) * sign,
      };
    }
  }
}
