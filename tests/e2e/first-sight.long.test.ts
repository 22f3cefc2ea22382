import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Fit } from '../../core/document/fit-schema.ts';
import { exampleAthlete, exampleFit, exampleSeat } from '../core/example/example-fit.ts';
import { barriersInBothThemes } from './barriers.ts';
import { handlePlace } from './hand.ts';
import { type RunningProgram, startProgram } from './harness.ts';
import { openOnBench } from './open-bench.ts';
import { callFromPage, goTo, soon } from './screens.ts';

let program: RunningProgram;
let page: Page;

/** A pad far aft and far in, and a foot near: more than five findings. */
function farAft(): Fit {
  const seat = exampleSeat();
  return exampleFit([
    exampleSeat({
      kneePad: { ...seat.kneePad, aftM: 0.28, outM: 0.01 },
      frontFoot: { ...seat.frontFoot, forwardM: 0.4 },
    }),
  ]);
}

beforeAll(async () => {
  program = await startProgram();
  page = await program.openBrowser({ viewport: { width: 1280, height: 800 }, reducedMotion: 'reduce' });
  await openOnBench(page, farAft());
});
afterAll(() => program.dispose());

describe('a window of 1280 × 800', () => {
  it('shows at least five findings whole, each with its price', async () => {
    const whole = () =>
      page.evaluate(() => {
        const room = document.querySelector('.tab-scroll')!.getBoundingClientRect();
        const notes = [...document.querySelectorAll('.note:not([data-severity="good"])')];
        return notes.filter((note) => note.getBoundingClientRect().bottom <= room.bottom).length;
      });
    await soon(() => page.locator('.note-looking').filter({ hasText: 'Looking' }).count()).toBe(0);
    expect(await whole()).toBeGreaterThanOrEqual(5);
  });

  it('has its tabs in one row', async () => {
    const tops = await page
      .locator('.margin-tabs')
      .getByRole('tab')
      .evaluateAll((tabs) => tabs.map((tab) => Math.round(tab.getBoundingClientRect().top)));
    expect(tops.length).toBeGreaterThanOrEqual(7);
    expect(new Set(tops).size).toBe(1);
  });

  // A head that is taller still is shown whole, and costs 1 % of that for each 2 cm of stature.
  it.each([
    [1.75, 3.01],
    [1.8, 3.05],
  ])('draws a pixel for 3 mm of the boat with a paddler %f m tall', async (statureM, most) => {
    await openOnBench(page, exampleFit([exampleSeat({ athlete: exampleAthlete({ statureM }) })]));
    const { kneePad, frontFoot } = exampleSeat();
    const [pad, foot] = [await handlePlace(page, 'kneePad/plan'), await handlePlace(page, 'frontFoot/plan')];
    expect((1000 * (kneePad.aftM + frontFoot.forwardM)) / (foot.x - pad.x)).toBeLessThanOrEqual(most);
  });
});

describe('a window of 1024 × 700', () => {
  it('has the drawing as tall as itself, and card and margin beside it', async () => {
    await page.setViewportSize({ width: 1024, height: 700 });
    const boxOf = async (what: string) => (await page.locator(what).boundingBox())!;
    await soon(async () => (await boxOf('.margin')).x).toBeGreaterThan(600);
    const [drawing, card, margin] = [
      await boxOf('.drawing'),
      await boxOf('.part-card'),
      await boxOf('.margin'),
    ];
    expect(drawing.height).toBeGreaterThan(640);
    expect(card.x).toBeGreaterThanOrEqual(drawing.x + drawing.width - 1);
    expect(margin.y).toBeGreaterThanOrEqual(card.y + card.height - 1);
    await page.setViewportSize({ width: 1280, height: 800 });
  });
});

