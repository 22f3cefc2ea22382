import { createStore, type StoreApi } from 'zustand/vanilla';
import type { Grip, HandleId } from '../view/handle.ts';
import type { ScreenPoint } from '../view/screen-point.ts';

/** What the page needs to know of a drag; changes when it starts, ends or moves to another handle. */
export interface InteractionState {
  readonly held: Grip | null;
  /** The handle last taken or focused: the part's card speaks of it. */
  readonly chosen: HandleId;
  /** Counts how often a double-click has asked for the first field of the chosen part. */
  readonly fieldAsked: number;
  readonly touch: boolean;
  /** Why a part could not be dragged (it is locked), until the next press; null for none. */
  readonly refused: string | null;
  /** Where the drawing's menu is asked for, pixels of the drawing, and on which part; null while there is none. */
  readonly menu: (ScreenPoint & { readonly handle: HandleId | null }) | null;
}

export type InteractionStore = StoreApi<InteractionState>;

/** Before any drag: the card shows the knee pad. */
export function createInteractionStore(): InteractionStore {
  return createStore<InteractionState>(() => ({
    held: null,
    chosen: 'kneePad',
    fieldAsked: 0,
    touch: false,
    refused: null,
    menu: null,
  }));
}
