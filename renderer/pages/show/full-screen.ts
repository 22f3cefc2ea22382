import { useCallback, useEffect, useRef, useState } from 'react';

/** An Escape that a browser has used up to leave full screen may still reach the page this long after, milliseconds. */
const SAME_PRESS_MS = 400;

/**
 * Filling the whole screen: whether it is filled, and a switch. Escape leaves full screen; where the screen is not filled
 * it calls `onLeave`. Full screen ends with the page.
 */
export function useFullScreen(onLeave: () => void): { filled: boolean; toggle: () => void } {
  const [filled, setFilled] = useState(document.fullscreenElement !== null);
  const changedAt = useRef(Number.NEGATIVE_INFINITY);

  useEffect(() => {
    const changed = (event: Event) => {
      changedAt.current = event.timeStamp;
      setFilled(document.fullscreenElement !== null);
    };
    const pressed = (event: KeyboardEvent) => {
      // What is open over the page is closed by the same key; it is asked before it has heard of it.
      if (event.key !== 'Escape' || document.querySelector('[role="dialog"]')) return;
      if (document.fullscreenElement) return void document.exitFullscreen();
      if (event.timeStamp - changedAt.current > SAME_PRESS_MS) onLeave();
    };
    document.addEventListener('fullscreenchange', changed);
    window.addEventListener('keydown', pressed, true);
    return () => {
      document.removeEventListener('fullscreenchange', changed);
      window.removeEventListener('keydown', pressed, true);
    };
  }, [onLeave]);

  useEffect(
    () => () => {
      if (document.fullscreenElement) void document.exitFullscreen();
    },
    [],
  );

  const toggle = useCallback(() => {
    if (document.fullscreenElement) void document.exitFullscreen();
    // A computer that refuses leaves the page as it is, which already fills its window.
    else document.documentElement.requestFullscreen().catch(() => undefined);
  }, []);
  return { filled, toggle };
}
