import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, BrowserContext, CDPSession, Page } from 'playwright-core';
import { exampleFit } from '../core/example/example-fit.ts';
import { handlePlace } from '../e2e/hand.ts';
import { type RunningProgram, startProgram } from '../e2e/harness.ts';
import { callFromPage } from '../e2e/screens.ts';
import { launchTestBrowser } from '../e2e/test-browser.ts';
import { timesOf } from './measure.ts';
import { type Fact, type Found, type Row, rowOf } from './row.ts';

const VIEW = { viewport: { width: 1280, height: 800 } };
const STARTS = 5;
const MOVES = 10_000;
const MIB = 2 ** 20;

/** Parts of one start, milliseconds. */
interface Start {
  /** From starting the process to the address it serves. */
  readonly program: number;
  /** From asking for the page to a handle that stands on it, drawn. */
  readonly page: number;
  /** Within `page`, from the same beginning, by the page's own clock. */
  readonly within: PageParts;
}

interface PageParts {
  /** Until its scripts had come. */
  readonly fetched: number;
  /** Until they had run and the document was ready. */
  readonly run: number;
  /** Until something was seen. */
  readonly seen: number;
  /** Scripts that came by then, bytes unpacked. */
  readonly scriptBytes: number;
}

/**
 * From the program's start to a bench that can be dragged, in a browser that is already running: cold (a browser that never
 * saw the page, and nothing kept of what the runtime compiled) and warm (the page in the browser's cache, an earlier start
 * behind it); beside the bare runtime's own start; and the page's memory over ten thousand moves.
 */
export async function startupBench(): Promise<Found> {
  const dataDir = mkdtempSync(join(tmpdir(), 'kneelwright-start-'));
  const browser = await launchTestBrowser();
  try {
    const fitId = await storedFit(browser, dataDir);
    process.env.NODE_DISABLE_COMPILE_CACHE = '1';
    const cold = await starts({ dataDir, fitId, context: () => browser.newContext(VIEW) });
    delete process.env.NODE_DISABLE_COMPILE_CACHE;
    const kept = await browser.newContext(VIEW);
    const [, ...warm] = await starts({ dataDir, fitId, context: async () => kept });
    return {
      rows: [bareRuntime(), ...rowsOf('cold', cold), ...rowsOf('warm', warm)],
      facts: [scriptAtStart(warm), ...(await memory(browser, { dataDir, fitId }))],
    };
  } finally {
    await browser.close();
    rmSync(dataDir, { recursive: true, force: true });
  }
}

/** Keeps a single in a new data folder, and builds the page if it was not built. */
async function storedFit(browser: Browser, dataDir: string): Promise<string> {
  const program = await startProgram({ dataDir });
  try {
    const page = await browser.newPage();
    await page.goto(program.firstAddress);
    return (await callFromPage(page, 'fits.create', { fit: exampleFit() })).id;
  } finally {
    await program.kill();
    await program.dispose();
  }
}

interface Stored {
  readonly dataDir: string;
  readonly fitId: string;
}

async function starts(given: Stored & { context: () => Promise<BrowserContext> }): Promise<Start[]> {
  const found: Start[] = [];
  for (let i = 0; i < STARTS; i++) {
    const page = await (await given.context()).newPage();
    await page.addInitScript(noteFirstFrame);
    const began = performance.now();
    const program = await startProgram({ dataDir: given.dataDir });
    const served = performance.now();
    await openBench(page, program, given.fitId);
    const drawnAt = await page.evaluate(() => (globalThis as unknown as NotedFrame).draggable);
    const shown = drawnAt - performance.timeOrigin - served;
    found.push({ program: served - began, page: shown, within: await partsOf(page, drawnAt) });
    await page.close();
    await program.kill();
    await program.dispose();
  }
  return found;
}

/** When the page had drawn a frame with a handle on it, milliseconds since 1970 by the one clock of this computer. */
interface NotedFrame {
  draggable: Promise<number>;
}

/**
 * Runs in the page before its own scripts. The page notes the instant itself: who asks from outside asks now and then, up to half
 * a second apart, and adds that to what is measured.
 */
function noteFirstFrame(): void {
  (globalThis as unknown as NotedFrame).draggable = new Promise((resolve) => {
    const drawn = () => resolve(performance.timeOrigin + performance.now());
    new MutationObserver((_, observer) => {
      if (!document.querySelector('[data-grip="kneePad/plan"]')) return;
      observer.disconnect();
      // The frame that is being made draws; at the next one it has been drawn.
      requestAnimationFrame(() => requestAnimationFrame(drawn));
    }).observe(document, { childList: true, subtree: true });
  });
}

