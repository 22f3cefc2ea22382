import type { Page } from 'playwright-core';
import { callFromPage, goTo } from './screens.ts';

/** The demo club's fit of one athlete with more than one revision: there is something to tell of it. */
async function toldFit(page: Page) {
  const fits = await callFromPage(page, 'fits.list', {});
  const fit = fits.find(({ athleteNames, revisions }) => athleteNames.length === 1 && revisions > 1);
  if (!fit) throw new Error('the demo club has no fit with two revisions');
  return fit;
}

/** A trial half entered: a place that is numb, a bow that digs in, words. */
export async function enterATrial(page: Page): Promise<void> {
  const { id } = await toldFit(page);
  await goTo(page, `#/fits/${id}/trial/new`);
  await page.getByRole('button', { name: 'Rear toes' }).click();
  await page.locator('.felt-list').getByText('numb', { exact: true }).click();
  await page.getByRole('button', { name: 'Bow digs in' }).click();
  await page.getByLabel('In words').fill('Foot asleep after ten minutes, bow under at pace');
  await page.locator('.trial-figure').scrollIntoViewIfNeeded();
}

/** The same kept: the changes that answer it, on the bench. */
export async function answerTheTrial(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  await page.locator('.trial-change').first().waitFor();
  const show = page
    .locator('.trial-change')
    .first()
    .getByRole('button', { name: /^Show:/ });
  await show.click();
}

/** Revisions and trials of one athlete. */
export async function openTheTimeline(page: Page): Promise<void> {
  const { athleteNames } = await toldFit(page);
  const [athlete] = await callFromPage(page, 'athletes.list', { search: athleteNames[0]! });
  await goTo(page, `#/athletes/${athlete!.id}/timeline`);
  await page.locator('.timeline').waitFor();
}

/** A fit beside itself in another hull. */
export async function openTheTransfer(page: Page): Promise<void> {
  const { id, boatName } = await toldFit(page);
  await goTo(page, `#/fits/${id}/transfer`);
  const boats = await callFromPage(page, 'boats.list', {});
  const other = boats.find(({ boat }) => boat.seats.length === 1 && boat.name !== boatName);
  await page.getByLabel('Boat').selectOption(other!.id);
  await page.locator('.transfer-table').waitFor();
}

/** A junior grown by four centimetres: what that does to the fit. */
export async function growAJunior(page: Page): Promise<void> {
  const fits = await callFromPage(page, 'fits.list', {});
  const athletes = await callFromPage(page, 'athletes.list', {});
  const junior = athletes.find(
    ({ athlete }) =>
      (athlete.bornOn ?? '') > '2010' && fits.some((f) => f.athleteNames.join() === athlete.name),
  );
  if (!junior) throw new Error('the demo club has no junior in a single');
  const { athlete, id } = junior;
  const grown = { ...athlete, statureM: athlete.statureM + 0.04, massKg: athlete.massKg + 4 };
  await callFromPage(page, 'athletes.save', { athlete: grown });
  await goTo(page, `#/athletes/${id}`);
  await page.getByText(/of growth since · /).waitFor();
  await page.getByRole('link', { name: /^See what changes/ }).click();
  await page.locator('.finding-changes').waitFor();
  await page.getByRole('button', { name: 'Show', exact: true }).click();
}

/** Where the program opens. */
export async function openRecentWork(page: Page): Promise<void> {
  await goTo(page, '#/');
  await page.getByRole('link', { name: /^Continue: / }).waitFor();
}

/** The finder, a word typed. */
export async function openTheFinder(page: Page): Promise<void> {
  await page.keyboard.press('Control+.');
  await page.keyboard.type('bow');
  await page
    .getByRole('option', { name: /Trial of/ })
    .first()
    .waitFor();
}
