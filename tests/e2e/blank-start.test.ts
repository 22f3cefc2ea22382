import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { CallName } from '../../app/contract/contract.ts';
import { barriersInBothThemes } from './barriers.ts';
import { countedHand } from './counted-hand.ts';
import { type RunningProgram, startProgram } from './harness.ts';
import { callFromPage, enter, goTo, shown, soon } from './screens.ts';

/** Interactions that a person may need from the first start to a saved fit, and on to its sheet as PDF. */
const TO_A_SAVED_FIT = 12;
const TO_A_SHEET = 15;

let program: RunningProgram;
let page: Page;

beforeAll(async () => {
  program = await startProgram();
  page = await program.openBrowser({ viewport: { width: 1280, height: 800 }, acceptDownloads: true });
});
afterAll(() => program.dispose());

const button = (name: string) => page.getByRole('button', { name, exact: true });

/** The program refuses the next call of a name, as it does when the disk is full. */
async function refuseOnce(name: CallName): Promise<void> {
  let refused = false;
  await page.route('**/call', async (route) => {
    if (refused || route.request().postDataJSON().name !== name) return route.fallback();
    refused = true;
    const error = { code: 'disk-full', message: 'The disk is full.', problems: [] };
    return route.fulfill({ json: { ok: false, error } });
  });
}

describe('from a blank start', () => {
  it('what was entered goes along to the longer forms of athlete and boat', async () => {
    await page.getByRole('link', { name: 'Start empty' }).click();
    await page.getByLabel('Name', { exact: true }).fill('Ilse Ravn');
    await enter(page, 'Stature', '171');
    await page.getByText('left', { exact: true }).click();
    await page.getByText('C2', { exact: true }).click();
    await enter(page, 'Greatest beam', '48');
    await page.getByRole('link', { name: 'Birth date, tapes, limits' }).click();
    await page.getByRole('heading', { name: 'New athlete' }).waitFor();
    expect(await page.getByLabel('Name', { exact: true }).inputValue()).toBe('Ilse Ravn');
    expect(await shown(page, 'Stature')).toBe(171);
    expect(await page.getByRole('radio', { name: 'left' }).isChecked()).toBe(true);
    await page.goBack();
    await page.getByRole('link', { name: 'Tape or table of offsets' }).click();
    await page.getByRole('heading', { name: 'New boat' }).waitFor();
    expect(await page.getByRole('radio', { name: 'C2', exact: true }).isChecked()).toBe(true);
    expect(await shown(page, 'Greatest beam')).toBe(48);
    await page.evaluate(() => localStorage.clear());
    await page.goto(await program.freshAddress());
  });

  it('a fit is saved and its sheet is on paper in a few interactions', async () => {
    const hand = countedHand(page);
    await hand.click(page.getByRole('link', { name: 'Start empty' }));
    await page.getByRole('heading', { name: 'New fit' }).waitFor();
    expect(await barriersInBothThemes(page)).toEqual([]);
    await hand.fill('Name', 'Ilse Ravn');
    await hand.fill('Stature', '171');
    await hand.fill('Body mass', '63.5');
    await hand.click(page.getByText('left', { exact: true }));
    await hand.click(page.getByText('C1', { exact: true }));
    await refuseOnce('boats.save');
    await button('Create').click();
    await page.getByText('The disk is full.').waitFor();
    await hand.click(button('Create'));
    await page.locator('.kept[data-keeping="kept"]').waitFor();
    await hand.click(button('Save a revision').first());
    const dialog = page.getByRole('dialog');
    await hand.fill('Name', 'First setting');
    await hand.click(dialog.getByRole('button', { name: 'Save', exact: true }));
    await dialog.waitFor({ state: 'detached' });
    expect(hand.count()).toBeLessThanOrEqual(TO_A_SAVED_FIT);
    // The refused first try leaves no second athlete.
    expect(await callFromPage(page, 'athletes.list', {})).toHaveLength(1);
    const [summary] = await callFromPage(page, 'fits.list', {});
    const { fit, revisions } = await callFromPage(page, 'fits.open', { id: summary!.id });
    expect(revisions.map(({ name }) => name)).toEqual(['First setting']);
    expect(fit.seats[0]!.athlete).toMatchObject({ name: 'Ilse Ravn', statureM: 1.71, massKg: 63.5 });
    expect(fit.boat.hull.kind).toBe('usual');
    await hand.click(page.getByRole('link', { name: 'Workshop sheet', exact: true }));
    const download = page.waitForEvent('download');
    await hand.click(button('Sheet as PDF'));
    const paper = join(program.dataDir, 'sheet.pdf');
    await (await download).saveAs(paper);
    expect(readFileSync(paper).subarray(0, 5).toString('latin1')).toBe('%PDF-');
    expect(hand.count()).toBeLessThanOrEqual(TO_A_SHEET);
  });

  it('the boat says that it is an estimate, and by how much', async () => {
    const [boat] = await callFromPage(page, 'boats.list', {});
    await goTo(page, `#/boats/${boat!.id}`);
    const known = page.locator('.hull-known');
    await known.getByText('Lines of its class: estimated').waitFor();
    await soon(() => known.getByRole('row').count()).toBe(4);
    expect(await barriersInBothThemes(page)).toEqual([]);
  });

  it('a new boat needs its class and a name, and Enter goes on', async () => {
    await goTo(page, '#/boats/new');
    await page.getByLabel('Name', { exact: true }).fill('Ours');
    await page.getByText('C2', { exact: true }).click();
    await page.getByRole('img', { name: /^Hull sections/ }).waitFor();
    await page.getByLabel('Name', { exact: true }).press('Enter');
    await page.getByRole('heading', { level: 1, name: 'Ours' }).waitFor();
    const boats = await callFromPage(page, 'boats.list', { search: 'Ours' });
    expect(boats[0]!.boat).toMatchObject({ boatClass: 'C2', hull: { kind: 'usual' } });
    expect(boats[0]!.boat.seats).toHaveLength(2);
  });
});
