import { z } from 'zod';
import { boatSchema } from './boat-schema.ts';
import { degrees, label, note } from './measure-schema.ts';
import { seatSchema } from './seat-schema.ts';
import { waterSchema } from './water-schema.ts';

/** Written at the head of every fit, so that a later program knows what it reads. */
export const FIT_FORMAT = 'kneelwright-fit/1';

/**
 * A fit: one boat, and for each of its one to four seats an athlete (or none), a side, fittings and a paddle. It carries its
 * own copy of the boat and the athletes, so a saved revision never changes.
 */
export const fitSchema = z
  .strictObject({
    format: z.literal(FIT_FORMAT),
    name: label,
    boat: boatSchema,
    seats: z.array(seatSchema).min(1).max(4),
    water: waterSchema.prefault({}),
    /** Heel at which the boat is evaluated, positive to starboard; 0 unless the coach sets it. */
    heelDeg: degrees(-30, 30).default(0),
    notes: note.default(''),
  })
  .refine((fit) => fit.seats.length === fit.boat.seats.length, {
    path: ['seats'],
    message: 'fit.entries',
  });

/** A fit with every default filled in. Lengths in metres, masses in kilograms, angles in degrees. */
export type Fit = z.infer<typeof fitSchema>;
/** A fit as a person may write it, defaults left out. */
export type FitInput = z.input<typeof fitSchema>;
