import type { Page } from 'playwright-core';
import type { Fit } from '../../core/document/fit-schema.ts';
import { exampleFit, exampleSeat } from '../core/example/example-fit.ts';
import { handlePlace } from '../e2e/hand.ts';
import { startProgram } from '../e2e/harness.ts';
import { callFromPage, goTo } from '../e2e/screens.ts';

/** Median and 95th percentile of some durations, milliseconds, and how many there were. */
export interface Spread {
  readonly median: number;
  readonly p95: number;
  readonly count: number;
}

/** What one scripted drag of ten seconds cost. */
export interface DragRow {
  readonly what: string;
  /** Script for each pointer move: noting it, the core, and drawing; per animation frame that had moves. */
  readonly scriptMs: Spread;
  /** Between one animation frame and the next. */
  readonly frameMs: Spread;
  /** Share of frames that came within 60 Hz, to a millisecond: script, layout and, without a graphics processor, the pixels. */
  readonly framesInTime: number;
  /** Share of moves whose script alone stayed within a frame of 60 Hz: what a machine with a graphics processor has left to do. */
  readonly scriptInTime: number;
  /**
   * Processor time of the page's main thread for each drawn move, milliseconds: script, style and layout, and the rest,
   * which is painting and, without a graphics processor, filling the pixels. Time that others had the processor is left
   * out, so that it means something on a busy machine. It is a mean: labels and figures beside the drawing, which follow 20
   * times a second, the garbage collector, code that is not compiled yet, and the moves that this bench sends are all in it.
   */
  readonly mainMs: { readonly script: number; readonly layout: number; readonly paint: number };
}

const DRAG_MS = 10_000;
/** A mouse reports about every 8 ms. */
const MOVES_A_FRAME = 2;
/** One frame of 60 Hz and a millisecond for the clock's grain. */
const IN_TIME_MS = 17.7;
const RADIUS_PX = 22;

/** Drags the knee pad round and round for ten seconds in a real browser, in a single and in a four. */
export async function dragBench(): Promise<readonly DragRow[]> {
  const program = await startProgram();
  try {
    const page = await program.openBrowser({ viewport: { width: 1280, height: 800 } });
    const address = new URL(page.url());
    address.searchParams.set('measure', '');
    await page.goto(address.href);
    const crew = ['left', 'right', 'left', 'right'] as const;
    return [
      await dragRow(page, 'single, 1280 × 800', exampleFit()),
      await dragRow(page, 'four, 1280 × 800', exampleFit(crew.map((side) => exampleSeat({ side })))),
    ];
  } finally {
    await program.dispose();
  }
}

async function dragRow(page: Page, what: string, fit: Fit): Promise<DragRow> {
  const { id } = await callFromPage(page, 'fits.create', { fit: { ...fit, name: what } });
  await goTo(page, `#/fits/${id}`);
  await page.getByText(what).first().waitFor();
  await page.waitForTimeout(1500);
  const { x, y } = await handlePlace(page, 'kneePad/plan');
  await page.mouse.move(x, y);
  await page.mouse.down();
  await startRecording(page);
  const readMain = await mainThreadOf(page);
  const before = await readMain();
  await dragAbout(page, { x, y });
  const after = await readMain();
  const { frames, scripts } = await recorded(page);
  await page.keyboard.press('Escape');
  await page.mouse.up();
  return {
    what,
    scriptMs: spread(scripts),
    frameMs: spread(frames),
    framesInTime: shareInTime(frames),
    scriptInTime: shareInTime(scripts),
    mainMs: perMove(before, after, Math.max(1, scripts.length)),
  };
}

/**
 * Moves the held part round and round, `MOVES_A_FRAME` moves to each animation frame as a mouse reports them. The page sends them to
 * itself: asked for one by one from outside, a busy machine lets a tenth of them through, and script that seldom runs is never compiled.
 */
async function dragAbout(page: Page, at: { x: number; y: number }): Promise<void> {
  await page.evaluate(
    async ({ x, y, radius, moves, lasts }) => {
      const host = document.querySelector('.drawing')!;
      const frame = () => new Promise((done) => requestAnimationFrame(done));
      const start = performance.now();
      for (let now = start; now - start < lasts; now = performance.now()) {
        for (let k = 0; k < moves; k++) {
          const turn = (now - start + 8 * k) / 400;
          const [clientX, clientY] = [x + radius * Math.sin(turn), y + (radius / 3) * Math.sin(turn * 1.7)];
          host.dispatchEvent(
            new PointerEvent('pointermove', {
              pointerId: 1,
              pointerType: 'mouse',
              bubbles: true,
              clientX,
              clientY,
            }),
          );
        }
        await frame();
      }
    },
    { ...at, radius: RADIUS_PX, moves: MOVES_A_FRAME, lasts: DRAG_MS },
  );
}

type MainThread = Readonly<Record<'task' | 'script' | 'layout', number>>;

/** Reads how much processor time the page's main thread has had so far, seconds. */
async function mainThreadOf(page: Page): Promise<() => Promise<MainThread>> {
  const session = await page.context().newCDPSession(page);
  await session.send('Performance.enable', { timeDomain: 'threadTicks' });
  return async () => {
    const { metrics } = await session.send('Performance.getMetrics');
    const value = (name: string) => metrics.find((metric) => metric.name === name)?.value ?? 0;
    return {
      task: value('TaskDuration'),
      script: value('ScriptDuration'),
      layout: value('LayoutDuration') + value('RecalcStyleDuration'),
    };
  };
}

function perMove(before: MainThread, after: MainThread, moves: number): DragRow['mainMs'] {
  const ms = (name: keyof MainThread) => (1000 * (after[name] - before[name])) / moves;
  const [script, layout] = [ms('script'), ms('layout')];
  return { script, layout, paint: ms('task') - script - layout };
}

interface Recording {
  stop: boolean;
  frames: number[];
}

async function startRecording(page: Page): Promise<void> {
  await page.evaluate(() => {
    performance.clearMeasures();
    const recording: Recording = { stop: false, frames: [] };
    (globalThis as unknown as { recording: Recording }).recording = recording;
    let last = 0;
    const frame = (now: number) => {
      if (last > 0) recording.frames.push(now - last);
      last = now;
      if (!recording.stop) requestAnimationFrame(frame);
    };
    requestAnimationFrame(frame);
  });
}

/** Frame intervals, and for each frame that made a drawing the script time of that drawing and the moves before it. */
async function recorded(page: Page): Promise<{ frames: number[]; scripts: number[] }> {
  return page.evaluate(() => {
    const { recording } = globalThis as unknown as { recording: Recording };
    recording.stop = true;
    const scripts: number[] = [];
    let noted = 0;
    for (const { duration, detail } of performance.getEntriesByName('hand') as PerformanceMeasure[]) {
      noted += duration;
      if (detail !== 'drawn') continue;
      scripts.push(noted);
      noted = 0;
    }
    return { frames: recording.frames, scripts };
  });
}

function shareInTime(values: readonly number[]): number {
  return values.filter((ms) => ms <= IN_TIME_MS).length / Math.max(1, values.length);
}

function spread(values: readonly number[]): Spread {
  const sorted = [...values].sort((a, b) => a - b);
  const at = (share: number) => sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? 0;
  return { median: at(0.5), p95: at(0.95), count: sorted.length };
}
