import type { CDPSession, Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { exampleFit } from '../core/example/example-fit.ts';
import { DrawnBench, fittings, PAD_AFT } from './drawn-bench.ts';
import { handlePlace, inOneBurst, nextFrame } from './hand.ts';
import { type RunningProgram, startProgram } from './harness.ts';
import { shown, soon } from './screens.ts';

let program: RunningProgram;
let page: Page;
let bench: DrawnBench;

beforeAll(async () => {
  program = await startProgram();
  page = await program.openBrowser({ reducedMotion: 'reduce', clock: true });
  bench = new DrawnBench(page);
});
afterAll(() => program?.dispose());

describe('the keyboard', () => {
  beforeEach(() => bench.put(exampleFit()));

  it('a burst of nudges is one step of undo', async () => {
    const handle = page.locator('[data-grip="kneePad/plan"]');
    await handle.focus();
    await inOneBurst(page, async () => {
      for (let k = 0; k < 12; k++) await page.keyboard.press('ArrowLeft');
    });
    expect(await shown(page, PAD_AFT)).toBeCloseTo(18.7, 9);
    await bench.undo();
    expect(await shown(page, PAD_AFT)).toBe(17.5);
    await bench.nothingToUndo();
  });

  it('nudges ten with Shift, a tenth with Ctrl, and height from the side', async () => {
    await page.locator('[data-grip="kneePad/plan"]').focus();
    await page.keyboard.press('Shift+ArrowRight');
    await page.keyboard.press('Control+ArrowLeft');
    await page.locator('[data-grip="kneePad/profile"]').focus();
    await page.keyboard.press('ArrowUp');
    const { kneePad } = fittings(await bench.kept());
    expect(kneePad.aftM).toBeCloseTo(0.1651, 9);
    expect(kneePad.heightM).toBeCloseTo(0.111, 9);
  });

  it('Tab walks the handles in order, and each says where it is', async () => {
    await page.locator('[data-grip="kneePad/plan"]').focus();
    const walked: string[] = [];
    const label = () => page.evaluate(() => document.activeElement?.getAttribute('aria-label') ?? '');
    for (let k = 0; k < 3; k++) {
      walked.push(await label());
      await page.keyboard.press('Tab');
    }
    expect(walked[0]!.replaceAll('\u{202f}', ' ')).toContain('17.5 cm aft');
    expect(walked[1]).toContain('from the side');
    expect(walked[2]).toContain('Recess');
  });

  it('zooms with + and −; 0 shows the cockpit, again 0 the whole boat', async () => {
    const spread = async () => {
      const [a, b] = [
        await handlePlace(page, 'kneePad/profile'),
        await handlePlace(page, 'lowerHand/profile'),
      ];
      return b.x - a.x;
    };
    const before = await spread();
    await page.locator('[data-grip="kneePad/profile"]').focus();
    await page.keyboard.press('+');
    await nextFrame(page);
    expect((await spread()) / before).toBeCloseTo(1.25, 2);
    await page.keyboard.press('0');
    await nextFrame(page);
    expect(await spread()).toBeCloseTo(before, 1);
    await page.keyboard.press('0');
    await nextFrame(page);
    expect((await spread()) / before).toBeLessThan(0.7);
    await page.keyboard.press('0');
    await nextFrame(page);
    expect(await spread()).toBeCloseTo(before, 1);
  });
});

describe('wheel and finger', () => {
  it('the wheel zooms about the pointer, and plan and profile stay in line', async () => {
    await bench.put(exampleFit());
    const at = await handlePlace(page, 'kneePad/profile');
    await page.mouse.move(at.x, at.y - 60);
    await page.mouse.wheel(0, -200);
    await nextFrame(page);
    const side = await handlePlace(page, 'kneePad/profile');
    const above = await handlePlace(page, 'kneePad/plan');
    expect(Math.abs(side.x - at.x)).toBeLessThan(0.5);
    expect(side.y - at.y).toBeGreaterThan(15);
    expect(Math.abs(above.x - side.x)).toBeLessThan(0.02);
  });

  it('a finger drags a handle; two fingers zoom', async () => {
    const touched = await program.openBrowser({ hasTouch: true, reducedMotion: 'reduce', clock: true });
    await new DrawnBench(touched).put(exampleFit());
    const fingers = await touched.context().newCDPSession(touched);
    const { x, y } = await handlePlace(touched, 'kneePad/plan');
    await touch(fingers, 'touchStart', [{ x: x + 14, y: y + 10 }]);
    for (let k = 1; k <= 10; k++) await touch(fingers, 'touchMove', [{ x: x + 14 - 2 * k, y: y + 10 }]);
    await nextFrame(touched);
    await touch(fingers, 'touchEnd', []);
    expect(await shown(touched, PAD_AFT)).toBeGreaterThan(20);

    const hand = await handlePlace(touched, 'lowerHand/profile');
    const pad = await handlePlace(touched, 'kneePad/profile');
    const middle = { x: (hand.x + pad.x) / 2, y: pad.y - 30 };
    const pinch = (half: number) => [
      { x: middle.x - half, y: middle.y },
      { x: middle.x + half, y: middle.y },
    ];
    await touch(fingers, 'touchStart', pinch(40));
    for (let half = 44; half <= 80; half += 4) await touch(fingers, 'touchMove', pinch(half));
    await touch(fingers, 'touchEnd', []);
    await nextFrame(touched);
    const wider =
      (await handlePlace(touched, 'lowerHand/profile')).x - (await handlePlace(touched, 'kneePad/profile')).x;
    expect(wider / (hand.x - pad.x)).toBeGreaterThan(1.7);
    await touched.context().close();
  });
});

async function touch(
  fingers: CDPSession,
  type: 'touchStart' | 'touchMove' | 'touchEnd',
  touchPoints: { x: number; y: number }[],
): Promise<void> {
  await fingers.send('Input.dispatchTouchEvent', { type, touchPoints });
}

describe('the screen', () => {
  it('is as sharp on a screen of twice the density, also when the window is moved to one', async () => {
    const moved = await program.openBrowser({ viewport: { width: 1100, height: 720 }, clock: true });
    await new DrawnBench(moved).put(exampleFit());
    const sharpness = () =>
      moved.evaluate(() => [...document.querySelectorAll('canvas')].map((c) => c.width / c.clientWidth));
    expect(await sharpness()).toEqual([1, 1, 1, 1]);
    const screen = await moved.context().newCDPSession(moved);
    const metrics = { width: 1100, height: 720, deviceScaleFactor: 2, mobile: false };
    await screen.send('Emulation.setDeviceMetricsOverride', metrics);
    await soon(sharpness).toEqual([2, 2, 2, 2]);
    const inked = await moved.evaluate(() =>
      [...document.querySelectorAll('canvas')].map((canvas) => {
        const { data } = canvas.getContext('2d')!.getImageData(0, 0, canvas.width, canvas.height);
        return data.some((value, k) => k % 4 === 3 && value > 0);
      }),
    );
    expect(inked).toEqual([true, true, true, true]);
    await moved.context().close();
  });
});
