import { useEffect } from 'react';
import { create } from 'zustand';
import type { CallOutput } from '../../app/contract/contract.ts';
import { somethingArrived } from '../client/arrivals.ts';
import { call } from '../client/client.ts';

export type LibraryState = CallOutput<'library.state'>;

/** How this computer stands to its club's library, as last heard; null before that. */
export const libraryState = create<{ readonly state: LibraryState | null }>(() => ({ state: null }));

/** How often the program is asked, milliseconds. */
const ASK_MS = 3000;

/** Takes over what a call has answered. */
export function heardOfLibrary(state: LibraryState): void {
  libraryState.setState({ state });
  somethingArrived(state.arrivals);
}

/** Asks from time to time, as long as the page is shown. */
export function useLibraryNews(): void {
  useEffect(() => {
    const ask = async () => {
      if (document.hidden) return;
      const answer = await call('library.state', {});
      if (answer.ok) heardOfLibrary(answer.value);
    };
    void ask();
    const timer = setInterval(() => void ask(), ASK_MS);
    return () => clearInterval(timer);
  }, []);
}

/** Tells the library which fit is open here, as long as it is. */
export function useOpenInLibrary(fitId: string): void {
  useEffect(() => {
    void call('library.open', { fitId });
    return () => void call('library.open', { fitId: null });
  }, [fitId]);
}
