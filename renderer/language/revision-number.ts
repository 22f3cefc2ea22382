import { revisionMark } from '../../core/document/revision-mark.ts';

/** A revision's number and, behind it, the mark that is the same on every computer: `3 · K7QXM`, kept on one line. */
export function revisionNumber({ id, number }: { readonly id: string; readonly number: number }): string {
  return `${number}\u{a0}·\u{a0}${revisionMark(id)}`;
}
