import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { exampleFit } from '../core/example/example-fit.ts';
import { type RunningProgram, startProgram } from './harness.ts';
import { callFromPage, enter, goTo, soon } from './screens.ts';

let program: RunningProgram;
let page: Page;
let fitId: string;

beforeAll(async () => {
  program = await startProgram();
  page = await program.openBrowser({ viewport: { width: 1280, height: 900 }, reducedMotion: 'reduce' });
  fitId = (await callFromPage(page, 'fits.create', { fit: exampleFit() })).id;
  await goTo(page, `#/fits/${fitId}/full-size`);
  await page.locator('.full-size-drawing').waitFor();
});
afterAll(() => program.dispose());

const status = () => page.locator('.measure-screen [role="status"]').textContent();

/** Pixels to a millimetre of the drawing: its width on the page over its own width in millimetres. */
async function drawnScale(): Promise<number> {
  const drawing = page.locator('.full-size-drawing svg');
  const [, , width] = (await drawing.getAttribute('viewBox'))!.split(' ').map(Number);
  return (await drawing.boundingBox())!.width / width!;
}

async function barScale(): Promise<number> {
  return ((await page.locator('.check-bar path').boundingBox())!.width - 1.4) / 100;
}

describe('full size on the screen', () => {
  it('says plainly that a screen not measured', async () => {
    expect(await status()).toContain('not measured');
    expect(await page.locator('.check-bar').textContent()).toContain('not checked');
    expect(await drawnScale()).toBeCloseTo(96 / 25.4, 2);
    expect(await page.getByRole('button', { name: 'Save for this screen' }).isDisabled()).toBe(true);
  });

  it('is measured with a ruler: the drawing and its check bar are then at that scale', async () => {
    await enter(page, 'Length of the bar', '91 mm');
    await page.getByRole('button', { name: 'Save for this screen' }).click();
    await soon(status).toContain('At full size');
    expect(await drawnScale()).toBeCloseTo(400 / 91, 2);
    expect(await barScale()).toBeCloseTo(400 / 91, 1);
  });

  it('is measured with a card: its frame is 85.60 × 53.98 mm at the scale of the drawing', async () => {
    await page.getByRole('button', { name: 'Measure again' }).click();
    const frame = page.locator('.card-frame');
    const before = (await frame.boundingBox())!;
    const width = page.getByLabel('Width of the frame');
    await width.focus();
    for (let k = 0; k < 20; k++) await page.keyboard.press('ArrowRight');
    const after = (await frame.boundingBox())!;
    expect(after.width - before.width).toBeGreaterThan(10);
    expect(after.width / after.height).toBeCloseTo(85.6 / 53.98, 3);
    await page.getByRole('button', { name: 'Save for this screen' }).click();
    await soon(status).toContain('At full size');
    expect(await drawnScale()).toBeCloseTo(after.width / 85.6, 3);
  });

  it('remembers this screen, and takes no other for it', async () => {
    const scale = await drawnScale();
    await soon(async () => (await callFromPage(page, 'display.read', {})).screens.length).toBe(1);
    await page.reload();
    await page.locator('.full-size-drawing').waitFor();
    expect(await status()).toContain('At full size');
    expect(await drawnScale()).toBeCloseTo(scale, 3);
    const other = await program.openBrowser({ deviceScaleFactor: 2 });
    await goTo(other, `#/fits/${fitId}/full-size`);
    await other.locator('.full-size-drawing').waitFor();
    expect(await other.locator('.measure-screen [role="status"]').textContent()).toContain('not measured');
    await other.context().close();
  });

  it('shows the other things of the seat, and has no serious barrier', async () => {
    await page.getByText('Rear foot rest: wedge', { exact: true }).click();
    await page.getByRole('img', { name: /^Rear/ }).waitFor();
    await page.getByRole('button', { name: 'Measure again' }).click();
    const { violations } = await new AxeBuilder({ page }).analyze();
    const serious = violations.filter(({ impact }) => impact === 'serious' || impact === 'critical');
    expect(serious.map(({ id, nodes }) => `${id} ${nodes.map(({ target }) => target.join(' '))}`)).toEqual(
      [],
    );
  });
});

describe('on a printer', () => {
  it('says to print the templates instead, and shows no drawing', async () => {
    await page.emulateMedia({ media: 'print' });
    await soon(() => page.locator('.full-size-drawing').isVisible()).toBe(false);
    await soon(() => page.getByText('Print the workshop templates instead').isVisible()).toBe(true);
    await page.emulateMedia({ media: 'screen' });
    await soon(() => page.getByText('Print the workshop templates instead').isVisible()).toBe(false);
  });
});
