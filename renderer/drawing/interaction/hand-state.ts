import { createStore, type StoreApi } from 'zustand/vanilla';
import type { Grip, HandleId } from '../view/handle.ts';

/** What the page needs to know of the hand; changes when it takes hold, lets go or moves to another handle. */
export interface HandState {
  readonly held: Grip | null;
  /** The handle last taken or focused: the part's card speaks of it. */
  readonly chosen: HandleId;
  /** Counts how often a double-click has asked for the first field of the chosen part. */
  readonly fieldAsked: number;
  readonly touch: boolean;
}

export type HandStore = StoreApi<HandState>;

/** A hand that has held nothing yet: the card speaks of the knee pad. */
export function createHandStore(): HandStore {
  return createStore<HandState>(() => ({ held: null, chosen: 'kneePad', fieldAsked: 0, touch: false }));
}
