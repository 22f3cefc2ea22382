import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Fit } from '../../core/document/fit-schema.ts';
import { exampleAthlete, exampleFit, exampleSeat } from '../core/example/example-fit.ts';
import { type RunningProgram, startProgram } from './harness.ts';
import { callFromPage, goTo, soon } from './screens.ts';

let program: RunningProgram;
let page: Page;
let boatId: string;

beforeAll(async () => {
  program = await startProgram();
  page = await program.openBrowser({ viewport: { width: 1280, height: 900 }, reducedMotion: 'reduce' });
  const { boat } = exampleFit();
  boatId = (await callFromPage(page, 'boats.save', { boat })).id;
  for (const [name, aftM] of [
    ['Ada', 0.175],
    ['Bo', 0.178],
    ['Cy', 0.18],
  ] as const) {
    const seat = exampleSeat({ athlete: exampleAthlete({ name }) });
    const fit: Fit = {
      ...exampleFit([{ ...seat, kneePad: { ...seat.kneePad, aftM } }]),
      name,
      boat: { ...boat, id: boatId },
    };
    await callFromPage(page, 'fits.create', { fit });
  }
  await goTo(page, `#/boats/${boatId}`);
});
afterAll(() => program.dispose());

describe('one board for everybody', () => {
  it('plans the fewest holes for three pads 5 mm apart, and the boat keeps them', async () => {
    await page.getByRole('button', { name: 'Plan the holes' }).click();
    await soon(() => page.getByText('No plan has fewer.').count()).toBe(1);
    // Two bolts of a pad, and what the rests ask for: all three stand in the same holes.
    await soon(() => page.getByText(/^4 new holes/).count()).toBe(1);
    await page.getByRole('button', { name: 'Save holes with the boat' }).click();
    await soon(async () => (await callFromPage(page, 'boats.open', { id: boatId })).boat.holes?.length).toBe(
      4,
    );
    // The form has them at once, and says so when they are drilled.
    await soon(() => page.getByRole('button', { name: 'Remove hole' }).count()).toBe(4);
    await page.getByRole('button', { name: 'All drilled now' }).click();
    await page.getByRole('button', { name: 'Save', exact: true }).click();
    await soon(async () => {
      const { holes = [] } = (await callFromPage(page, 'boats.open', { id: boatId })).boat;
      return holes.filter(({ state }) => state === 'drilled').length;
    }).toBe(4);
  });

  it('gives the card for the boathouse and the floorboard as files', async () => {
    for (const name of ['Change-over card', 'Floorboard, full size (DXF)']) {
      const [download] = await Promise.all([
        page.waitForEvent('download'),
        page.getByRole('button', { name, exact: true }).click(),
      ]);
      expect(download.suggestedFilename()).toMatch(
        /^(Change-over card|Floorboard for everybody).*\.(pdf|dxf)$/,
      );
    }
  });
});
