import { TAPE_SD } from '../body/tape-sd.ts';
import type { Athlete } from '../document/athlete-schema.ts';
import type { Fit } from '../document/fit-schema.ts';
import { entriesOf } from '../units/entries.ts';

/** An athlete's measures now. */
export interface NewMeasures {
  /** Standing height, metres. */
  readonly statureM: number;
  /** Kilograms. */
  readonly massKg: number;
  readonly measuredOn?: string;
}

/**
 * The athlete as grown: stature and mass as measured now; tape measures taken earlier are scaled with stature. Their doubt
 * (`TAPE_SD` where the reading has none) is widened by half of the growth, so that old readings stay but do not count as new.
 */
export function grownAthlete(athlete: Athlete, now: NewMeasures): Athlete {
  const factor = now.statureM / athlete.statureM;
  const tape = Object.fromEntries(
    entriesOf(athlete.tape).map(([measure, reading]) => {
      const growth = Math.abs(factor - 1) * reading.valueM;
      const sdM = Math.min(0.1, Math.hypot(reading.sdM ?? TAPE_SD[measure], growth / 2));
      return [measure, { ...reading, valueM: reading.valueM * factor, sdM }];
    }),
  ) as Athlete['tape'];
  return { ...athlete, ...now, tape };
}

/** The fit with the athlete of one seat as grown. Fittings stay, so the findings show the effect of growth. */
export function grownFit(fit: Fit, seat: number, now: NewMeasures): Fit {
  return {
    ...fit,
    seats: fit.seats.map((s, i) =>
      i === seat && s.athlete ? { ...s, athlete: grownAthlete(s.athlete, now) } : s,
    ),
  };
}
