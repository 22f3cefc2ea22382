import type { Page, Route } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { cases } from '../cases.ts';
import { exampleFit, exampleSeat } from '../core/example/example-fit.ts';
import { english } from '../english.ts';
import { notEmpty } from '../not-empty.ts';
import { barriersInBothThemes } from './barriers.ts';
import { handlePlace, nextFrame } from './hand.ts';
import { type RunningProgram, startProgram } from './harness.ts';
import { callFromPage, enter, goTo, measure, shown, soon, textOf } from './screens.ts';

const PAD_AFT = 'Knee pad: Aft of the mark';
const REST_AFT = 'Rear rest: Aft of the mark';

let program: RunningProgram;
let page: Page;

/** Puts a new fit on the bench. */
async function bench(name: string, fit = exampleFit()): Promise<string> {
  const { id } = await callFromPage(page, 'fits.create', { fit: { ...fit, name } });
  await goTo(page, `#/fits/${id}`);
  await page.getByRole('heading', { level: 1, name }).waitFor();
  await measure(page, PAD_AFT).waitFor();
  await page.locator('[data-grip="kneePad/plan"][data-x]').waitFor({ state: 'attached' });
  return id;
}

async function dragPad(px: number, key?: 'Shift'): Promise<void> {
  const { x, y } = await handlePlace(page, 'kneePad/plan');
  await page.mouse.move(x, y);
  await page.mouse.down();
  if (key) await page.keyboard.down(key);
  for (let k = 1; k <= 10; k++) await page.mouse.move(x + (px * k) / 10, y);
  await nextFrame(page);
  if (key) await page.keyboard.up(key);
  await page.mouse.up();
}

beforeAll(async () => {
  program = await startProgram();
  page = await program.openBrowser({ viewport: { width: 1280, height: 800 }, reducedMotion: 'reduce' });
});
afterAll(() => program.dispose());

describe('the hand on the drawing', () => {
  it('drags slowly with Shift: a fifth of the way', async () => {
    await bench('Slow');
    await dragPad(-100, 'Shift');
    const slow = (await shown(page, PAD_AFT)) - 17.5;
    await page.keyboard.press('Control+z');
    await dragPad(-100);
    const usual = (await shown(page, PAD_AFT)) - 17.5;
    expect(slow).toBeGreaterThan(2);
    expect(usual / slow).toBeGreaterThan(3.5);
    expect(usual / slow).toBeLessThan(6.5);
  });

  it('says on the drawing that a locked part is locked', async () => {
    await bench('Locked', exampleFit([exampleSeat({ locks: ['kneePad'] })]));
    await dragPad(-40);
    expect(await shown(page, PAD_AFT)).toBe(17.5);
    await page.locator('.drawing-refused').filter({ hasText: 'Knee pad is locked' }).waitFor();
    expect(await barriersInBothThemes(page)).toEqual([]);
  });

  it('a double-click on a part takes the keyboard to its first field', async () => {
    await bench('Double-click');
    const { x, y } = await handlePlace(page, 'rearRest/plan');
    await page.mouse.dblclick(x, y);
    await soon(() => measure(page, REST_AFT).evaluate((field) => field === document.activeElement)).toBe(
      true,
    );
  });

  it('has a context menu: lock, undo, duplicate', async () => {
    const id = await bench('Menu');
    const { x, y } = await handlePlace(page, 'kneePad/plan');
    await page.mouse.click(x, y, { button: 'right' });
    await page.getByRole('menuitem', { name: 'Lock Knee pad' }).waitFor();
    expect(await barriersInBothThemes(page)).toEqual([]);
    await page.getByRole('menuitem', { name: 'Lock Knee pad' }).click();
    await page.getByRole('button', { name: /^Locked: Knee pad/ }).waitFor();
    await page.mouse.click(x, y, { button: 'right' });
    await page.getByRole('menuitem', { name: /^Undo: lock/ }).click();
    await page.getByRole('button', { name: /^Lock Knee pad/ }).waitFor();
    await page.mouse.click(x, y, { button: 'right' });
    await page.keyboard.press('Escape');
    // The keyboard's menu is of the handle that has the focus, wherever the pointer is.
    await page.locator('[data-grip="rearRest/plan"]').focus();
    await page.keyboard.press('ContextMenu');
    await page.getByRole('menuitem', { name: 'Lock Rear rest' }).waitFor();
    await page.getByRole('menuitem', { name: 'Duplicate this fit' }).click();
    await page.getByRole('heading', { level: 1, name: 'Menu (2)' }).waitFor();
    expect(page.url()).not.toContain(id);
  });

  it('says where everybody sees it that a fit could not be duplicated, until it is', async () => {
    const id = await bench('Refused');
    const refuse = (route: Route) =>
      route.request().postData()?.includes('fits.create') ? route.abort() : route.fallback();
    await page.route('**/call', refuse);
    const { x, y } = await handlePlace(page, 'kneePad/plan');
    const banner = page.locator('.bench-banner');
    const duplicate = async () => {
      await page.mouse.click(x, y, { button: 'right' });
      await page.getByRole('menuitem', { name: english.say('menu.duplicate') }).click();
      await banner.waitFor();
    };
    await duplicate();
    expect(await textOf(banner)).toContain(english.say('error.gone', { saved: english.say('error.saved') }));
    expect(await barriersInBothThemes(page)).toEqual([]);
    await banner.getByRole('button', { name: english.say('menu.close') }).click();
    await soon(() => banner.count()).toBe(0);
    await duplicate();
    await page.unroute('**/call', refuse);
    await banner.getByRole('button', { name: english.say('error.retry') }).click();
    await page.getByRole('heading', { level: 1, name: 'Refused (2)' }).waitFor();
    expect([page.url().includes(id), await banner.count()]).toEqual([false, 0]);
  });

  it('undo is offered again after leaving and coming back', async () => {
    const id = await bench('Undo');
    await enter(page, PAD_AFT, '19');
    await enter(page, PAD_AFT, '20');
    await goTo(page, '#/boats');
    await page.getByRole('heading', { level: 1, name: 'Boats' }).waitFor();
    await goTo(page, `#/fits/${id}`);
    await measure(page, PAD_AFT).waitFor();
    await soon(() => shown(page, PAD_AFT)).toBe(20);
    for (const before of [19, 17.5]) {
      await page.getByRole('button', { name: 'Undo' }).click();
      await soon(() => shown(page, PAD_AFT)).toBe(before);
    }
  });
});

