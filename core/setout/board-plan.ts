import { z } from 'zod';
import { boardHoleSchema } from '../document/boat-schema.ts';
import { label, metres } from '../document/measure-schema.ts';

/** Numbers of holes. */
const numbers = z.array(z.int().min(1).max(400)).max(20);
const letter = z.string().min(1).max(3);

/** A plan of holes for paper: holes by number with the letters of those who use them, people by letter with their holes. Metres, boat frame. */
export const boardPlanSchema = z.strictObject({
  holes: z
    .array(
      z.strictObject({
        number: z.int().min(1).max(400),
        xM: metres(-15, 15),
        yM: metres(-1, 1),
        diameterM: metres(0.002, 0.03),
        drilled: z.boolean(),
        letters: z.array(letter).max(40),
      }),
    )
    .max(400),
  people: z
    .array(
      z.strictObject({
        letter,
        name: label,
        pad: numbers,
        rest: numbers,
        /** Station of the bolts of what stands on rails. */
        padRailsXM: metres(-15, 15).optional(),
        restRailsXM: metres(-15, 15).optional(),
      }),
    )
    .min(1)
    .max(40),
  /** Holes that nobody uses. */
  unused: z.array(boardHoleSchema).max(400).default([]),
});

/** A plan of holes as it goes on paper. */
export type BoardPlan = z.infer<typeof boardPlanSchema>;
