import { useEffect, useState } from 'react';
import type { CallOutput } from '../../../../app/contract/contract.ts';
import { call } from '../../../client/client.ts';

type Opened = CallOutput<'revisions.open'>;

/** Revisions never change: what was fetched once holds. */
const fetched = new Map<string, Promise<Opened | null>>();

/** Fetches a revision once; null where there is none or it does not read. */
export function fetchRevision(id: string): Promise<Opened | null> {
  const known = fetched.get(id);
  if (known) return known;
  const asked = call('revisions.open', { id }).then((result) => (result.ok ? result.value : null));
  fetched.set(id, asked);
  void asked.then((opened) => opened ?? fetched.delete(id));
  return asked;
}

/** A revision with its fit; undefined while it is awaited, null where there is none or it does not read. */
export function useTried(id: string | null): Opened | null | undefined {
  const [opened, setOpened] = useState<{ id: string; value: Opened | null } | null>(null);
  useEffect(() => {
    if (id === null) return;
    let wanted = true;
    void fetchRevision(id).then((value) => wanted && setOpened({ id, value }));
    return () => {
      wanted = false;
    };
  }, [id]);
  if (id === null) return null;
  return opened?.id === id ? opened.value : undefined;
}
