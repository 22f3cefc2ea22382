import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { barriersInBothThemes } from './barriers.ts';
import { type RunningProgram, startProgram } from './harness.ts';
import { goTo, soon } from './screens.ts';

let program: RunningProgram;
let page: Page;

beforeAll(async () => {
  program = await startProgram();
  page = await program.openBrowser({ viewport: { width: 1280, height: 800 } });
});
afterAll(() => program.dispose());

describe('a form that is not complete', () => {
  it('says so on top, takes the focus there, and leads to each field', async () => {
    await goTo(page, '#/athletes/new');
    await page.getByRole('button', { name: 'Save', exact: true }).click();
    const summary = page.getByRole('alert').filter({ hasText: 'missing or wrong' });
    await summary.waitFor();
    await soon(() => summary.evaluate((box) => box === document.activeElement)).toBe(true);
    expect(await summary.getByRole('listitem').allInnerTexts()).toEqual([
      'Name: This is needed.',
      'Paddles on the: This is needed.',
      'Stature: This is needed.',
      'Body mass: This is needed.',
    ]);
    await summary.getByRole('button', { name: 'Stature' }).click();
    await page.keyboard.type('171');
    await page.keyboard.press('Enter');
    const focused = page.locator('input:focus');
    await soon(() => focused.getAttribute('name')).toBe('massKg');
    await soon(() => summary.getByRole('listitem').count()).toBe(3);
    expect(await barriersInBothThemes(page)).toEqual([]);
  });
});
