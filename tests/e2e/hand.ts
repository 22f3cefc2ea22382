import type { Page } from 'playwright-core';

/** Where a handle of the drawing stands on the page, client pixels. `grip` is its name: `kneePad/plan`. */
export async function handlePlace(page: Page, grip: string): Promise<{ x: number; y: number }> {
  const handle = page.locator(`[data-grip="${grip}"]`);
  await handle.waitFor({ state: 'attached' });
  const box = await handle.boundingBox();
  if (!box) throw new Error(`the handle ${grip} is not on the page`);
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

/** Longer than the texts of the page wait between two tellings, and two frames, milliseconds. */
const TOLD_MS = 100;

/**
 * Lets the page draw, and write, what the last move changed: its clock is put on past the frame and the next telling of its
 * texts, which costs no waiting. Only for pages opened with a `clock` that can be put on.
 */
export async function nextFrame(page: Page): Promise<void> {
  await page.clock.runFor(TOLD_MS);
}

/**
 * Does something while the page's `performance.now()` stands still, so that keys pressed one after another are one burst on
 * any machine.
 */
export async function inOneBurst(page: Page, press: () => Promise<void>): Promise<void> {
  await page.evaluate(() => {
    const still = performance.now();
    Object.assign(globalThis, { running: performance.now });
    performance.now = () => still;
  });
  await press();
  await page.evaluate(() => {
    performance.now = (globalThis as unknown as { running: Performance['now'] }).running;
  });
}

/**
 * Presses a button as soon as it comes onto the page: what it stops may be over before a pointer has travelled there. Ask for this
 * before the act that brings the button.
 */
export async function pressWhenItComes(page: Page, name: string): Promise<void> {
  await page.evaluate(
    (words) =>
      new Promise<void>((pressed) => {
        const look = new MutationObserver(() => {
          const button = [...document.querySelectorAll('button')].find(
            ({ textContent }) => textContent === words,
          );
          if (!button) return;
          look.disconnect();
          button.click();
          pressed();
        });
        look.observe(document.body, { childList: true, subtree: true });
      }),
    name,
  );
}
