import { z } from 'zod';
import { type Athlete, athleteSchema } from './athlete-schema.ts';
import { isoDate } from './measure-schema.ts';

const { statureM, massKg, tape } = athleteSchema.shape;

/** What an athlete measured on one day: metres and kilograms. Null where it was not taken that day. */
export const measuringSchema = z
  .strictObject({ takenOn: isoDate, statureM: statureM.nullable(), massKg: massKg.nullable(), tape })
  .refine((taken) => taken.statureM !== null || taken.massKg !== null || Object.keys(taken.tape).length > 0, {
    message: 'measuring.nothing',
  });

/** One day's measuring of an athlete. */
export type Measuring = z.infer<typeof measuringSchema>;

/**
 * What an athlete's own document says was measured, on its day of measuring or, where it names none, on `day`
 * (`YYYY-MM-DD`).
 */
export function measuringOf(athlete: Athlete, day: string): Measuring {
  const { measuredOn, statureM, massKg, tape } = athlete;
  return { takenOn: measuredOn ?? day, statureM, massKg, tape };
}