async function openBench(page: Page, program: RunningProgram, fitId: string): Promise<void> {
  await page.goto(`${program.firstAddress}#/fits/${fitId}`, { waitUntil: 'commit' });
  await handlePlace(page, 'kneePad/plan');
  await page.evaluate(() => new Promise((drawn) => requestAnimationFrame(drawn)));
}

/** The runtime that does nothing: no program of this kind starts sooner. */
function bareRuntime(): Row {
  const taken = Array.from({ length: 2 * STARTS }, () => {
    const began = performance.now();
    execFileSync(process.execPath, ['-e', '0']);
    return performance.now() - began;
  });
  return rowOf('renderer', 'start of the bare runtime', { times: timesOf(taken) });
}

/** Read from the page's own record of how it was loaded, until the instant at which its first frame was drawn. */
function partsOf(page: Page, drawnAt: number): Promise<PageParts> {
  return page.evaluate((until) => {
    const [loading] = performance.getEntriesByType('navigation') as PerformanceNavigationTiming[];
    const resources = performance.getEntriesByType('resource') as PerformanceResourceTiming[];
    const scripts = resources.filter(
      ({ name, responseEnd }) => name.endsWith('.js') && performance.timeOrigin + responseEnd <= until,
    );
    return {
      fetched: Math.max(0, ...scripts.map(({ responseEnd }) => responseEnd)),
      run: loading?.domContentLoadedEventEnd ?? Number.NaN,
      seen: performance.getEntriesByName('first-contentful-paint')[0]?.startTime ?? Number.NaN,
      scriptBytes: scripts.reduce((sum, { decodedBodySize }) => sum + decodedBodySize, 0),
    };
  }, drawnAt);
}

function scriptAtStart(found: readonly Start[]): Fact {
  const value = (found[0]?.within.scriptBytes ?? Number.NaN) / 1024;
  return { group: 'renderer', name: 'page script loaded before the first bench stands', value, unit: 'KiB' };
}

function rowsOf(word: string, found: readonly Start[]): Row[] {
  const row = (name: string, part: (start: Start) => number): Row =>
    rowOf('renderer', `${name}, ${word}`, { times: timesOf(found.map(part)) });
  return [
    row('program start to a draggable bench', (s) => s.program + s.page),
    row('of it: process start to the served address', (s) => s.program),
    row('of it: page asked for to the first draggable frame', (s) => s.page),
    row('  in that: until the scripts had come', (s) => s.within.fetched),
    row('  in that: until they had run', (s) => s.within.run),
    row('  in that: until something was seen', (s) => s.within.seen),
  ];
}

async function memory(browser: Browser, { dataDir, fitId }: Stored): Promise<Found['facts']> {
  const program = await startProgram({ dataDir });
  try {
    const page = await browser.newPage(VIEW);
    await openBench(page, program, fitId);
    const session = await page.context().newCDPSession(page);
    await moveAbout(page, MOVES / 10);
    const before = await heldMiB(session);
    await moveAbout(page, MOVES);
    const after = await heldMiB(session);
    const fact = (name: string, value: number) => ({ group: 'renderer', name, value, unit: 'MiB' }) as const;
    return [
      fact('page’s memory after a thousand moves', before),
      fact('page’s memory after ten thousand more', after),
    ];
  } finally {
    await program.dispose();
  }
}

/** Moves the held pad about, four moves a frame, and lets it go where it was. */
async function moveAbout(page: Page, moves: number): Promise<void> {
  const from = await handlePlace(page, 'kneePad/plan');
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  await page.evaluate(
    async ({ x, y, count }) => {
      const host = document.querySelector('.drawing')!;
      const frame = () => new Promise((done) => requestAnimationFrame(done));
      for (let i = 0; i < count; i++) {
        const [clientX, clientY] = [x - 20 * Math.sin(i / 40), y + 8 * Math.sin(i / 25)];
        const pointer = { pointerId: 1, pointerType: 'mouse', bubbles: true, clientX, clientY };
        host.dispatchEvent(new PointerEvent('pointermove', pointer));
        if (i % 4 === 3) await frame();
      }
    },
    { ...from, count: moves },
  );
  await page.keyboard.press('Escape');
  await page.mouse.up();
}

/** What the page's script holds after collection, MiB. */
async function heldMiB(session: CDPSession): Promise<number> {
  await session.send('HeapProfiler.collectGarbage');
  const { usedSize } = await session.send('Runtime.getHeapUsage');
  return usedSize / MIB;
}
