import { useSyncExternalStore } from 'react';
import { screenName } from './screen-scale.ts';

/** A window brought to another screen, or zoomed, tells of it by one of these. */
const EVENTS = ['resize', 'focus', 'pointerenter'] as const;

function listen(changed: () => void): () => void {
  for (const event of EVENTS) window.addEventListener(event, changed);
  return () => {
    for (const event of EVENTS) window.removeEventListener(event, changed);
  };
}

/** The screen that the page is on; the component is drawn again when it is another. */
export function useScreen(): string {
  return useSyncExternalStore(listen, screenName);
}
