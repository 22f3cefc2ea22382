import { z } from 'zod';

/** What every exported sheet says of itself: which fit, at which revision, of when, for whom. */
export const sheetStampSchema = z.strictObject({
  fitName: z.string().max(200),
  boatName: z.string().max(200),
  athleteName: z.string().max(200),
  /** Revision number, or null for a draft that is not saved as a revision yet. */
  revision: z.int().min(1).nullable(),
  revisionName: z.string().max(200),
  /** When that revision (or draft) was kept; every date on the sheet is this one. */
  keptAt: z.iso.datetime(),
});

export type SheetStamp = z.infer<typeof sheetStampSchema>;

/** The revision in words: `revision 7`, or `draft after revision 7` as the page named it. */
export function revisionText({ revision, revisionName }: SheetStamp): string {
  if (revision === null) return revisionName || 'draft';
  return revisionName ? `revision ${revision}, ${revisionName}` : `revision ${revision}`;
}

/** The day of the revision, `2026-05-04`, in UTC so that it is the same everywhere. */
export function stampDay({ keptAt }: SheetStamp): string {
  return keptAt.slice(0, 10);
}

/** The stamp in one line. */
export function stampLine(stamp: SheetStamp): string {
  return [stamp.athleteName, stamp.boatName, revisionText(stamp), stampDay(stamp)]
    .filter(Boolean)
    .join(' · ');
}
