import { z } from 'zod';

/** Water the boat floats in. Its density follows EOS-80 (`waterDensity`) unless it was measured. */
export const waterSchema = z.strictObject({
  kind: z.enum(['fresh', 'brackish', 'salt']).default('fresh'),
  temperatureC: z.number().min(-2).max(40).default(15),
  densityKgM3: z.number().min(950).max(1100).optional(),
});

/** The water that the boat floats in. */
export type Water = z.infer<typeof waterSchema>;
