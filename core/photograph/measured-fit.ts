import type { Fit } from '../document/fit-schema.ts';
import { type Pins, pinsSchema, type Seat, strokeSchema } from '../document/seat-schema.ts';
import { STANCE_UNKNOWNS } from '../posture/stance.ts';
import { toDegrees } from '../units/angle.ts';
import type { SeenPosture } from './posture-from-marks.ts';
import type { SeenMoment } from './seen-moment.ts';

/** Standard deviation of a posture from one picture to the next, degrees (estimate: the athlete's own sway and settling). */
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
 * The fit with a seen posture as measurements. Ready: each angle that the marks inform is held at its seen value, with its own
 * spread and that from one picture to the next (1°). Catch and exit: the trunk's pitch and the turn of the shoulders. In the
 * middle of the drive: the top hand's height over the shoulders. Degrees and metres, rounded to what a document carries.
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
  const pitch = toDegrees(angles.trunkPitch);
  const turn = toDegrees(shoulderTurn.value);
  if (phase === 'ready') return pinnedSeat(seat, taken);
  if (phase === 'catch')
    return stroke({
      catchPitchDeg: own('catchPitchDeg', pitch),
      catchRotationDeg: own('catchRotationDeg', turn),
    });
  if (phase === 'exit')
    return stroke({
      exitPitchDeg: own('exitPitchDeg', pitch),
      exitRotationDeg: own('exitRotationDeg', turn),
    });
  return stroke({ topHandOverM: own('topHandOverM', topHandOver.value, 1000) });
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
    const limits = pinsSchema.shape[key].unwrap();
    const atDeg = within(toDegrees(posture.angles[name]), { limits, steps: 10 });
    const sdDeg = Math.min(SD_RANGE_DEG[1], Math.max(SD_RANGE_DEG[0], Math.hypot(toDegrees(sd), DAY_SD_DEG)));
    pins[key] = atDeg;
    readings[key] = { atDeg, sdDeg: Math.round(100 * sdDeg) / 100, ...(takenOn && { takenOn }) };
  }
  return { ...seat, pins, pinReadings: readings };
}

/** A value of the stroke as its document takes it: in `1 / steps` of its unit, within its limits. */
function own(name: keyof Seat['stroke'], value: number, steps = 10): number {
  return within(value, { limits: strokeSchema.shape[name].unwrap(), steps });
}

/** A value rounded to `1 / steps` and brought within a schema's limits. */
function within(value: number, { limits, steps }: { limits: Limits; steps: number }): number {
  const { minValue, maxValue } = limits;
  const rounded = Math.round(steps * value) / steps;
  return Math.min(maxValue ?? rounded, Math.max(minValue ?? rounded, rounded));
}

/** Limits of a number in a document; null is open. */
type Limits = { readonly minValue: number | null; readonly maxValue: number | null };
