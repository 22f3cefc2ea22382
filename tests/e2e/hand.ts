import type { Page } from 'playwright-core';

/** Where a handle of the drawing stands on the page, client pixels. `grip` is its name: `kneePad/plan`. */
export async function handlePlace(page: Page, grip: string): Promise<{ x: number; y: number }> {
  const handle = page.locator(`[data-grip="${grip}"]`);
  await handle.waitFor({ state: 'attached' });
  const box = await handle.boundingBox();
  if (!box) throw new Error(`the handle ${grip} is not on the page`);
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

/** Longer than the texts of the page wait between two tellings, milliseconds. */
const TOLD_MS = 60;

/**
 * Lets the page draw, and write, what the last move changed. The page's own timer runs before this one, however busy the
 * machine is: both count on the page's clock, and this one is set later and is longer.
 */
export async function nextFrame(page: Page): Promise<void> {
  await page.evaluate(
    (ms) =>
      new Promise((done) =>
        setTimeout(() => requestAnimationFrame(() => requestAnimationFrame(() => done(null))), ms),
      ),
    TOLD_MS,
  );
}

/**
 * Does something while the page's `performance.now()` stands still, so that keys pressed one after another are one burst on
 * any machine.
 */
export async function inOneBurst(page: Page, press: () => Promise<void>): Promise<void> {
  await page.evaluate(() => {
    const still = performance.now();
    performance.now = () => still;
  });
  await press();
  // Without a property of its own, the object has the real clock again.
  await page.evaluate(() => Reflect.deleteProperty(performance, 'now'));
}