describe('an upright window of 800 × 1200', () => {
  it('has the drawing across the whole of it, card and margin side by side below', async () => {
    await page.setViewportSize({ width: 800, height: 1200 });
    const boxOf = async (what: string) => (await page.locator(what).boundingBox())!;
    await soon(async () => (await boxOf('.drawing')).width).toBeGreaterThan(790);
    const [drawing, card, margin] = [
      await boxOf('.drawing'),
      await boxOf('.part-card'),
      await boxOf('.margin'),
    ];
    expect(card.y).toBeGreaterThanOrEqual(drawing.y + drawing.height);
    expect(margin.y).toBeGreaterThanOrEqual(drawing.y + drawing.height);
    expect(margin.x).toBeGreaterThanOrEqual(card.x + card.width - 1);
    const { kneePad, frontFoot } = exampleSeat();
    const [pad, foot] = [await handlePlace(page, 'kneePad/plan'), await handlePlace(page, 'frontFoot/plan')];
    expect((1000 * (kneePad.aftM + frontFoot.forwardM)) / (foot.x - pad.x)).toBeLessThanOrEqual(3.6);
    await page.setViewportSize({ width: 1280, height: 800 });
  });
});

describe('the menu of a narrow window', () => {
  it('is closed on the page that a tool of it leads to', async () => {
    await page.setViewportSize({ width: 820, height: 1180 });
    await openOnBench(page, exampleFit());
    await page.getByRole('button', { name: 'Menu', exact: true }).click();
    await page.getByRole('link', { name: 'Workshop sheet', exact: true }).click();
    await page.getByRole('region', { name: 'Workshop sheet' }).waitFor();
    expect(await page.locator('.sheet-menu[data-open]').count()).toBe(0);
    await page.setViewportSize({ width: 1280, height: 800 });
  });
});

describe('a crew in a window of 1280 × 800', () => {
  it('has its eight tabs in one row', async () => {
    const other = exampleSeat({ side: 'right', athlete: exampleAthlete({ name: 'The other one' }) });
    await openOnBench(page, exampleFit([exampleSeat(), other]));
    const tops = await page
      .locator('.margin-tabs')
      .getByRole('tab')
      .evaluateAll((tabs) => tabs.map((tab) => Math.round(tab.getBoundingClientRect().top)));
    expect(tops).toHaveLength(8);
    expect(new Set(tops).size).toBe(1);
  });

  it.each(['de', 'hu', 'es', 'pl', 'zh', 'en'] as const)('has them in one row in %s', async (language) => {
    const display = await callFromPage(page, 'display.read', {});
    await callFromPage(page, 'display.keep', { ...display, language });
    await page.reload();
    await page.locator(`html[lang=${language}]`).waitFor();
    const tabs = page.locator('.margin-tabs').getByRole('tab');
    await soon(() => tabs.count()).toBe(8);
    const tops = await tabs.evaluateAll((all) => all.map((tab) => tab.getBoundingClientRect().top));
    expect(new Set(tops).size).toBe(1);
  });
});

describe('a photograph page without a picture', () => {
  it('shows where to stand, and both pictures as they should be', async () => {
    const athlete = await callFromPage(page, 'athletes.save', { athlete: exampleAthlete() });
    const boat = await callFromPage(page, 'boats.save', { boat: exampleFit().boat });
    const fit = farAft();
    const seat = { ...fit.seats[0]!, athlete: { ...fit.seats[0]!.athlete!, id: athlete.id } };
    const { id: listed } = await callFromPage(page, 'fits.create', {
      fit: { ...fit, boat: { ...fit.boat, id: boat.id }, seats: [seat] },
    });
    await goTo(page, `#/fits/${listed}/photograph`);
    const figures = page.locator('.photograph-example figure');
    await soon(() => figures.count()).toBe(3);
    for (const figure of [1, 2]) {
      await soon(() => figures.nth(figure).locator('.ring').count()).toBeGreaterThan(8);
    }
    expect(await barriersInBothThemes(page)).toEqual([]);
  });
});
