import { useLayoutEffect } from 'react';

/**
 * Marks the head with `data-narrow` while its words do not fit beside each other: the window is narrow, a page brought tools of
 * its own, or a language has long words. The mark is a style alone, so React does not draw for it.
 */
export function useNarrowHead(head: React.RefObject<HTMLElement | null>): void {
  useLayoutEffect(() => {
    const element = head.current;
    if (!element) return;
    let frame = 0;
    const measure = () => {
      delete element.dataset.narrow;
      if (element.scrollWidth > element.clientWidth) element.dataset.narrow = '';
    };
    const later = () => {
      cancelAnimationFrame(frame);
      frame = requestAnimationFrame(measure);
    };
    const sizes = new ResizeObserver(measure);
    sizes.observe(element);
    const words = new MutationObserver(later);
    words.observe(element, { childList: true, characterData: true, subtree: true });
    void document.fonts.ready.then(later);
    measure();
    return () => {
      cancelAnimationFrame(frame);
      sizes.disconnect();
      words.disconnect();
    };
  }, [head]);
}
