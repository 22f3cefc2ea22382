import { z } from 'zod';
import { id } from './records.ts';

/** What can be changed on two computers at once. */
export const recordKind = z.enum(['athlete', 'boat', 'paddle', 'photo', 'fit', 'trial']);
/** A field's value as JSON text; null where the field was removed. */
const fieldValue = z.string().max(8_000_000).nullable();

/** A field that was changed on two computers, neither knowing of the other. Both values are kept until somebody decides. */
export const fieldConflict = z.strictObject({
  kind: recordKind,
  id,
  /** What the record is called; a trial by its fit, a photograph by its boat. */
  title: z.string(),
  /** The field: names from the outside in, between strokes. */
  path: z.string(),
  /** The one that stands until then, first. */
  values: z.array(
    z.strictObject({
      value: fieldValue,
      /** When it was written, by the clock of the computer on which it was; may be empty. */
      at: z.string(),
      /** Whether it was written on this computer. */
      here: z.boolean(),
    }),
  ),
});

export const conflictChoice = z.strictObject({
  kind: recordKind,
  id,
  path: z.string().max(400),
  value: fieldValue,
});

export type FieldConflictRecord = z.infer<typeof fieldConflict>;
