import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { closeStore, openStore } from '../../app/store/open-store.ts';
import { athletes, boats } from '../../app/store/roster.ts';
import { atomically } from '../../app/store/store.ts';
import { inventedAthlete, inventedBoat } from '../app/invented.ts';
import { exampleFit } from '../core/example/example-fit.ts';
import { english } from '../english.ts';
import { type RunningProgram, startProgram } from './harness.ts';
import { callFromPage, goTo, soon, textOf } from './screens.ts';

/** More than a page draws at once, and than one call once gave. */
const MANY = 1100;
const LAST = 'Zoltán Zempléni';

const dataDir = mkdtempSync(join(tmpdir(), 'kneelwright-e2e-'));
let program: RunningProgram;
let page: Page;

function fill(): void {
  const opening = openStore(dataDir);
  if (opening.kind === 'refused') throw new Error(opening.refusal.code);
  const { store } = opening;
  atomically(store, () => {
    for (let i = 1; i < MANY; i++) {
      athletes.save(store, inventedAthlete(`Paddler ${i}`, { bornOn: '1990-01-01' }));
      boats.save(store, inventedBoat(`Boat ${i}`));
    }
    athletes.save(store, inventedAthlete(LAST, { bornOn: `${new Date().getFullYear() - 14}-01-01` }));
    for (const name of ['Zander', 'Zander (2)']) boats.save(store, inventedBoat(name));
  });
  closeStore(store);
}

beforeAll(async () => {
  fill();
  program = await startProgram({ dataDir });
  page = await program.openBrowser({ viewport: { width: 1280, height: 800 } });
});
afterAll(async () => {
  await program?.dispose();
  rmSync(dataDir, { recursive: true, force: true });
});

const rows = () => page.locator('table.roster tbody th').count();
const more = (count: number) =>
  page.getByRole('button', { name: english.say('list.more', { count }), exact: true });

describe('a club of more than a thousand athletes and boats', () => {
  it('sees in the list how many more there are, shows them, sorts all of them, and finds the last one', async () => {
    await goTo(page, '#/athletes');
    await more(MANY - 500).click();
    await soon(rows).toBe(1000);
    await more(MANY - 1000).click();
    await soon(rows).toBe(MANY);
    expect(await page.getByText(LAST).count()).toBe(1);
    await goTo(page, '#/boats');
    await more(MANY + 1 - 500).waitFor();
    for (const _ of ['up', 'down']) await page.locator('.sort-heading').first().click();
    await soon(() => page.locator('table.roster tbody th').first().textContent()).toBe('Zander (2)');
    await page.getByRole('searchbox').fill('zander');
    await soon(rows).toBe(2);
  });

  it('chooses the last ones for a new fit, and merges with the last one', async () => {
    await goTo(page, '#/fits/new');
    await page.getByLabel('Boat', { exact: true }).selectOption({ label: 'Zander' });
    await page.getByLabel('Athlete', { exact: true }).selectOption({ label: LAST });
    const [first] = await callFromPage(page, 'athletes.list', { limit: 1 });
    await goTo(page, `#/athletes/${first!.id}`);
    await page.getByLabel(english.say('join.second')).selectOption({ label: LAST });
  });

  it('gives the copy of the last boat a name that no boat has', async () => {
    const [zander] = await callFromPage(page, 'boats.list', { search: 'zander' });
    await goTo(page, `#/boats/${zander!.id}`);
    await page.getByRole('button', { name: english.say('boat.duplicate'), exact: true }).click();
    await soon(async () => (await callFromPage(page, 'boats.list', { search: 'zander' })).length).toBe(3);
    const copies = await callFromPage(page, 'boats.list', { search: 'zander' });
    expect(copies.map(({ boat }) => boat.name)).toEqual(['Zander', 'Zander (2)', 'Zander (3)']);
  });

  it('is told that the last athlete’s guardian has not consented, before something is shown', async () => {
    const [last] = await callFromPage(page, 'athletes.list', { search: LAST });
    const fit = exampleFit();
    const seats = fit.seats.map((seat) => ({ ...seat, athlete: { ...last!.athlete, id: last!.id } }));
    const { id } = await callFromPage(page, 'fits.create', { fit: { ...fit, seats } });
    await goTo(page, `#/fits/${id}/show`);
    await soon(() => textOf(page.locator('.consent-note'))).toContain(LAST);
  });
});
