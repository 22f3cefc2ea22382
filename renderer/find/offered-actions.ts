import { useEffect } from 'react';
import { createStore } from 'zustand/vanilla';

/** An action that the finder offers. */
export interface FindAction {
  readonly id: string;
  /** What is done, as one would say it. */
  readonly name: string;
  /** Other words that people look for it by. */
  readonly words?: string;
  readonly run: () => void;
}

/** The actions of the open page, before those that are always there. */
export const offeredActions = createStore<readonly FindAction[]>(() => []);

/** Offers actions as long as the component is on the page. `actions` should be the same array until they change. */
export function useOfferedActions(actions: readonly FindAction[]): void {
  useEffect(() => {
    offeredActions.setState(actions, true);
    return () => {
      if (offeredActions.getState() === actions) offeredActions.setState([], true);
    };
  }, [actions]);
}
