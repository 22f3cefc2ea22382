import { createStore, type StoreApi } from 'zustand/vanilla';
import type { Finding, Severity } from '../../core/evaluation/finding.ts';

/** Where one finding is in the margin, for the leader line to its part of the drawing. */
export interface NotePlace {
  readonly findingId: string;
  readonly part: Finding['part'];
  readonly severity: Severity;
  /** Height of the note's mark in the page, client pixels; only notes in sight are listed. */
  readonly clientY: number;
}

/** What the drawing shows of the stroke. */
export interface StrokeView {
  /** Along the cycle in legs: 0 ready, 1 catch, 2 exit, 3 ready again. */
  readonly at: number;
  /** Figures at catch and exit as dashed outlines beside the one drawn. */
  readonly outlines: boolean;
}

/** The stance that the fittings are set by, alone. */
export const READY_ALONE: StrokeView = { at: 0, outlines: false };

/**
 * What margin and drawing of one bench tell each other without going through the page's components: the findings in
 * sight (the margin writes, the drawing reads), and where the stroke's slider stands.
 */
export interface BenchView {
  readonly notePlaces: StoreApi<{ readonly notes: readonly NotePlace[] }>;
  readonly strokeView: StoreApi<StrokeView>;
}

/** A view with no finding in sight, at the ready stance. */
export function createBenchView(): BenchView {
  return {
    notePlaces: createStore<{ readonly notes: readonly NotePlace[] }>(() => ({ notes: [] })),
    strokeView: createStore<StrokeView>(() => READY_ALONE),
  };
}
