import type { Fit } from '../document/fit-schema.ts';
import type { Pins, Seat } from '../document/seat-schema.ts';
import type { Evaluator } from '../evaluation/evaluator.ts';
import type { Report } from '../evaluation/report.ts';
import { midDrive } from '../paddle/mid-drive.ts';
import { STANCE_UNKNOWNS, type StanceUnknown } from '../posture/stance.ts';
import { toDegrees } from '../units/angle.ts';
import type { Tightening } from './best-measurement.ts';
import { type MeasuringGoal, quantityOf } from './measurements.ts';

/** A value that can be read from a photograph of the athlete in the boat: an angle of the posture, or the top hand's height. */
export type Photographed = StanceUnknown | 'topHand';

/** A fit in which a reading has been taken, just as the model expects it. */
export interface TakenReading {
  readonly measure: Photographed;
  readonly fit: Fit;
}

/**
 * Every reading off a photograph that has not been taken of a seat, each as a fit in which it is taken: an angle is held by a pin, the hand's height by the stroke's own entry.
 * Empty where the seat is.
 */
export function readingsOf(fit: Fit, report: Report, athleteOf: number): TakenReading[] {
  const solved = report.seats[athleteOf];
  const seat = fit.seats[athleteOf];
  if (!solved || !seat) return [];
  const taken = (measure: Photographed, part: Partial<Seat>): TakenReading => ({
    measure,
    fit: { ...fit, seats: fit.seats.map((at, i) => (i === athleteOf ? { ...at, ...part } : at)) },
  });
  const angles = STANCE_UNKNOWNS.filter(
    (unknown) => seat.pins[`${unknown}Deg` as keyof Pins] === undefined,
  ).map((unknown) =>
    taken(unknown, {
      pins: { ...seat.pins, [`${unknown}Deg`]: toDegrees(solved.stances.ready.angles[unknown]) },
    }),
  );
  if (seat.stroke.topHandOverM !== undefined) return angles;
  const topHandOverM = midDrive({ ...solved, seat }).topHandOver;
  return [...angles, taken('topHand', { stroke: { ...seat.stroke, topHandOverM } })];
}

/**
 * What each reading off a photograph would do for a quantity's spread, the best first: found by evaluating the fit with
 * the reading taken. Each costs a whole evaluation.
 */
export function photographsFor(
  evaluator: Evaluator,
  { fit, report }: { fit: Fit; report: Report },
  goal: MeasuringGoal,
): Tightening<Photographed>[] {
  const sdNow = quantityOf(report.quantities, goal)?.sd;
  if (sdNow === undefined || sdNow === null) return [];
  return readingsOf(fit, report, goal.athleteOf)
    .map(({ measure, fit: taken }) => {
      const after = quantityOf(evaluator.evaluate(taken).quantities, goal)?.sd;
      return { measure, sdNow, sdAfter: after ?? sdNow };
    })
    .sort((a, b) => a.sdAfter - b.sdAfter);
}
