import type { Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { exampleFit } from '../core/example/example-fit.ts';
import { type RunningProgram, startProgram } from './harness.ts';
import { openOnBench, PAD_AFT, padAft as padAftOn } from './open-bench.ts';
import { callFromPage, enter, soon, textOf } from './screens.ts';

let program: RunningProgram;
let page: Page;
let fitId: string;
/** A new fit on the bench. */
async function openBench(): Promise<void> {
  fitId = await openOnBench(page, exampleFit());
}

const padAft = () => padAftOn(page);

beforeAll(async () => {
  program = await startProgram();
  page = await program.openBrowser();
});
beforeEach(openBench);
afterAll(() => program?.dispose());

describe('revisions', () => {
  async function save(name: string): Promise<void> {
    await page.keyboard.press('Control+s');
    await page.getByRole('dialog').getByLabel('Name', { exact: true }).fill(name);
    await page.keyboard.press('Enter');
    await page.getByRole('dialog').waitFor({ state: 'detached' });
  }

  /** The bench's fit with two revisions, the pad at 17.5 and at 20 cm, and a draft with the pad at 21 cm. */
  async function withTwoRevisions(): Promise<void> {
    await save('First');
    await enter(page, PAD_AFT, '20');
    await save('Second');
    await enter(page, PAD_AFT, '21');
  }

  const row = () => page.locator('.differences').getByRole('row', { name: /Knee pad: Aft of the mark/ });
  const revisionsTab = () => page.getByRole('tab', { name: 'Revisions' }).click();

  it('are saved by key, and drafts go on after them', async () => {
    await withTwoRevisions();
    await soon(
      async () => (await callFromPage(page, 'fits.open', { id: fitId })).fit.seats[0]!.kneePad.aftM,
    ).toBe(0.21);
    const { revisions } = await callFromPage(page, 'fits.open', { id: fitId });
    expect(revisions.map(({ number, name }) => [number, name])).toEqual([
      [2, 'Second'],
      [1, 'First'],
    ]);
  });

  it('are saved again where nothing was edited since, here and after the fit is opened anew', async () => {
    await save('Once');
    await save('Twice');
    await page.reload();
    await padAft();
    await save('Thrice');
    const { revisions } = await callFromPage(page, 'fits.open', { id: fitId });
    expect(revisions.map(({ name }) => name)).toEqual(['Thrice', 'Twice', 'Once']);
  });

  it('compare with what is drawn, also while it is edited', async () => {
    await withTwoRevisions();
    await revisionsTab();
    await page.getByRole('button', { name: /^Compare revision 1/ }).click();
    expect(await textOf(row())).toMatch(/17\.5 cm\s*21\.0 cm/);
    await enter(page, PAD_AFT, '22');
    await soon(() => textOf(row())).toMatch(/22\.0 cm/);
  });

  it('are looked at without losing the bench, and any two are compared so', async () => {
    await withTwoRevisions();
    await revisionsTab();
    await page.getByRole('button', { name: /^Compare revision 1/ }).click();
    await page.getByRole('button', { name: /^View revision 2/ }).click();
    await soon(() => textOf(row())).toMatch(/17\.5 cm\s*20\.0 cm/);
    const save = page.getByRole('button', { name: 'Save a revision' });
    expect(await save.isDisabled()).toBe(true);
    await page.keyboard.press('Control+s');
    expect(await page.getByRole('dialog').count()).toBe(0);
    await page.getByRole('button', { name: 'Back to the bench' }).click();
    await soon(padAft).toBe('21.0 cm');
    await soon(() => save.first().isEnabled()).toBe(true);
  });

  it('are put back on the bench as one step', async () => {
    await withTwoRevisions();
    await revisionsTab();
    await page.getByRole('button', { name: /^View revision 1/ }).click();
    await page.getByRole('button', { name: 'Restore this revision' }).click();
    await soon(padAft).toBe('17.5 cm');
    await page.getByRole('button', { name: 'Undo' }).click();
    await soon(padAft).toBe('21.0 cm');
  });
});
