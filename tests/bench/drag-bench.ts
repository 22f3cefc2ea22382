import type { Page } from 'playwright-core';
import { startProgram } from '../e2e/harness.ts';
import { callFromPage } from '../e2e/screens.ts';
import { type Row, timesOf } from './measure.ts';

const SECONDS = 10;

/** Drags the pad about for ten seconds in a headless browser; gives script time per frame of the hand and frame intervals. */
export async function dragBench(): Promise<{ rows: Row[]; facts: Record<string, number> }> {
  const program = await startProgram();
  try {
    const page = await program.openBrowser({ viewport: { width: 1280, height: 800 } });
    const { fitId } = await callFromPage(page, 'demo.install', {});
    const summaries = await callFromPage(page, 'fits.list', {});
    const pair = summaries.find((fit) => fit.athleteNames.length > 1)!.id;
    const single = await dragged(page, `${program.origin}/?measure#/fits/${fitId}`);
    const crew = await dragged(page, `${program.origin}/?measure#/fits/${pair}`);
    const row = (name: string, milliseconds: readonly number[]): Row => ({
      group: 'renderer',
      name,
      ...timesOf(milliseconds),
      ratio: null,
    });
    const inFrame = (frames: readonly number[]) => frames.filter((f) => f <= 17.5).length / frames.length;
    return {
      rows: [
        row('script of a drag frame, single', single.script),
        row('frame interval in a drag, single', single.frames),
        row('script of a drag frame, pair', crew.script),
        row('frame interval in a drag, pair', crew.frames),
      ],
      facts: {
        'share of frames within one 60 Hz frame, single': inFrame(single.frames),
        'share of frames within one 60 Hz frame, pair': inFrame(crew.frames),
        'first draggable frame after opening the page, ms': single.openedMs,
        'memory after the drag over memory before': single.memoryRatio,
      },
    };
  } finally {
    await program.dispose();
  }
}

interface Dragged {
  readonly script: number[];
  readonly frames: number[];
  readonly openedMs: number;
  readonly memoryRatio: number;
}

async function dragged(page: Page, address: string): Promise<Dragged> {
  await page.goto('about:blank');
  const opening = performance.now();
  await page.goto(address);
  const grip = page.locator('[data-grip="kneePad/plan"]');
  await grip.waitFor({ state: 'attached' });
  const openedMs = performance.now() - opening;
  await page.waitForTimeout(1500);
  const box = (await grip.boundingBox())!;
  const from = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
  await page.keyboard.down('Alt');
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  const found = await page.evaluate(moveAbout, { ...from, seconds: SECONDS });
  await page.mouse.up();
  await page.keyboard.up('Alt');
  return { ...found, openedMs };
}

/** Runs in the page: pointer moves faster than frames, the hand's own measures, and the intervals between frames. */
async function moveAbout({ x, y, seconds }: { x: number; y: number; seconds: number }) {
  const host = document.querySelector('.drawing')!;
  const used = () =>
    (performance as unknown as { memory?: { usedJSHeapSize: number } }).memory?.usedJSHeapSize ?? 1;
  performance.clearMeasures();
  const before = used();
  const frames: number[] = [];
  let last = performance.now();
  let going = true;
  const tick = () => {
    const now = performance.now();
    frames.push(now - last);
    last = now;
    if (going) requestAnimationFrame(tick);
  };
  requestAnimationFrame(tick);
  const start = performance.now();
  for (let t = 0; t < seconds; t = (performance.now() - start) / 1000) {
    const [clientX, clientY] = [x - 40 * Math.sin(3 * t), y + 12 * Math.sin(5 * t)];
    const options = { pointerId: 1, pointerType: 'mouse', bubbles: true, altKey: true, clientX, clientY };
    host.dispatchEvent(new PointerEvent('pointermove', options));
    await new Promise((resolve) => setTimeout(resolve, 8));
  }
  going = false;
  const script = performance
    .getEntriesByName('hand')
    .map(({ duration }) => duration)
    .filter((duration) => duration > 0.1);
  return { script, frames: frames.slice(1), memoryRatio: used() / before };
}
