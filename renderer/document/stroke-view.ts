import { createStore } from 'zustand/vanilla';

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
 * Where along the stroke the drawing stands. The stroke's leaf writes it while it is open, the drawing and the plots read
 * it; like the hand's moves it never goes through the page's components.
 */
export const strokeView = createStore<StrokeView>(() => READY_ALONE);
