import { revisionMark } from '../../core/document/revision-mark.ts';

/** A revision's number and, behind it, the mark that is the same on every computer: `3 · K7QXM`, kept on one line. */
export function revisionNumber({ id, number }: { readonly id: string; readonly number: number }): string {
  return `${number}\u{a0}·\u{a0}${revisionMark(id)}`;
}

/** A revision's name; a dash for whoever may not read it in the club's library. */
export function revisionName({ name }: { readonly name: string }): string {
  return name === '' ? '–' : name;
}
