import type { Fit } from '../document/fit-schema.ts';
import { evaluateFit } from '../evaluation/evaluator.ts';
import { findQuantity } from '../evaluation/quantities.ts';
import { seatFrame } from '../evaluation/seat-state.ts';
import { sideSign } from '../frame/mirror.ts';
import type { Standing } from './drilling-model.ts';
import type { DrillingWish } from './drilling-wish.ts';

/** What one paddler gives up for a shared board: the moves of the fittings and their effects. SI, radians. */
export interface GivenUp {
  /** Distance that the knee pad is moved, millimetres. */
  readonly padMm: number;
  /** Distance that the rear rest is moved, millimetres. */
  readonly restMm: number;
  /** Bend of the kneeling knee, the load on it, and the boat's trim: after less before. */
  readonly kneeRad: number;
  /** Newtons; positive is more load on the knee. */
  readonly kneeLoadN: number;
  /** Positive raises the bow. */
  readonly trimRad: number;
}

/** A fit with the fittings of one seat moved as a plan has them. Moves in the boat's frame, metres. */
export function movedFit(
  fit: Fit,
  seat: number,
  moves: Readonly<Partial<Record<DrillingWish['fitting'], Standing>>>,
): Fit {
  const seats = fit.seats.map((at, index) => {
    if (index !== seat) return at;
    const sign = sideSign(seatFrame(fit.boat, at, index).side);
    const moved = <T extends { aftM: number; outM: number }>(part: T, by: Standing | undefined): T =>
      by ? { ...part, aftM: part.aftM - by.dx, outM: part.outM + sign * by.dy } : part;
    return { ...at, kneePad: moved(at.kneePad, moves.kneePad), rearRest: moved(at.rearRest, moves.rearRest) };
  });
  return { ...fit, seats };
}

/** Effect of moving pad and rest of a seat on its paddler and on the boat, by the evaluator. */
export function givenUp(
  fit: Fit,
  seat: number,
  moves: Readonly<Partial<Record<DrillingWish['fitting'], Standing>>>,
): GivenUp {
  const [before, after] = [fit, movedFit(fit, seat, moves)].map((each) => evaluateFit(each).quantities);
  const change = (id: 'kneelingKnee' | 'kneeLoad' | 'trimAngle', of: number | null) =>
    (findQuantity(after!, id, of)?.value ?? 0) - (findQuantity(before!, id, of)?.value ?? 0);
  return {
    padMm: moves.kneePad?.movedMm ?? 0,
    restMm: moves.rearRest?.movedMm ?? 0,
    kneeRad: change('kneelingKnee', seat),
    kneeLoadN: change('kneeLoad', seat),
    trimRad: change('trimAngle', null),
  };
}
