import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { barriersInBothThemes } from './barriers.ts';
import { type RunningProgram, startProgram } from './harness.ts';
import { goTo } from './screens.ts';

let program: RunningProgram;
let page: Page;

/** Checks what is open in both themes. */
async function checkBoth(): Promise<void> {
  expect(await barriersInBothThemes(page)).toEqual([]);
}

beforeAll(async () => {
  program = await startProgram();
  page = await program.openBrowser();
});
afterAll(() => program?.dispose());

describe('no screen of an empty program has a serious barrier, in either theme', () => {
  it('the first start', async () => {
    await goTo(page, '#/');
    await page.getByRole('button', { name: 'Open the demo club' }).waitFor();
    await checkBoth();
  });

  it.each(['#/fits', '#/athletes', '#/boats', '#/paddles', '#/fits/new', '#/archive', '#/help'])(
    '%s while there is nothing',
    async (route) => {
      await goTo(page, route);
      await page.getByRole('heading', { level: 1 }).waitFor();
      await checkBoth();
    },
  );

  it('the athlete’s form, with everything in it', async () => {
    await goTo(page, '#/athletes/new');
    await page.getByRole('button', { name: 'Add a limit' }).click();
    await page.getByText('More tape measures').click();
    await page.getByRole('button', { name: 'Save', exact: true }).click();
    await page.getByText('This is needed.').first().waitFor();
    await checkBoth();
  });

  it('the boat’s form, by tape and by offsets', async () => {
    await goTo(page, '#/boats/new');
    await page.getByRole('button', { name: 'Save', exact: true }).click();
    await page.getByText('This is needed.').first().waitFor();
    await checkBoth();
    await page.getByText('table of offsets', { exact: true }).click();
    await checkBoth();
  });

  it('paper and units', async () => {
    await page.getByRole('button', { name: 'Settings' }).click();
    await page.getByRole('dialog').waitFor();
    await checkBoth();
    await page.getByRole('dialog').getByRole('link', { name: 'Club library' }).click();
    await page.getByLabel('Invitation').waitFor();
    expect(await page.getByRole('dialog').count()).toBe(0);
  });
});
