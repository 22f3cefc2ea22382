import { useEffect } from 'react';
import { create } from 'zustand';
import type { CallOutput } from '../../app/contract/contract.ts';
import { countArrival } from '../client/arrivals.ts';
import { call } from '../client/client.ts';

export type LibraryState = CallOutput<'library.state'>;

/** How this computer stands to its club's library, as last heard; null before that. */
export const libraryStore = create<{ readonly state: LibraryState | null }>(() => ({ state: null }));

/** How often the program is asked, milliseconds. */
const ASK_MS = 3000;

/** Takes the state from a call's answer. */
export function setLibraryState(state: LibraryState): void {
  libraryStore.setState({ state });
  countArrival(state.arrivals);
}

/** Asks repeatedly while the page is shown. */
export function useLibraryNews(): void {
  useEffect(() => {
    const ask = async () => {
      if (document.hidden) return;
      const answer = await call('library.state', {});
      if (answer.ok) setLibraryState(answer.value);
    };
    void ask();
    const timer = setInterval(() => void ask(), ASK_MS);
    return () => clearInterval(timer);
  }, []);
}

/** The fit that is open on this page; null for none. */
let openHere: string | null = null;

/**
 * Tells the library which fit is open here, as long as it is. After the page is left it stays open until `kept` has settled: what
 * others changed is imported then, and a draft that came after that would be refused.
 */
export function useOpenInLibrary(fitId: string, kept: () => Promise<unknown>): void {
  useEffect(() => {
    openHere = fitId;
    void call('library.open', { fitId });
    return () => {
      openHere = null;
      void tellLeft(kept);
    };
  }, [fitId, kept]);
}

async function tellLeft(kept: () => Promise<unknown>): Promise<void> {
  // Whatever else ends with the page has begun to end by then.
  await Promise.resolve();
  await kept();
  if (openHere === null) await call('library.open', { fitId: null });
}
