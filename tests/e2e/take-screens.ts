import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { openFullSize, openTheCrewSheet, showTheWholeBoat } from './crew-screens.ts';
import { takeFigures } from './figures/take-figures.ts';
import { handlePlace, nextFrame } from './hand.ts';
import { startProgram } from './harness.ts';
import {
  measureWithASlip,
  openABadTable,
  openTheHistory,
  openTheRoster,
  openWhatABoatHas,
} from './roster-screens.ts';
import { callFromPage, enter, goTo, measure } from './screens.ts';
import {
  answerTheTrial,
  enterATrial,
  growAJunior,
  openRecentWork,
  openTheFinder,
  openTheTimeline,
  openTheTransfer,
} from './week-screens.ts';

const OUT = join(import.meta.dirname, '../../assets/screens');
const USUAL = { width: 1280, height: 800 };
const PAD_AFT = 'Knee pad: Aft of the mark';

/** One picture: its file name, the theme and size it is taken in, and how its state is reached from the one before. */
interface Picture {
  readonly name: string;
  readonly theme?: 'light' | 'dark';
  readonly size?: { width: number; height: number };
  readonly reach?: (page: Page) => Promise<void>;
}

/** In this order: each begins where the one before left off. */
const PICTURES: readonly Picture[] = [
  { name: 'start-light' },
  { name: 'bench-light', reach: openDemo },
  { name: 'bench-dark', theme: 'dark' },
  { name: 'bench-small', size: { width: 1024, height: 700 } },
  { name: 'bench-in-the-hand', reach: holdThePad },
  { name: 'bench-proposed', reach: showAChange },
  { name: 'bench-compared', reach: compareTheFirst },
  { name: 'bench-values', theme: 'dark', reach: openAValue },
  { name: 'bench-centimetre', reach: openTheCentimetre },
  { name: 'bench-stroke', reach: openTheStroke },
  { name: 'bench-paddle', theme: 'dark', reach: openThePaddle },
  { name: 'bench-least-change', reach: proposeTheLeast },
  { name: 'bench-pair', reach: openThePair },
  { name: 'bench-pair-whole', reach: showTheWholeBoat },
  { name: 'crew-sheet-light', size: { width: 1280, height: 1000 }, reach: openTheCrewSheet },
  { name: 'full-size-dark', theme: 'dark', reach: openFullSize },
  { name: 'boat-light', reach: openABoat },
  { name: 'set-out-light', reach: openSetOut },
  { name: 'show-light', reach: openShow },
  { name: 'show-dark', theme: 'dark', size: { width: 1024, height: 700 }, reach: showTheChanges },
  { name: 'trial-light', reach: enterATrial },
  { name: 'trial-answered', reach: answerTheTrial },
  { name: 'timeline-light', reach: openTheTimeline },
  { name: 'transfer-light', reach: openTheTransfer },
  { name: 'growth-dark', theme: 'dark', reach: growAJunior },
  { name: 'roster-light', reach: openTheRoster },
  { name: 'history-light', reach: openTheHistory },
  { name: 'measure-light', reach: measureWithASlip },
  { name: 'measure-dark', theme: 'dark', size: { width: 1024, height: 700 } },
  { name: 'table-light', reach: openABadTable },
  { name: 'boat-kept-light', reach: openWhatABoatHas },
  { name: 'recent-light', reach: openRecentWork },
  { name: 'finder-dark', theme: 'dark', size: { width: 1024, height: 700 }, reach: openTheFinder },
];

async function openDemo(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Open the demo club' }).click();
  await measure(page, PAD_AFT).waitFor();
  // What one centimetre does comes from the worker, a moment after the bench.
  const waiting = page.locator('.part-card td').filter({ hasText: /^–$/ });
  for (let look = 0; look < 100 && (await waiting.count()) > 0; look += 1) await nextFrame(page);
}

async function holdThePad(page: Page): Promise<void> {
  const { x, y } = await handlePlace(page, 'kneePad/plan');
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x + 12, y + 2, { steps: 6 });
  await nextFrame(page);
}

async function showAChange(page: Page): Promise<void> {
  await page.keyboard.press('Escape');
  await page.mouse.up();
  // A copy, so that the demo's own fit stays as it was.
  const { fit } = await callFromPage(page, 'fits.open', { id: await changedFit(page) });
  const copy = await callFromPage(page, 'fits.create', { fit: { ...fit, name: 'Pad far aft' } });
  await goTo(page, `#/fits/${copy.id}`);
  await enter(page, PAD_AFT, '27');
  const show = page.getByRole('button', { name: /^Show:/ }).first();
  await show.click();
  await page.getByRole('button', { name: /^Hide:/ }).hover();
}

