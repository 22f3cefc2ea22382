import { useEffect } from 'react';
import { say } from '../language/messages.ts';

/** Names the window after the page. */
export function usePageTitle(page: string): void {
  useEffect(() => {
    document.title = say('sheet.window', { page });
  }, [page]);
}
