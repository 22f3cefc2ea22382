import type { Fit } from '../document/fit-schema.ts';
import type { Pins, Seat } from '../document/seat-schema.ts';
import { STANCE_UNKNOWNS } from '../posture/stance.ts';
import { toDegrees } from '../units/angle.ts';
import type { SeenPosture } from './posture-from-marks.ts';
import type { SeenMoment } from './seen-moment.ts';

/** How much a posture differs from one look to the next, degrees (estimate: the athlete's own sway and settling). */
export const DAY_SD_DEG = 1;

/** The least and most that a reading's spread is written as, degrees. */
const SD_RANGE_DEG = [0.1, 25] as const;

/** A posture that was seen, to be taken into a fit. */
export interface TakenPosture {
  /** Index of the seat. */
  readonly seat: number;
  /** The moment of the stroke: it decides what of the posture can be kept. */
  readonly phase: SeenMoment;
  /** What was read off the pictures. */
  readonly posture: SeenPosture;
  /** The day of the picture, `YYYY-MM-DD`. */
  readonly takenOn?: string;
}

/**
 * The fit with a seen posture taken as measurements. Ready: each angle that the marks inform is held where it was seen, with its own
 * spread and that of one look to the next (1°). Catch and exit: the trunk's pitch and the turn of the shoulders. In the middle of
 * the drive: the top hand's height over the shoulders. Degrees and metres, rounded to what a document carries.
 */
export function measuredFit(fit: Fit, taken: TakenPosture): Fit {
  return {
    ...fit,
    seats: fit.seats.map((seat, i) => (i === taken.seat ? measuredSeat(seat, taken) : seat)),
  };
}

/** A seat with what was seen: angles of the ready stance as pins, of catch and exit as the stroke's own. */
function measuredSeat(seat: Seat, taken: TakenPosture): Seat {
  const { phase, posture } = taken;
  const { angles, shoulderTurn, topHandOver } = posture;
  const stroke = (more: Seat['stroke']): Seat => ({ ...seat, stroke: { ...seat.stroke, ...more } });
  const pitch = held(toDegrees(angles.trunkPitch), -20, 90);
  if (phase === 'ready') return pinnedSeat(seat, taken);
  if (phase === 'catch')
    return stroke({ catchPitchDeg: pitch, catchRotationDeg: held(toDegrees(shoulderTurn.value), -20, 90) });
  if (phase === 'exit')
    return stroke({ exitPitchDeg: pitch, exitRotationDeg: held(toDegrees(shoulderTurn.value), -60, 60) });
  return stroke({ topHandOverM: Math.round(1000 * Math.min(0.6, Math.max(-0.3, topHandOver.value))) / 1000 });
}

/**
 * A seat with its angles pinned, each with the reading and its doubt. A day's own scatter is added to the picture's
 * doubt.
 */
function pinnedSeat(seat: Seat, { posture, takenOn }: TakenPosture): Seat {
  const pins: Record<string, number> = { ...seat.pins };
  const readings: NonNullable<Seat['pinReadings']> = { ...seat.pinReadings };
  for (const name of STANCE_UNKNOWNS) {
    const sd = posture.measuredSd[name];
    if (sd === undefined) continue;
    const key = `${name}Deg` as keyof Pins;
    const atDeg = held(toDegrees(posture.angles[name]), -60, 80);
    const sdDeg = Math.min(SD_RANGE_DEG[1], Math.max(SD_RANGE_DEG[0], Math.hypot(toDegrees(sd), DAY_SD_DEG)));
    pins[key] = atDeg;
    readings[key] = { atDeg, sdDeg: Math.round(100 * sdDeg) / 100, ...(takenOn && { takenOn }) };
  }
  return { ...seat, pins, pinReadings: readings };
}

/** To a tenth of a degree, and within what a document may carry. */
function held(degrees: number, low: number, high: number): number {
  return Math.min(high, Math.max(low, Math.round(10 * degrees) / 10));
}
