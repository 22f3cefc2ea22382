import { createStore, type StoreApi } from 'zustand/vanilla';
import type { Grip, HandleId } from '../view/handle.ts';

/** What the page needs to know of the hand; changes when it takes hold, lets go or moves to another handle. */
export interface HandState {
  readonly held: Grip | null;
  /** The handle last held, pointed at or focused: what the hand's note speaks of. */
  readonly chosen: HandleId;
  readonly touch: boolean;
}

export type HandStore = StoreApi<HandState>;

/** A hand that has held nothing yet: its note speaks of the knee pad. */
export function createHandStore(): HandStore {
  return createStore<HandState>(() => ({ held: null, chosen: 'kneePad', touch: false }));
}