async function compareTheFirst(page: Page): Promise<void> {
  await goTo(page, `#/fits/${await changedFit(page)}`);
  await measure(page, PAD_AFT).waitFor();
  await page.getByRole('tab', { name: 'Revisions' }).click();
  await page.getByRole('button', { name: /^Compare revision 1/ }).click();
  await page.locator('.differences table').waitFor();
}

async function openAValue(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Stop comparing' }).click();
  await page.getByRole('tab', { name: 'Values' }).click();
  await page.getByRole('searchbox').fill('knee');
  await page.getByRole('button', { name: /^Front knee/ }).click();
}

async function openTheCentimetre(page: Page): Promise<void> {
  await page.getByRole('searchbox').fill('');
  await page.getByRole('button', { name: 'Effect of 1 cm on every value' }).click();
  await page.locator('.centimetre').waitFor();
}

async function openTheStroke(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Close', exact: true }).click();
  await page.getByRole('tab', { name: 'Stroke' }).click();
  await page.getByText('Catch and exit as outlines').click();
  await page.getByRole('button', { name: 'Show the catch' }).click();
}

async function openThePaddle(page: Page): Promise<void> {
  await page.locator('.margin-tabs').getByRole('tab', { name: 'Paddle' }).click();
  await page.locator('.paddle-stock li').first().waitFor();
}

async function proposeTheLeast(page: Page): Promise<void> {
  await page.getByRole('tab', { name: /^Findings/ }).click();
  await page.getByRole('button', { name: 'Propose the smallest change' }).click();
  await page.getByRole('button', { name: 'Discard the proposal' }).waitFor();
}

async function openThePair(page: Page): Promise<void> {
  const fits = await callFromPage(page, 'fits.list', {});
  const pair = fits.find(({ athleteNames }) => athleteNames.length > 1);
  if (!pair) throw new Error('the demo club has no crew');
  await goTo(page, `#/fits/${pair.id}`);
  await measure(page, PAD_AFT).waitFor();
}

async function openABoat(page: Page): Promise<void> {
  const boats = await callFromPage(page, 'boats.list', {});
  const measured = boats.find(({ boat }) => boat.hull.kind === 'tape') ?? boats[0]!;
  await goTo(page, `#/boats/${measured.id}`);
  await page.getByRole('img', { name: /^Hull sections/ }).waitFor();
}

/** The demo's single with two revisions. */
async function changedFit(page: Page): Promise<string> {
  const fits = await callFromPage(page, 'fits.list', {});
  const changed = fits.find(({ athleteNames, revisions }) => athleteNames.length === 1 && revisions > 1);
  if (!changed) throw new Error('the demo club has no single with two revisions');
  return changed.id;
}

async function openSetOut(page: Page): Promise<void> {
  await goTo(page, `#/fits/${await changedFit(page)}/set-out`);
  await page.getByRole('region', { name: 'Workshop sheet' }).waitFor();
}

async function openShow(page: Page): Promise<void> {
  await goTo(page, `#/fits/${await changedFit(page)}/show`);
  await page.getByRole('img', { name: /^You from the side/ }).waitFor();
}

async function showTheChanges(page: Page): Promise<void> {
  await page.getByRole('tab', { name: 'What changes' }).click();
  await page.getByText('From behind', { exact: true }).click();
}

/** The pictures that the README shows, and the one that leads to the last of them. */
const README = new Set(['bench-light', 'show-light', 'trial-light', 'trial-answered']);

async function takeAll(pictures: readonly Picture[]): Promise<void> {
  mkdirSync(OUT, { recursive: true });
  const program = await startProgram();
  try {
    const page = await program.openBrowser({ viewport: USUAL, reducedMotion: 'reduce', clock: true });
    await page.getByRole('button', { name: 'Open the demo club' }).waitFor();
    for (const { name, theme = 'light', size = USUAL, reach } of pictures) {
      await page.emulateMedia({ colorScheme: theme, reducedMotion: 'reduce' });
      await page.setViewportSize(size);
      await reach?.(page);
      await page.evaluate(() => document.fonts.ready);
      await nextFrame(page);
      await nextFrame(page);
      await page.screenshot({ path: join(OUT, `${name}.png`) });
      console.log(`${name}.png`);
    }
  } finally {
    await program.dispose();
  }
}

const forReadme = process.argv.includes('readme');
const pictures = forReadme ? PICTURES.filter(({ name }) => README.has(name)) : PICTURES;
await (process.argv.includes('figures') ? takeFigures() : takeAll(pictures));
