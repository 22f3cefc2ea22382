import { useCallback, useState } from 'react';

/**
 * Entries of a form that outlive a closed or crashed page: they are kept under `name` at every change until they are
 * let go of. `start` is used where nothing was kept.
 */
export function useKeptEntries<T>(
  name: string,
  start: T,
): { entries: T; change: (part: Partial<T>) => void; discard: () => void } {
  const place = `kneelwright.entries.${name}`;
  // A page of an earlier version may have kept fewer fields.
  const [entries, setEntries] = useState<T>(() => ({ ...start, ...kept<T>(place) }));
  const change = useCallback(
    (part: Partial<T>) =>
      setEntries((now) => {
        const next = { ...now, ...part };
        write(place, JSON.stringify(next));
        return next;
      }),
    [place],
  );
  const discard = useCallback(() => write(place, null), [place]);
  return { entries, change, discard };
}

/** Writes a part of entries anew that another page has kept meanwhile; nothing where there are none. */
export function renewKeptEntries<T>(name: string, part: Partial<T>): void {
  const place = `kneelwright.entries.${name}`;
  const now = kept<T>(place);
  if (now) write(place, JSON.stringify({ ...now, ...part }));
}

function kept<T>(place: string): T | null {
  try {
    const text = localStorage.getItem(place);
    return text === null ? null : (JSON.parse(text) as T);
  } catch {
    return null;
  }
}

function write(place: string, text: string | null): void {
  try {
    if (text === null) localStorage.removeItem(place);
    else localStorage.setItem(place, text);
  } catch {
    // A page without storage only forgets unfinished entries.
  }
}
