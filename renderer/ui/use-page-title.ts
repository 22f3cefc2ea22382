import { useEffect } from 'react';
import { say } from '../language/messages.ts';

/** Sets the window's title to the page's. */
export function usePageTitle(page: string): void {
  useEffect(() => {
    document.title = say('sheet.window', { page });
  }, [page]);
}
