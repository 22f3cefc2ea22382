import { useEffect, useState } from 'react';
import type { Key } from 'react-aria-components';
import { useRoute } from '../../route/route.ts';

/** The leaf of the margin that is open: the one the address names, until another is chosen. */
export function useMarginLeaf(): [leaf: Key, open: (leaf: Key) => void] {
  const route = useRoute();
  const named = route.page === 'fit' ? route.leaf : undefined;
  const [leaf, setLeaf] = useState<Key>(named ?? 'notes');
  useEffect(() => {
    if (named) setLeaf(named);
  }, [named]);
  return [leaf, setLeaf];
}
