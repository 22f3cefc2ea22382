import { revisionMark } from '../../core/document/revision-mark.ts';

/** A revision's number and, behind it, the mark that is the same on every computer: `3 · K7QXM`. */
export function revisionNumber({ id, number }: { readonly id: string; readonly number: number }): string {
  return `${number} · ${revisionMark(id)}`;
}
