import type { Page } from 'playwright-core';
import { callFromPage, enter, goTo } from './screens.ts';

/** The demo's junior with the most measurings. */
async function juniorId(page: Page): Promise<string> {
  const athletes = await callFromPage(page, 'athletes.list', {});
  const junior = athletes.find(({ athlete }) => athlete.consent !== undefined);
  if (!junior) throw new Error('the demo club has no junior with a consent');
  return junior.id;
}

export async function openTheRoster(page: Page): Promise<void> {
  await goTo(page, '#/athletes');
  await page.getByRole('button', { name: 'Stature' }).click();
}

/** What a junior measured so far, as plots. */
export async function openTheHistory(page: Page): Promise<void> {
  await goTo(page, `#/athletes/${await juniorId(page)}`);
  await page.getByRole('heading', { name: 'Measured so far' }).scrollIntoViewIfNeeded();
  await page.getByRole('img', { name: /^Body mass: / }).scrollIntoViewIfNeeded();
}

/** A tape measure whose first reading is a slip of the pen. */
export async function measureWithASlip(page: Page): Promise<void> {
  await goTo(page, `#/athletes/${await juniorId(page)}/measure`);
  await page.getByRole('button', { name: /^Sitting height/ }).click();
  await enter(page, 'First reading', '97');
  await enter(page, 'Second reading', '79.4');
  await page.locator('.odd-value').waitFor();
}

/** A table of which three cells cannot be taken. */
export async function openABadTable(page: Page): Promise<void> {
  await goTo(page, '#/athletes/table');
  const rows = [
    'Name;Side;Stature [cm];Mass [kg];Born on',
    'New Paddler;left;17.2;61;3/4/2009',
    'Another New;up;168;58;2009-04-03',
    'Sound Newcomer;right;171;62;2008-11-20',
  ];
  const chooser = page.waitForEvent('filechooser');
  await page.getByRole('button', { name: 'Choose a CSV file' }).click();
  await (await chooser).setFiles([
    { name: 'club.csv', mimeType: 'text/csv', buffer: Buffer.from(rows.join('\n')) },
  ]);
  await page.locator('.table-bad').scrollIntoViewIfNeeded();
}

/** A boat's stock, class, and who is fitted in it. */
export async function openWhatABoatHas(page: Page): Promise<void> {
  const boats = await callFromPage(page, 'boats.list', {});
  const single = boats.find(({ boat }) => boat.stock !== undefined);
  if (!single) throw new Error('no boat of the demo club has a stock');
  await goTo(page, `#/boats/${single.id}`);
  await page.getByRole('heading', { name: 'Fits in this boat' }).scrollIntoViewIfNeeded();
}
