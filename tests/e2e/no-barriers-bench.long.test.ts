import type { Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { exampleAthlete, exampleBoat, exampleFit, exampleSeat } from '../core/example/example-fit.ts';
import { barriersInBothThemes } from './barriers.ts';
import { type RunningProgram, startProgram } from './harness.ts';
import { callFromPage, goTo } from './screens.ts';

let program: RunningProgram;
let page: Page;
let fitId: string;
let made = 0;

/** Checks what is open in both themes; with `within`, that part alone: what is around it another test has looked at. */
async function checkBoth(within?: string): Promise<void> {
  expect(await barriersInBothThemes(page, within)).toEqual([]);
}

/** A pair, which nobody has changed yet, on the bench. */
async function openPair(): Promise<void> {
  made += 1;
  const name = `Example ${made}`;
  const seats = [
    exampleSeat(),
    exampleSeat({ side: 'right', athlete: exampleAthlete({ name: 'The other one', side: 'right' }) }),
  ];
  fitId = (await callFromPage(page, 'fits.create', { fit: { ...exampleFit(seats), name } })).id;
  await goTo(page, `#/fits/${fitId}`);
  await page.getByRole('heading', { level: 1, name, exact: true }).waitFor();
}

beforeAll(async () => {
  program = await startProgram();
  page = await program.openBrowser();
  await callFromPage(page, 'athletes.save', { athlete: exampleAthlete({ name: 'Nobody in particular' }) });
  await callFromPage(page, 'boats.save', { boat: exampleBoat(2) });
});
beforeEach(openPair);
afterAll(() => program?.dispose());

describe('no screen of a fit has a serious barrier, in either theme', () => {
  it('lists with something in them', async () => {
    for (const route of ['#/fits', '#/athletes', '#/boats', '#/paddles', '#/fits/new']) {
      await goTo(page, route);
      await page.getByRole('heading', { level: 1 }).waitFor();
      await checkBoth();
    }
  });

  it('the pages of the week while there is nothing to tell', async () => {
    const [athlete] = await callFromPage(page, 'athletes.list', {});
    for (const route of [
      '#/',
      `#/fits/${fitId}/trial/new`,
      `#/fits/${fitId}/transfer`,
      `#/athletes/${athlete!.id}`,
      `#/athletes/${athlete!.id}/timeline`,
    ]) {
      await goTo(page, route);
      await page.getByRole('heading', { level: 1 }).waitFor();
      await checkBoth();
    }
  });

  it('the bench with its notes', async () => {
    await page
      .getByRole('button', { name: /^Apply:/ })
      .first()
      .waitFor();
    await checkBoth();
  });

  it.each(['Rear rest', 'Front foot', 'Paddle', 'Boat'])('the measures of: %s', async (name) => {
    await page.locator('.part-card').getByRole('tab', { name, exact: true }).click();
    await checkBoth('.part-card');
  });

  it('the crew’s tab, levelled and with every seating order', async () => {
    await page.getByRole('tab', { name: 'Crew' }).click();
    await page.locator('.crew').getByRole('button', { name: 'Level the crew' }).click();
    await page.locator('.crew').getByRole('button', { name: 'Compare every order' }).click();
    await page
      .getByRole('button', { name: /seat them/ })
      .first()
      .waitFor();
    await checkBoth();
  });

  it('the crew’s sheet', async () => {
    await goTo(page, `#/fits/${fitId}/crew`);
    await page.locator('.crew-figure').waitFor();
    await checkBoth();
  });

  it('the values, with one of them opened', async () => {
    await page.getByRole('tab', { name: 'Values' }).click();
    await page.getByRole('button', { name: /^Trunk forward at ready/ }).click();
    await page.getByRole('button', { name: 'Hold this angle' }).click();
    await page.getByRole('button', { name: 'This athlete’s band' }).click();
    await checkBoth();
  });

  it('saving, comparing and looking at revisions', async () => {
    await page.getByRole('tab', { name: 'Revisions' }).click();
    await checkBoth();
    await page.getByRole('button', { name: 'Save a revision' }).first().click();
    await page.getByRole('dialog').waitFor();
    await checkBoth();
    await page.getByRole('dialog').getByRole('textbox').first().fill('First');
    await page.keyboard.press('Enter');
    await page.getByRole('button', { name: /^Compare/ }).click();
    await checkBoth();
    await page.getByRole('button', { name: /^View / }).click();
    await page.getByRole('button', { name: 'Back to the bench' }).waitFor();
    await checkBoth();
  });

  it('setting out, with a file refused', async () => {
    await goTo(page, `#/fits/${fitId}/set-out`);
    await page.getByRole('region', { name: 'Workshop sheet' }).waitFor();
    await checkBoth();
    await page.route('**/call', (route) => {
      const { name } = route.request().postDataJSON() as { name: string };
      const error = { code: 'disk-full', message: 'The disk is full.', problems: [] };
      return name === 'paper.export' ? route.fulfill({ json: { ok: false, error } }) : route.continue();
    });
    await page.getByRole('button', { name: 'Sheet as PDF' }).click();
    await page.getByRole('alert').waitFor();
    await page.unroute('**/call');
    await checkBoth();
  });

  it('showing an athlete, and what is shown', async () => {
    await goTo(page, `#/fits/${fitId}/show`);
    await page.getByRole('img', { name: /^You from the side/ }).waitFor();
    await checkBoth();
    await page.getByRole('button', { name: 'What is shown' }).click();
    await page.getByRole('dialog').waitFor();
    await checkBoth();
  });
});
