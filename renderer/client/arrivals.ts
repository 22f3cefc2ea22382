import { create } from 'zustand';
import type { CallName } from '../../app/contract/contract.ts';

/** Counts what others' changes have brought here while the page is open. */
const arrivals = create<{ readonly count: number }>(() => ({ count: 0 }));

/** Others' changes have arrived. Lists on the page are fetched again; the open document is left alone. */
export function countArrival(count: number): void {
  if (arrivals.getState().count !== count) arrivals.setState({ count });
}

/** Increases when a list must be fetched again. */
export function useArrivals(name: CallName): number {
  return arrivals(({ count }) => (name.endsWith('.list') ? count : 0));
}
