import type { Locator, Page } from 'playwright-core';

/** A person's hand on the page that counts what it does: a click, a pick or an entry filled in is one interaction each. */
export interface CountedHand {
  readonly count: () => number;
  readonly click: (target: Locator) => Promise<void>;
  /** Fills an entry in, as its label names it. */
  readonly fill: (label: string, text: string) => Promise<void>;
}

export function countedHand(page: Page): CountedHand {
  let done = 0;
  return {
    count: () => done,
    click: async (target) => {
      done += 1;
      await target.click();
    },
    fill: async (label, text) => {
      done += 1;
      await page.getByLabel(label, { exact: true }).fill(text);
    },
  };
}
