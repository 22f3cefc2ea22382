import type { Words } from '../text/words.ts';

/** What every exported sheet says of itself: which fit, at which revision, of when, for whom. */
export interface SheetStamp {
  /** Names as the documents have them. */
  readonly fitName: string;
  readonly boatName: string;
  readonly athleteName: string;
  /** Revision number, or null for a draft that is not saved as a revision yet. */
  readonly revision: number | null;
  /** The revision's mark, the same on every computer: see `revisionMark`. Left out for a draft. */
  readonly mark?: string;
  /** What the revision was called when it was saved. */
  readonly revisionName: string;
  /** When that revision (or draft) was kept, ISO 8601; every date on the sheet is this one. */
  readonly keptAt: string;
}

/** The revision in words: `revision 7 K7QXM, pad back`, or `no revision`. */
export function revisionText({ revision, mark, revisionName }: SheetStamp, words: Words): string {
  const number =
    revision === null
      ? words.say('work-title.draft')
      : words.say('work-title.revision-number', { number: revision, mark: mark ?? '' }).trim();
  return revisionName ? words.say('work-title.named', { revision: number, name: revisionName }) : number;
}

/** The day of the revision, `2026-05-04`, in UTC so that it is the same everywhere. */
export function stampDay({ keptAt }: SheetStamp): string {
  return keptAt.slice(0, 10);
}

/** The stamp in one line. */
export function stampLine(stamp: SheetStamp, words: Words): string {
  return words.beside([stamp.athleteName, stamp.boatName, revisionText(stamp, words), stampDay(stamp)]);
}
