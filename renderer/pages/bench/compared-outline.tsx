import { useEffect } from 'react';
import type { Fit } from '../../../core/document/fit-schema.ts';
import { useDocument, useFit } from '../../bench/bench-context.tsx';

/** Keeps a compared revision drawn as a dashed outline, also after edits, until comparing ends. */
export function ComparedOutline({ older }: { older: Fit }) {
  const document = useDocument();
  const fit = useFit((state) => state.fit);
  // biome-ignore lint/correctness/useExhaustiveDependencies: an edit drops every outline; this one comes back after it
  useEffect(() => {
    document.showGhost(older);
  }, [document, older, fit]);
  useEffect(() => () => document.showGhost(null), [document]);
  return null;
}
