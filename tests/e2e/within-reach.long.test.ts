import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { barriersInBothThemes } from './barriers.ts';
import { type RunningProgram, startProgram } from './harness.ts';
import { callFromPage, goTo, measure, soon } from './screens.ts';

let program: RunningProgram;
let page: Page;
let fitId: string;

const button = (name: RegExp) => page.getByRole('button', { name });
const barriers = () => barriersInBothThemes(page);

beforeAll(async () => {
  program = await startProgram();
  page = await program.openBrowser({ viewport: { width: 1440, height: 900 }, reducedMotion: 'reduce' });
  fitId = (await callFromPage(page, 'demo.install', {})).fitId;
  await goTo(page, `#/fits/${fitId}`);
  await measure(page, 'Knee pad: Aft of the mark').waitFor();
});
afterAll(() => program?.dispose());

describe('a boy nobody has measured for a year', () => {
  const DAY_MS = 86_400_000;
  const yearsAgo = (years: number) =>
    new Date(Date.now() - years * 365.25 * DAY_MS).toISOString().slice(0, 10);

  it('is to be measured again, says the bench, and what growth of his age would change', async () => {
    const made = await callFromPage(page, 'athletes.save', {
      athlete: {
        name: 'Tove Lillevik',
        sex: 'male',
        side: 'left',
        statureM: 1.55,
        massKg: 45,
        bornOn: yearsAgo(14.2),
        measuredOn: yearsAgo(1),
      },
    });
    const { fit } = await callFromPage(page, 'fits.open', { id: fitId });
    const seats = fit.seats.map((seat) => ({ ...seat, athlete: made.athlete }));
    const { id } = await callFromPage(page, 'fits.create', {
      fit: { ...fit, name: 'Tove, last year', seats },
    });
    await goTo(page, `#/fits/${id}`);
    await page.getByText('Tove Lillevik: measured').first().waitFor();
    await page.getByRole('link', { name: 'See what changes' }).click();
    await page.locator('.finding-changes').waitFor();
    expect(await button(/^Update this fit/).count()).toBe(0);
    expect(await barriers()).toEqual([]);
    await page.getByRole('link', { name: 'Measure Tove Lillevik' }).click();
    await page.getByRole('heading', { level: 1, name: 'Measure Tove Lillevik' }).waitFor();
  });
});

describe('everything within reach', () => {
  it('is done by the keyboard alone: paper turned to night, and back', async () => {
    await page.keyboard.press('Control+.');
    await page.keyboard.type('night');
    await soon(() => page.getByRole('option', { name: 'Dark theme' }).getAttribute('aria-selected')).toBe(
      'true',
    );
    expect(await barriers()).toEqual([]);
    await page.keyboard.press('Enter');
    await soon(() => page.evaluate(() => document.documentElement.dataset.theme)).toBe('dark');
    await page.keyboard.press('Control+.');
    await page.keyboard.type('theme of the system');
    await page.keyboard.press('Enter');
    await soon(() => page.evaluate(() => document.documentElement.dataset.theme)).toBe('light');
  });

  it('says so where nothing holds the words', async () => {
    await page.keyboard.press('Control+.');
    await page.keyboard.type('zzzzz');
    await page.getByText('Nothing found for “zzzzz”.').first().waitFor();
    await page.keyboard.press('Escape');
    await soon(() => page.getByRole('dialog').count()).toBe(0);
  });
});
