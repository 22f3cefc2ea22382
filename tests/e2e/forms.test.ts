import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { exampleAthlete, exampleBoat } from '../core/example/example-fit.ts';
import { barriersInBothThemes } from './barriers.ts';
import { type RunningProgram, startProgram } from './harness.ts';
import { callFromPage, goTo, soon } from './screens.ts';

let program: RunningProgram;
let page: Page;

beforeAll(async () => {
  program = await startProgram();
  page = await program.openBrowser({ viewport: { width: 1280, height: 800 } });
});
afterAll(() => program.dispose());

describe('a form that has just been opened', () => {
  it.each(['#/fits/new', '#/athletes/new', '#/boats/new'])('%s speaks of no mistake', async (route) => {
    await goTo(page, route);
    await page.locator('form').first().waitFor();
    await page.getByText('missing or wrong').first().waitFor({ state: 'hidden' });
    const empty = await page.locator('[role="alert"]:visible').count();
    expect(empty).toBe(0);
  });
});

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

  it('of a new fit says what is missing instead of refusing to be pressed', async () => {
    await callFromPage(page, 'athletes.save', { athlete: exampleAthlete({ name: 'Ilse Ravn' }) });
    await callFromPage(page, 'boats.save', { boat: exampleBoat(2) });
    await goTo(page, '#/fits/new');
    await page.getByRole('button', { name: 'Create', exact: true }).click();
    const summary = page.getByRole('alert').filter({ hasText: 'missing or wrong' });
    await soon(() => summary.getByRole('listitem').allInnerTexts()).toEqual([
      'Seat 1, at the bow: This is needed.',
      'Seat 2: This is needed.',
    ]);
    const seats = page.getByLabel(/^Seat \d/);
    for (const seat of [0, 1]) await seats.nth(seat).selectOption({ label: 'Ilse Ravn' });
    await page.getByRole('button', { name: 'Create', exact: true }).click();
    await soon(() => summary.getByRole('listitem').allInnerTexts()).toEqual([
      'Seat 2: Ilse Ravn is in two seats.',
    ]);
    await seats.nth(1).selectOption({ label: 'nobody' });
    await page.getByRole('button', { name: 'Create', exact: true }).click();
    await page.locator('.kept[data-keeping="kept"]').waitFor();
  });
});
