import { z } from 'zod';
import { isoDate } from './measure-schema.ts';

/** How many terms of the stance's objective describe how a person prefers to kneel. They come first among the terms. */
export const NEUTRAL_TERMS = 10;

/**
 * An athlete's own neutral posture, learnt from photographs: how far each of the first ten terms of the stance's objective lies
 * from the general value, in tolerances of that term, and the root of their covariance (ten columns of ten, one after another).
 */
export const neutralSchema = z.strictObject({
  learntOn: isoDate,
  /** From how many pictures. */
  pictures: z.int().min(1).max(10_000),
  strays: z.array(z.number().min(-8).max(8)).length(NEUTRAL_TERMS),
  roots: z.array(z.number().min(-2).max(2)).length(NEUTRAL_TERMS * NEUTRAL_TERMS),
  /** Kept, but not used for new stances. */
  setAside: z.boolean().default(false),
});

/** An athlete's own neutral posture. */
export type OwnNeutral = z.infer<typeof neutralSchema>;
