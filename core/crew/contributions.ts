import type { Fit } from '../document/fit-schema.ts';
import type { Report } from '../evaluation/report.ts';
import { GRAVITY } from '../units/gravity.ts';

/** The part of one paddler with paddle in the boat's trim and balance, ready stance. */
export interface Contribution {
  /** Index of the seat, bow first. */
  readonly seat: number;
  /** Paddler and paddle together. */
  readonly massKg: number;
  /** Moment about the centre of flotation, N·m: positive lifts the bow (weight aft of it). */
  readonly trimMoment: number;
  /** Effect of that moment on bow over stern, metres. */
  readonly bowOverStern: number;
  /** Moment about the centreline, N·m, positive to the left. */
  readonly sideMoment: number;
  /** Change of bow over stern when this paddler moves aft with the whole setting, metres per metre. */
  readonly trimPerMetre: number;
}

/**
 * One row for each occupied seat, from the boat at rest with the crew ready. Empty when the boat does not float. First order
 * about the present attitude (moment to change trim; naval architecture, any textbook).
 */
export function contributions(fit: Fit, report: Report): Contribution[] {
  const afloat = report.afloat.ready;
  if (afloat.kind !== 'afloat') return [];
  const perMoment = 0.01 / afloat.momentPerCentimetreTrim;
  return fit.seats.flatMap((_, seat) => {
    const stance = report.seats[seat]?.stances.ready;
    if (!stance) return [];
    const weight = stance.totalMassKg * GRAVITY;
    const trimMoment = weight * (afloat.waterplane.lcf - stance.centreOfMass.x);
    return [
      {
        seat,
        massKg: stance.totalMassKg,
        trimMoment,
        bowOverStern: trimMoment * perMoment,
        sideMoment: weight * stance.centreOfMass.y,
        trimPerMetre: weight * perMoment,
      },
    ];
  });
}
