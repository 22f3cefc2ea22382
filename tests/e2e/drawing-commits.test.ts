import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { cases } from '../cases.ts';
import { exampleFit } from '../core/example/example-fit.ts';
import { DrawnBench } from './drawn-bench.ts';
import { handlePlace } from './hand.ts';
import { type RunningProgram, startProgram } from './harness.ts';
import { soon } from './screens.ts';

/** Enough moves of the pointer that one commit a move would be seen at once, and that a second passes meanwhile. */
const MOVES = cases(80, 200);
/** A move of the pointer every frame, milliseconds. */
const FRAME_MS = 16;

let program: RunningProgram;
let page: Page;

/** A page that counts the commits of React from its first script on. */
beforeAll(async () => {
  program = await startProgram();
  page = await program.openBrowser({ reducedMotion: 'reduce', clock: true });
  await page.addInitScript(() => {
    const counted = globalThis as unknown as { commits: number; __REACT_DEVTOOLS_GLOBAL_HOOK__: object };
    counted.commits = 0;
    counted.__REACT_DEVTOOLS_GLOBAL_HOOK__ = {
      supportsFiber: true,
      inject: () => 1,
      onCommitFiberRoot: () => {
        counted.commits += 1;
      },
      onCommitFiberUnmount: () => undefined,
      onPostCommitFiberRoot: () => undefined,
    };
  });
  await page.goto(await program.freshAddress());
});
afterAll(() => program?.dispose());

const commits = () => page.evaluate(() => (globalThis as unknown as { commits: number }).commits);

/** Commits while the page's clock goes on by `MOVES` frames, with `eachFrame` done before each. */
async function commitsDuring(eachFrame: (k: number) => Promise<void>): Promise<number> {
  const before = await commits();
  for (let k = 1; k <= MOVES; k++) {
    await eachFrame(k);
    await page.clock.runFor(FRAME_MS);
  }
  return (await commits()) - before;
}

it(`React commits nothing for ${MOVES} moves of the pointer that it does not commit without them`, async () => {
  await new DrawnBench(page).put(exampleFit());
  await page.locator('.kept[data-keeping="kept"]').waitFor();
  // What the worker finds out comes once after each gesture.
  await page
    .getByRole('button', { name: /^Apply:/ })
    .first()
    .waitFor();
  await soon(() => page.locator('.note-looking', { hasText: /^Looking/ }).count()).toBe(0);
  const { x, y } = await handlePlace(page, 'kneePad/plan');
  // From here on the page's time stands still but for the frames below: its own second hand commits in them too.
  await page.clock.pauseAt(await page.evaluate(() => Date.now() + 1000));
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x - 2, y);
  await page.clock.runFor(10 * FRAME_MS);
  const heldStill = await commitsDuring(async () => undefined);
  const moving = await commitsDuring((k) => page.mouse.move(x - 2 - k / 10, y + (k % 7)));
  // The second hand is counted, so commits are.
  expect(heldStill).toBeGreaterThan(0);
  // A beat of the second hand more or fewer may fall into them, and on a busy machine a late answer of the server.
  expect(Math.abs(moving - heldStill)).toBeLessThanOrEqual(MOVES / 20);
  await page.mouse.up();
});
