import { z } from 'zod';
import { label } from './measure-schema.ts';

/** A band set for one athlete in place of the usual one, with the coach's reason. Values in the band's own unit. */
export const bandOverride = z.strictObject({
  quantity: z.string().min(1).max(60),
  min: z.number().nullable(),
  max: z.number().nullable(),
  reason: label,
});

/** A coach's own band for one quantity. */
export type BandOverride = z.infer<typeof bandOverride>;
