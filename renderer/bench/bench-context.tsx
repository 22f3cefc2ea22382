import { createContext, useContext } from 'react';
import { type StoreApi, useStore } from 'zustand';
import type { BenchView } from '../document/bench-view.ts';
import type { FitDocument, FitState } from '../document/fit-document.ts';
import type { SlowAnswers } from '../document/slow-answers.ts';

export interface Bench {
  readonly document: FitDocument;
  readonly answers: StoreApi<SlowAnswers>;
  readonly view: BenchView;
}

const BenchContext = createContext<Bench | null>(null);
export const BenchProvider = BenchContext.Provider;

function useBench(): Bench {
  const bench = useContext(BenchContext);
  if (!bench) throw new Error('used outside the bench');
  return bench;
}

/** The document on the bench. */
export function useDocument(): FitDocument {
  return useBench().document;
}

/** A part of the document's state; drawn again when that part changes, which is never during a gesture's moves. */
export function useFit<T>(select: (state: FitState) => T): T {
  return useStore(useBench().document, select);
}

/** Whether the bench only shows a saved revision: it has no record to save to, and nothing is edited. */
export function useIsLooking(): boolean {
  return useFit(({ fitId }) => fitId === '');
}

/** What margin and drawing of the bench tell each other. */
export function useBenchView(): BenchView {
  return useBench().view;
}

/** A part of the slow answers: suggestions, and what one centimetre does. */
export function useSlow<T>(select: (answers: SlowAnswers) => T): T {
  return useStore(useBench().answers, select);
}
