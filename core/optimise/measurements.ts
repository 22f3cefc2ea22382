import { BODY_LENGTHS, type BodyEstimate, type BodyLength } from '../body/body.ts';
import { bodyInputOf, bodyOfAthlete } from '../body/body-of-athlete.ts';
import { tapeIndex } from '../body/body-prior.ts';
import { bodySpread } from '../body/estimate-body.ts';
import { TAPE_SD } from '../body/tape-sd.ts';
import { type Athlete, TAPE_MEASURES, type TapeMeasure } from '../document/athlete-schema.ts';
import type { Fit } from '../document/fit-schema.ts';
import { boatState } from '../evaluation/boat-state.ts';
import { computeBoat } from '../evaluation/computed-fit.ts';
import type { Quantity } from '../evaluation/finding.ts';
import type { Report } from '../evaluation/report.ts';
import { seatFrame, solveSeat } from '../evaluation/seat-state.ts';
import { type MeasureModel, type Tightening, tightenings } from './best-measurement.ts';

/** The quantity to narrow, and the athlete to be measured. */
export interface MeasuringGoal {
  /** Id of the quantity; `seat` is the quantity's own, null for one of the boat. */
  readonly quantity: Pick<Quantity, 'id' | 'seat'>;
  /** Seat of the athlete who would be measured. */
  readonly athleteOf: number;
}

/** Half-step of the central difference of a body length, metres. */
const HALF_STEP = 0.002;

/**
 * Which tape measure, not yet taken, would narrow a quantity most: every one with the quantity's standard deviation now and
 * after, the best first. Slopes to the body lengths by central differences of the whole pipeline; the rest of the quantity's
 * variance (`report` has it) stays as it is. Empty where the seat is empty or the quantity was not computed.
 */
export function measurementsFor(fit: Fit, report: Report, goal: MeasuringGoal): Tightening<TapeMeasure>[] {
  const athlete = fit.seats[goal.athleteOf]?.athlete;
  const sd = quantityOf(report.quantities, goal)?.sd;
  if (!athlete || sd === undefined || sd === null) return [];
  return tightenings({ slopes: slopesToLengths(fit, goal), variance: sd ** 2 }, untaken(athlete));
}

/** The quantity that a goal speaks of; undefined where it was not computed. */
export function quantityOf(
  quantities: readonly Quantity[],
  { quantity }: MeasuringGoal,
): Quantity | undefined {
  return quantities.find((q) => q.id === quantity.id && q.seat === quantity.seat);
}

/**
 * Change of the quantity per metre of each body length, in the order of `BODY_LENGTHS`: two solves of one seat for each of
 * fourteen lengths. If a quantity cannot be computed with a changed length (the boat swamps), its slope counts as 0.
 */
function slopesToLengths(fit: Fit, goal: MeasuringGoal): number[] {
  const boat = boatState(fit);
  const bodies = fit.seats.map(({ athlete }) => (athlete ? bodyOfAthlete(athlete) : null));
  const solved = (index: number, body: BodyEstimate | null) =>
    body
      ? solveSeat({ seat: fit.seats[index]!, body, frame: seatFrame(fit.boat, fit.seats[index]!, index) })
      : null;
  const seats = bodies.map((body, index) => solved(index, body));
  const own = bodies[goal.athleteOf]!;
  const valueWith = (body: BodyEstimate) => {
    const moved = seats.map((seat, i) => (i === goal.athleteOf ? solved(i, body) : seat));
    return quantityOf(computeBoat(boat, moved, null).quantities, goal)?.value ?? Number.NaN;
  };
  return BODY_LENGTHS.map((name) => {
    const change = valueWith(longer(own, name, HALF_STEP)) - valueWith(longer(own, name, -HALF_STEP));
    return Number.isFinite(change) ? change / (2 * HALF_STEP) : 0;
  });
}

/** The body with one length longer. */
function longer(body: BodyEstimate, name: BodyLength, by: number): BodyEstimate {
  const estimate = body.lengths[name];
  return { ...body, lengths: { ...body.lengths, [name]: { ...estimate, value: estimate.value + by } } };
}

/** The measures that are not taken yet, from the body's joint spread, with the doubt of a reading added. */
function untaken(athlete: Athlete): MeasureModel<TapeMeasure>[] {
  const { covariance } = bodySpread(bodyInputOf(athlete));
  return TAPE_MEASURES.filter((measure) => !athlete.tape[measure]).map((measure) => {
    const row = covariance[tapeIndex(measure)]!;
    return {
      measure,
      withLengths: row.slice(0, BODY_LENGTHS.length),
      variance: row[tapeIndex(measure)]! + TAPE_SD[measure] ** 2,
    };
  });
}
