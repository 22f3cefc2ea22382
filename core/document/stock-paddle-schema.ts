import { z } from 'zod';
import { degrees, label, metres } from './measure-schema.ts';

/** A paddle that the club has. Lengths in metres, the blade's turn in degrees, mass in kilograms. */
export const stockPaddleSchema = z.strictObject({
  id: z.uuid().optional(),
  name: label,
  lengthM: metres(0.8, 2.6),
  bladeLengthM: metres(0.2, 1.2),
  bladeAngleDeg: degrees(-30, 30).default(0),
  massKg: z.number().min(0.2).max(3).default(0.75),
  note: z.string().max(500).default(''),
});

/** A paddle on the shelf. */
export type StockPaddleDocument = z.infer<typeof stockPaddleSchema>;
