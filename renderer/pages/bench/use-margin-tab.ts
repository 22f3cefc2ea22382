import { useEffect, useState } from 'react';
import type { Key } from 'react-aria-components';
import { useRoute } from '../../route/route.ts';

/** The tab of the margin that is open: the one the address names, until another is chosen. */
export function useMarginTab(): [tab: Key, open: (tab: Key) => void] {
  const route = useRoute();
  const named = route.page === 'fit' ? route.tab : undefined;
  const [tab, setTab] = useState<Key>(named ?? 'notes');
  useEffect(() => {
    if (named) setTab(named);
  }, [named]);
  return [tab, setTab];
}