/** The hardest first: the quick run takes that one. */
const WINDOWS = [
  ['800 × 1200', { width: 800, height: 1200 }, 1],
  ['1280 × 800 at 200 %', { width: 640, height: 400 }, 2],
  ['1280 × 800', { width: 1280, height: 800 }, 1],
  ['1024 × 700', { width: 1024, height: 700 }, 1],
] as const;

describe.each(WINDOWS.slice(0, cases(1, 4)))('a window of %s', (_, viewport, deviceScaleFactor) => {
  it('has everything of the bench on the screen, the card whole, and no barrier', async () => {
    const small = await program.openBrowser({ viewport, deviceScaleFactor, reducedMotion: 'reduce' });
    const { id } = await callFromPage(small, 'fits.create', { fit: exampleFit() });
    await goTo(small, `#/fits/${id}`);
    await measure(small, PAD_AFT).waitFor();
    await small.locator('[data-grip="kneePad/plan"][data-x]').waitFor({ state: 'attached' });
    const wide = () => small.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
    expect(await wide()).toBeLessThanOrEqual(0);
    const outside = await small.evaluate(() =>
      [
        ...document.querySelectorAll(
          '.part-card :is(input, button, select, th, td), .title-block *, .tabs [role=tab]',
        ),
      ]
        .map((element) => ({
          name: element.textContent || element.tagName,
          box: element.getBoundingClientRect(),
        }))
        .filter(({ box }) => box.width > 0 && (box.left < -0.5 || box.right > window.innerWidth + 0.5))
        .map(({ name }) => name),
    );
    expect(outside).toEqual([]);
    for (const part of ['Rear rest', 'Front foot', 'Paddle', 'Knee pad']) {
      await small.locator('.part-card').getByRole('tab', { name: part }).click();
      const cut = await small.locator('.part-card').evaluate((card) => card.scrollHeight - card.clientHeight);
      expect(cut, part).toBeLessThanOrEqual(1);
    }
    const menu = small.getByRole('button', { name: 'Menu' });
    if (await menu.isVisible()) {
      await menu.click();
      await small.getByRole('link', { name: 'Boats' }).waitFor();
      const [pages, tools] = await small
        .locator('.sheet-menu')
        .evaluate((box) =>
          ['.sheet-pages a', '.sheet-tools :is(a, button)'].map((found) =>
            [...box.querySelectorAll(found)]
              .slice(0, 4)
              .map((one) => Math.round(one.getBoundingClientRect().top)),
          ),
        );
      // The rows of both columns stand level.
      expect(notEmpty(pages!)).toEqual(tools);
      expect(await wide()).toBeLessThanOrEqual(0);
      await small.keyboard.press('Escape');
    }
    expect(await barriersInBothThemes(small)).toEqual([]);
    await small.context().close();
  });
});

describe('a tablet that is touched', () => {
  it.each([
    { width: 800, height: 1200 },
    { width: 1024, height: 700 },
  ])('has targets of 44 px in card and margin, and the card whole: $width × $height', async (viewport) => {
    const touched = { hasTouch: true, isMobile: true, viewport };
    const tablet = await program.openBrowser({ ...touched, reducedMotion: 'reduce' });
    const { id } = await callFromPage(tablet, 'fits.create', { fit: exampleFit() });
    await goTo(tablet, `#/fits/${id}`);
    await measure(tablet, PAD_AFT).waitFor();
    await tablet.locator('[data-grip="kneePad/plan"][data-x]').waitFor({ state: 'attached' });
    const small = await tablet.evaluate(() =>
      [
        ...document.querySelectorAll(
          ':is(.part-card, .margin) :is(input[role=spinbutton], button, [role=tab], .tick)',
        ),
      ]
        .map((element) => ({
          name: element.textContent || element.ariaLabel,
          box: element.getBoundingClientRect(),
        }))
        .filter(({ box }) => box.height > 0 && box.height < 43.5)
        .map(({ name, box }) => `${name} ${box.height}`),
    );
    expect(small).toEqual([]);
    const cut = await tablet.locator('.part-card').evaluate((card) => card.scrollHeight - card.clientHeight);
    expect(cut).toBeLessThanOrEqual(1);
    await soon(() => tablet.locator('.part-card td').filter({ hasText: /^–$/ }).count()).toBe(0);
    const cells = await tablet
      .locator('.part-card td')
      .evaluateAll((all) =>
        all.map((cell) => [cell.textContent, cell.scrollWidth - cell.clientWidth] as const),
      );
    expect(notEmpty(cells).filter(([, over]) => over > 1)).toEqual([]);
    await tablet.context().close();
  });
});
