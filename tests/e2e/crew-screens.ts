import type { Page } from 'playwright-core';
import { callFromPage, goTo } from './screens.ts';

async function pairId(page: Page): Promise<string> {
  const fits = await callFromPage(page, 'fits.list', {});
  const pair = fits.find(({ athleteNames }) => athleteNames.length > 1);
  if (!pair) throw new Error('the demo club has no crew');
  return pair.id;
}

/** The pair on the bench, the whole boat across the sheet. */
export async function showTheWholeBoat(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Whole boat' }).click();
}

/** The pair on one sheet. */
export async function openTheCrewSheet(page: Page): Promise<void> {
  await goTo(page, `#/fits/${await pairId(page)}/crew`);
  await page.locator('.crew-figure').waitFor();
}

/** The pair's pad at full size on a screen that nobody has measured. */
export async function openFullSize(page: Page): Promise<void> {
  await goTo(page, `#/fits/${await pairId(page)}/full-size`);
  await page.locator('.full-size-drawing').waitFor();
}
