import { z } from 'zod';
import { label } from '../../core/document/measure-schema.ts';

/** A table of text cells to be handed to the person as a CSV file; the first row holds the headings. */
export const tableToExport = z.strictObject({
  /** Name of the file, without its ending. */
  name: label,
  rows: z
    .array(z.array(z.string().max(10_000)).max(200))
    .min(1)
    .max(20_000),
});
