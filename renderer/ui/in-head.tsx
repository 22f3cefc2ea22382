import { useEffect, useState } from 'react';
import { createPortal } from 'react-dom';

/** Puts a page's own controls into their place in the head, once that is there. */
export function InHead({ placeId, children }: { placeId: string; children: React.ReactNode }) {
  const [place, setPlace] = useState<HTMLElement | null>(null);
  useEffect(() => setPlace(window.document.getElementById(placeId)), [placeId]);
  return place && createPortal(children, place);
}
