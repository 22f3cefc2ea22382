import { z } from 'zod';
import { photoStudySchema } from '../../core/photograph/photo-study-schema.ts';
import { id, instant } from './records.ts';

export const photoMime = z.enum(['image/jpeg', 'image/png', 'image/webp']);
export const photoCaption = z.string().trim().max(200);
/** Whom a photograph shows in the boat, for which fit, and what was marked in it. Left out of a photograph of the boat alone. */
export const photoSubject = {
  athleteId: id.optional(),
  fitId: id.optional(),
  study: photoStudySchema.optional(),
};
/** What is written of a photograph: all of it that can be changed. */
export const photoText = z.strictObject({ caption: photoCaption, ...photoSubject });
/** A picture as Base64 text; the largest that a call takes. The store's own limit is lower. */
export const photoData = z.base64().max(8 * 1024 * 1024);

/** A photograph of a boat or of an athlete in it, without its bytes. */
export const photoRecord = z.strictObject({
  id,
  boatId: id,
  caption: photoCaption,
  mime: photoMime,
  /** How many bytes it has. */
  bytes: z.int().min(0),
  addedAt: instant,
  ...photoSubject,
});

export type PhotoMime = z.infer<typeof photoMime>;
export type PhotoRecord = z.infer<typeof photoRecord>;
