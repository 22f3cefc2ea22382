import type { Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { evaluateFit } from '../../core/fit/evaluator.ts';
import type { Fit } from '../../core/fit/fit-schema.ts';
import { handlePlace, nextFrame } from './hand.ts';
import { type RunningProgram, startProgram } from './harness.ts';
import { callFromPage, numberIn, textOf } from './screens.ts';

let program: RunningProgram;
let page: Page;
let fitId: string;

beforeAll(async () => {
  program = await startProgram();
  page = await program.openBrowser({ viewport: { width: 1280, height: 800 } });
  fitId = (await callFromPage(page, 'demo.install', {})).fitId;
});

afterAll(() => program?.dispose());

/** A fresh bench: the fit as its newest revision says, no steps to undo. */
beforeEach(async () => {
  await page.keyboard.up('Alt');
  await callFromPage(page, 'drafts.discard', { id: fitId });
  await page.goto(`${program.origin}/#/fits/${fitId}`);
  await page.reload();
  await page.locator('[data-grip="kneePad/plan"]').waitFor({ state: 'attached' });
  await nextFrame(page);
});

async function kept(): Promise<Fit> {
  await page.locator('.kept[data-keeping="kept"]').waitFor();
  return (await callFromPage(page, 'fits.open', { id: fitId })).fit;
}

const pad = async () => (await kept()).seats[0]!.kneePad;
const undo = () => page.keyboard.press('Control+z');
const undoButton = () => page.getByRole('button', { name: 'Undo', exact: true });
const quantity = async (id: string) =>
  numberIn(await textOf(page.locator(`[data-quantity="${id}"] .value-number`)));

/** Drags a grip through a path of offsets, pixels, with Alt held so that holes and rails leave the hand free. */
async function drag(grip: string, path: readonly { x: number; y: number }[], steps = 4): Promise<void> {
  const from = await handlePlace(page, grip);
  await page.keyboard.down('Alt');
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  for (const { x, y } of path) await page.mouse.move(from.x + x, from.y + y, { steps });
  await nextFrame(page);
  await page.mouse.up();
  await page.keyboard.up('Alt');
  await nextFrame(page);
}

describe('the hand', () => {
  it('two hundred moves of one drag are one step of undo', async () => {
    const before = await pad();
    const path = Array.from({ length: 50 }, (_, i) => ({ x: -i, y: 6 * Math.sin(i / 6) }));
    await drag('kneePad/plan', path, 4);
    expect((await pad()).aftM).toBeGreaterThan(before.aftM + 0.03);
    await undo();
    await nextFrame(page);
    expect(await pad()).toEqual(before);
    expect(await undoButton().isDisabled()).toBe(true);
  });

  it('Escape puts everything back exactly, and leaves nothing to undo', async () => {
    const before = await kept();
    const from = await handlePlace(page, 'kneePad/plan');
    await page.mouse.move(from.x, from.y);
    await page.mouse.down();
    await page.mouse.move(from.x - 60, from.y + 20, { steps: 12 });
    await nextFrame(page);
    await page.keyboard.press('Escape');
    await page.mouse.up();
    await nextFrame(page);
    expect(await undoButton().isDisabled()).toBe(true);
    expect(await kept()).toEqual(before);
    const after = await handlePlace(page, 'kneePad/plan');
    expect(after).toEqual(from);
  });

  it('a burst of nudges is one step of undo', async () => {
    const before = await pad();
    await page.locator('[data-grip="kneePad/plan"]').focus();
    for (let i = 0; i < 8; i++) await page.keyboard.press('Alt+ArrowUp');
    expect((await pad()).outM).toBeCloseTo(before.outM + 0.008, 6);
    await undo();
    expect(await pad()).toEqual(before);
    expect(await undoButton().isDisabled()).toBe(true);
  });

  it('arrow keys move by 1 mm, with Shift 10 mm, with Control a tenth', async () => {
    const before = (await pad()).outM;
    await page.locator('[data-grip="kneePad/plan"]').focus();
    await page.keyboard.press('Alt+ArrowUp');
    await page.keyboard.press('Alt+Shift+ArrowUp');
    await page.keyboard.press('Alt+Control+ArrowDown');
    expect((await pad()).outM).toBeCloseTo(before + 0.001 + 0.01 - 0.0001, 6);
  });

  it('dragging in profile and in plan agree', async () => {
    const before = await pad();
    await drag('kneePad/plan', [{ x: -40, y: 0 }]);
    const inPlan = (await pad()).aftM;
    await undo();
    await nextFrame(page);
    await drag('kneePad/profile', [{ x: -40, y: 0 }]);
    const inProfile = (await pad()).aftM;
    expect(inPlan).toBeGreaterThan(before.aftM);
    expect(inProfile).toBeCloseTo(inPlan, 6);
  });

  it('snaps to the hardware’s holes, and with Alt leaves them', async () => {
    const from = await handlePlace(page, 'kneePad/profile');
    await page.mouse.move(from.x, from.y);
    await page.mouse.down();
    await page.mouse.move(from.x - 13, from.y, { steps: 5 });
    await nextFrame(page);
    await page.mouse.up();
    const holes = (await pad()).aftM / 0.01;
    expect(holes).toBeCloseTo(Math.round(holes), 6);
  });

  it('a locked fitting stays where it is and says so', async () => {
    const before = await pad();
    await page
      .getByRole('button', { name: /^Lock Knee pad/i })
      .or(page.getByText('Lock', { exact: true }))
      .first()
      .click();
    await drag('kneePad/plan', [{ x: -40, y: 0 }]);
    expect(await pad()).toEqual(before);
    expect(await textOf(page.locator('#spoken'))).toMatch(/locked/i);
  });
});

describe('what is drawn', () => {
  it('a drag across the whole range never shows NaN, and every step is what the core says', async () => {
    await page.getByRole('tab', { name: 'Values' }).click();
    const from = await handlePlace(page, 'kneePad/plan');
    await page.keyboard.down('Alt');
    await page.mouse.move(from.x, from.y);
    await page.mouse.down();
    const knees: number[] = [];
    for (let x = -160; x <= 160; x += 8) {
      await page.mouse.move(from.x + x, from.y);
      await nextFrame(page);
      const text = await textOf(page.locator('.margin'));
      expect(text).not.toMatch(/NaN|Infinity|undefined/);
      knees.push(await quantity('frontKnee'));
    }
    await page.mouse.up();
    await page.keyboard.up('Alt');
    // From far aft to far forward the front knee closes step by step: no jump is a flipped limb.
    for (let i = 1; i < knees.length; i++) expect(Math.abs(knees[i]! - knees[i - 1]!)).toBeLessThan(12);
    const now = evaluateFit(await kept()).quantities.find((q) => q.id === 'frontKnee')!.value;
    expect(Math.abs(knees.at(-1)! - (now * 180) / Math.PI)).toBeLessThanOrEqual(0.5001);
  });

  it('the wheel zooms all views about the pointer and 0 shows everything again', async () => {
    const before = await handlePlace(page, 'kneePad/plan');
    const rest = await handlePlace(page, 'rearRest/plan');
    await page.mouse.move(before.x, before.y);
    await page.mouse.wheel(0, -300);
    await nextFrame(page);
    const apart = (a: { x: number }, b: { x: number }) => Math.abs(a.x - b.x);
    expect(
      apart(await handlePlace(page, 'kneePad/plan'), await handlePlace(page, 'rearRest/plan')),
    ).toBeGreaterThan(1.2 * apart(before, rest));
    const inPlan = await handlePlace(page, 'kneePad/plan');
    const inProfile = await handlePlace(page, 'kneePad/profile');
    expect(inProfile.x).toBeCloseTo(inPlan.x, 0);
    await page.locator('[data-grip="kneePad/plan"]').focus();
    await page.keyboard.press('0');
    await nextFrame(page);
    expect(await handlePlace(page, 'kneePad/plan')).toEqual(before);
  });
});

describe('a finger', () => {
  it('drags the pad as a mouse does', async () => {
    const touch = await program.openBrowser({ viewport: { width: 1280, height: 800 }, hasTouch: true });
    await touch.goto(`${program.origin}/#/fits/${fitId}`);
    await touch.locator('[data-grip="kneePad/plan"]').waitFor({ state: 'attached' });
    await nextFrame(touch);
    const before = (await callFromPage(touch, 'fits.open', { id: fitId })).fit.seats[0]!.kneePad;
    const at = await handlePlace(touch, 'kneePad/plan');
    const client = await touch.context().newCDPSession(touch);
    const send = (type: 'touchStart' | 'touchMove' | 'touchEnd', x?: number) =>
      client.send('Input.dispatchTouchEvent', { type, touchPoints: x === undefined ? [] : [{ x, y: at.y }] });
    await send('touchStart', at.x + 8);
    for (let x = 0; x >= -60; x -= 6) {
      await send('touchMove', at.x + 8 + x);
      await nextFrame(touch);
    }
    await send('touchEnd');
    await touch.locator('.kept[data-keeping="kept"]').waitFor();
    await touch.waitForTimeout(1200);
    const after = (await callFromPage(touch, 'fits.open', { id: fitId })).fit.seats[0]!.kneePad;
    expect(after.aftM).toBeGreaterThan(before.aftM);
  });
});
