import { createStore } from 'zustand/vanilla';
import type { Finding, Severity } from '../../core/findings/finding.ts';

/** Where one margin note stands, for the leader line from it to its part of the drawing. */
export interface NotePlace {
  readonly findingId: string;
  readonly part: Finding['part'];
  readonly severity: Severity;
  /** Height of the note's mark in the page, client pixels; only notes in sight are listed. */
  readonly clientY: number;
}

/**
 * The margin notes in sight, from the top down. The margin writes it (after a gesture, on scrolling and on resizing), the
 * drawing reads it; empty while the margin shows something else.
 */
export const notePlaces = createStore<{ readonly notes: readonly NotePlace[] }>(() => ({ notes: [] }));
