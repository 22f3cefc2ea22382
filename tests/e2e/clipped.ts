import type { Page } from 'playwright-core';

/** Texts of the page that are cut off, by their first letters: wider than the box that hides what is over, or than the window. */
export function clippedOn(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const hides = (overflow: string) => overflow === 'hidden' || overflow === 'clip';
    const rolls = (overflow: string) => overflow === 'auto' || overflow === 'scroll';
    const isCut = (rect: DOMRect, from: Element): boolean => {
      for (let box: Element | null = from; box; box = box.parentElement) {
        const { overflowX, overflowY } = getComputedStyle(box);
        const around = box.getBoundingClientRect();
        // A box of a pixel or two is for readers of the screen alone.
        if (around.width <= 2 || around.height <= 2) return false;
        // What lies left of a rolling box's beginning cannot be rolled to.
        if (rolls(overflowX) || rolls(overflowY)) return rect.left + box.scrollLeft < around.left - 1;
        if (hides(overflowX) && (rect.right > around.right + 1 || rect.left < around.left - 1)) return true;
        if (hides(overflowY) && rect.bottom > around.bottom + 4) return true;
      }
      return rect.right > innerWidth + 1 || rect.left < -1;
    };
    const cut: string[] = [];
    const texts = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = texts.nextNode(); node; node = texts.nextNode()) {
      const parent = node.parentElement!;
      if (!node.textContent?.trim() || parent.closest('script, style, svg, option')) continue;
      if (!parent.checkVisibility({ opacityProperty: true, visibilityProperty: true })) continue;
      const range = document.createRange();
      range.selectNodeContents(node);
      if ([...range.getClientRects()].some((rect) => rect.width > 0 && isCut(rect, parent)))
        cut.push(node.textContent.trim().slice(0, 60));
    }
    return [...new Set(cut)];
  });
}
