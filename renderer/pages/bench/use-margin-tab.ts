import { useEffect, useState } from 'react';
import type { Key } from 'react-aria-components';
import { useRoute } from '../../route/route.ts';

/** The open tab of the margin: the one in the address, until another is chosen. */
export function useMarginTab(): [tab: Key, open: (tab: Key) => void] {
  const route = useRoute();
  const named = route.page === 'fit' ? route.tab : undefined;
  const [tab, setTab] = useState<Key>(named ?? 'notes');
  useEffect(() => {
    if (named) setTab(named);
  }, [named]);
  return [tab, setTab];
}
