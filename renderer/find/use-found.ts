import { useEffect, useState } from 'react';
import { useCall } from '../client/use-call.ts';

/** A pause in typing before the store is asked, milliseconds. */
const PAUSE_MS = 120;

/** What the store holds of a text being typed; with no text, what was worked on last. Earlier answers stay meanwhile. */
export function useFound(text: string, limit: number) {
  const [asked, setAsked] = useState(text);
  useEffect(() => {
    const timer = setTimeout(() => setAsked(text), PAUSE_MS);
    return () => clearTimeout(timer);
  }, [text]);
  return useCall('things.find', { text: asked.trim(), limit });
}
