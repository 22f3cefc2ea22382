import { useCallback, useState } from 'react';

/** Values of a form, and how they change. */
export interface FormValues<T> {
  readonly formValues: T;
  /** Changes some of the values; a function is given those of now. */
  readonly change: (part: Partial<T> | ((now: T) => Partial<T>)) => void;
  /** Forgets what was kept: the values have been saved. */
  readonly discard: () => void;
  /** Of a shared record: what the form starts with, and that as it was when the unfinished values were begun. */
  readonly begun?: { readonly start: T; readonly was: T };
}

/** In what is kept: the values that those changed here had before. */
const BEFORE = '_before';
type Kept<T> = Partial<T> & { readonly [BEFORE]?: Partial<T> };

/**
 * Values of a form that outlive a closed or crashed page: they are kept under `name` at every change until they are
 * discarded, or not at all without a name. `start` is used where nothing was kept. Of a `shared` record only what was changed here is
 * kept, and what it was before: all else is as `start` has it when the page is opened again.
 */
export function useFormValues<T>(name: string | null, start: T, shared = false): FormValues<T> {
  const place = placeOf(name);
  const [opened] = useState(() => {
    const { [BEFORE]: before = {}, ...part } = kept<Kept<T>>(place) ?? {};
    return { start, before: before as Partial<T>, part: part as Partial<T> };
  });
  // A page of an earlier version may have kept fewer fields.
  const [formValues, setFormValues] = useState<T>(() => ({ ...start, ...opened.part }));
  const change = useCallback(
    (part: Partial<T> | ((now: T) => Partial<T>)) =>
      setFormValues((now) => {
        const next = { ...now, ...(typeof part === 'function' ? part(now) : part) };
        write(place, JSON.stringify(shared ? toKeep(next, opened) : next));
        return next;
      }),
    [place, shared, opened],
  );
  const discard = useCallback(() => write(place, null), [place]);
  const begun = { start: opened.start, was: { ...opened.start, ...opened.before } };
  return { formValues, change, discard, ...(shared ? { begun } : {}) };
}

/** What differs from the start, and what it was before it was changed: here, or on a page that was left with it. */
function toKeep<T>(next: T, { start, before }: { start: T; before: Partial<T> }): Kept<T> {
  const [changed, was]: Partial<T>[] = [{}, {}];
  for (const key in next) {
    if (JSON.stringify(next[key]) === JSON.stringify(start[key])) continue;
    changed![key] = next[key];
    was![key] = key in before ? before[key]! : start[key];
  }
  return { ...changed, [BEFORE]: was } as Kept<T>;
}

/** Writes a part of the values again that another page has kept meanwhile; nothing where there are none. */
export function renewFormValues<T>(name: string, part: Partial<T>): void {
  const place = placeOf(name);
  const now = kept<T>(place);
  if (now) write(place, JSON.stringify({ ...now, ...part }));
}

/** Under which unfinished values of all forms are kept. */
export const ENTRIES = 'kneelwright.entries.';

function placeOf(name: string | null): string | null {
  return name === null ? null : `${ENTRIES}${name}`;
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
