import { useEffect, useState } from 'react';
import { MOST_FOUND } from '../../app/contract/most-found.ts';
import { useCall } from '../client/use-call.ts';

/** A pause in typing before the store is asked, milliseconds. */
const PAUSE_MS = 120;

/**
 * What the store holds of a text being typed, at most `most` things of it, and whether there are `more`; with no text, what was
 * worked on last. Earlier answers stay meanwhile.
 */
export function useFound(text: string, most: number) {
  const [asked, setAsked] = useState(text);
  useEffect(() => {
    const timer = setTimeout(() => setAsked(text), PAUSE_MS);
    return () => clearTimeout(timer);
  }, [text]);
  const found = useCall('things.find', { text: asked.trim(), limit: Math.min(most + 1, MOST_FOUND) });
  return {
    ...found,
    value: found.value?.slice(0, most) ?? null,
    more: (found.value?.length ?? 0) > most,
  };
}
