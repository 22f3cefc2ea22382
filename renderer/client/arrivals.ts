import { create } from 'zustand';
import type { CallName } from '../../app/contract/contract.ts';

/** Counts what others' changes have brought here while the page is open. */
const arrivals = create<{ readonly count: number }>(() => ({ count: 0 }));

/** Something of others has come. Lists that are shown are asked for again; what is worked on is left alone. */
export function somethingArrived(count: number): void {
  if (arrivals.getState().count !== count) arrivals.setState({ count });
}

/** Grows when a list has to be asked for again. */
export function useArrivals(name: CallName): number {
  return arrivals(({ count }) => (name.endsWith('.list') ? count : 0));
}
