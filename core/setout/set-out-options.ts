import { z } from 'zod';
import { SHEET_UNITS } from './sheet-length.ts';

/**
 * What the builder chooses: how lengths are written, the foam that lines the recess, the bolts, and the paddler's knee
 * across its knuckles where it was measured (null: estimated from the body). Metres.
 */
export const setOutOptionsSchema = z.strictObject({
  units: z.enum(SHEET_UNITS).default('mm'),
  foamM: z.number().min(0).max(0.03).default(0.01),
  boltM: z.number().min(0.003).max(0.012).default(0.006),
  kneeBreadthM: z.number().min(0.05).max(0.18).nullable().default(null),
});

/** Choices with every default filled in: 10 mm foam, 6 mm bolts, knee breadth estimated. */
export type SetOutOptions = z.infer<typeof setOutOptionsSchema>;
