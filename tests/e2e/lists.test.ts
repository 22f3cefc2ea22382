import type { Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { exampleAthlete } from '../core/example/example-fit.ts';
import { english } from '../english.ts';
import { type RunningProgram, startProgram } from './harness.ts';
import { callFromPage, goTo, soon } from './screens.ts';

let program: RunningProgram;
let page: Page;

beforeAll(async () => {
  program = await startProgram();
  page = await program.openBrowser({ viewport: { width: 1280, height: 800 } });
});
afterAll(() => program?.dispose());

const names = () => page.locator('table.roster tbody th').allTextContents();
const button = (name: string) => page.getByRole('button', { name, exact: true });

describe('several at once', () => {
  const CREW = ['Ada', 'Berit', 'Chidi'];
  beforeEach(async () => {
    for (const name of CREW) await callFromPage(page, 'athletes.save', { athlete: exampleAthlete({ name }) });
  });

  it('are ticked and archived in one go, and each comes back from the one place for all', async () => {
    await goTo(page, '#/athletes');
    await soon(names).toEqual(CREW);
    for (const name of ['Ada', 'Chidi']) {
      await page.getByRole('checkbox', { name: english.say('list.select.of', { name }) }).check();
    }
    await page.getByText(english.say('list.selected', { count: 2 })).waitFor();
    await button('Archive').first().click();
    await soon(names).toEqual(['Berit']);
    await goTo(page, '#/archive');
    const archived = page.locator('.archived');
    await archived.getByRole('button', { name: 'Restore: Ada' }).click();
    await soon(() => archived.locator('tbody th').allTextContents()).toEqual(['Chidi']);
    await goTo(page, '#/athletes');
    await soon(names).toEqual(['Ada', 'Berit']);
  });
});

describe('a table with headings of its own', () => {
  it('has its columns named by hand where no alias is known', async () => {
    const table = 'Squad member,Height,Weight,Side,Length of the foot\nTomé Açoreiro,160,51,right,24.5';
    await goTo(page, '#/athletes/table');
    const chooser = page.waitForEvent('filechooser');
    await button('Choose a CSV file').click();
    const file = { name: 'club.csv', mimeType: 'text/csv', buffer: Buffer.from(table) };
    await (await chooser).setFiles([file]);
    const column = (heading: string) => page.getByLabel(english.say('table.columns.of', { heading }));
    await column('Squad member').selectOption({ label: 'Name' });
    await column('Length of the foot').selectOption({ label: 'Foot length [cm]' });
    await button('Import 1 athlete').click();
    await soon(async () => (await callFromPage(page, 'athletes.list', { search: 'Tomé' })).length).toBe(1);
    const [found] = await callFromPage(page, 'athletes.list', { search: 'Tomé' });
    expect(found!.athlete).toMatchObject({ side: 'right', statureM: 1.6, massKg: 51 });
    expect(found!.athlete.tape).toMatchObject({ footLength: { valueM: 0.245 } });
  });
});
