import { useSyncExternalStore } from 'react';
import { screenName } from './screen-scale.ts';

/** A window brought to another screen, or zoomed, tells of it by one of these. The pointer enters the page, not the window. */
function listen(changed: () => void): () => void {
  const page = document.documentElement;
  window.addEventListener('resize', changed);
  window.addEventListener('focus', changed);
  page.addEventListener('pointerenter', changed);
  return () => {
    window.removeEventListener('resize', changed);
    window.removeEventListener('focus', changed);
    page.removeEventListener('pointerenter', changed);
  };
}

/** The screen that the page is on; the component is drawn again when it is another. */
export function useScreen(): string {
  return useSyncExternalStore(listen, screenName);
}
