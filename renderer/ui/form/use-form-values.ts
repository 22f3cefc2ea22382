import { useCallback, useState } from 'react';

/** Values of a form, and how they change. */
export interface FormValues<T> {
  readonly formValues: T;
  /** Changes some of the values; a function is given those of now. */
  readonly change: (part: Partial<T> | ((now: T) => Partial<T>)) => void;
  /** Forgets what was kept: the values have been saved. */
  readonly discard: () => void;
}

/**
 * Values of a form that outlive a closed or crashed page: they are kept under `name` at every change until they are
 * discarded, or not at all without a name. `start` is used where nothing was kept. Of a `shared` record only what was changed here is
 * kept: all else is as `start` has it when the page is opened again.
 */
export function useFormValues<T>(name: string | null, start: T, shared = false): FormValues<T> {
  const place = placeOf(name);
  const [begun] = useState(shared ? start : null);
  // A page of an earlier version may have kept fewer fields.
  const [formValues, setFormValues] = useState<T>(() => ({ ...start, ...kept<T>(place) }));
  const change = useCallback(
    (part: Partial<T> | ((now: T) => Partial<T>)) =>
      setFormValues((now) => {
        const next = { ...now, ...(typeof part === 'function' ? part(now) : part) };
        write(place, JSON.stringify(begun ? changedIn(next, begun) : next));
        return next;
      }),
    [place, begun],
  );
  const discard = useCallback(() => write(place, null), [place]);
  return { formValues, change, discard };
}

function changedIn<T>(next: T, begun: T): Partial<T> {
  const changed: Partial<T> = {};
  for (const key in next)
    if (JSON.stringify(next[key]) !== JSON.stringify(begun[key])) changed[key] = next[key];
  return changed;
}

/** Writes a part of the values again that another page has kept meanwhile; nothing where there are none. */
export function renewFormValues<T>(name: string, part: Partial<T>): void {
  const place = placeOf(name);
  const now = kept<T>(place);
  if (now) write(place, JSON.stringify({ ...now, ...part }));
}

function placeOf(name: string | null): string | null {
  return name === null ? null : `kneelwright.entries.${name}`;
}

function kept<T>(place: string | null): T | null {
  try {
    const text = place && localStorage.getItem(place);
    return text ? (JSON.parse(text) as T) : null;
  } catch {
    return null;
  }
}

function write(place: string | null, text: string | null): void {
  if (place === null) return;
  try {
    if (text === null) localStorage.removeItem(place);
    else localStorage.setItem(place, text);
  } catch {
    // A page without storage only forgets unfinished values.
  }
}
