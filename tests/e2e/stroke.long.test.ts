import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { formatFor } from '../../app/language/format.ts';
import type { Fit } from '../../core/document/fit-schema.ts';
import { createEvaluator, evaluateFit } from '../../core/evaluation/evaluator.ts';
import { paddleOf } from '../../core/evaluation/paddle-quantities.ts';
import { hullOfBoat } from '../../core/hull/hull-of-boat.ts';
import { derivativesTo } from '../../core/optimise/sensitivity.ts';
import { rankStock } from '../../core/paddle/rank-stock.ts';
import { strokeCycle } from '../../core/stroke/stroke-cycle.ts';
import { strokeOfFit } from '../../core/stroke/stroke-of-fit.ts';
import { wantedPaddle } from '../../renderer/bench/tabs/paddle/stock-words.ts';
import { strokePlots } from '../../renderer/bench/tabs/stroke/stroke-plots.ts';
import { strokeTableRows } from '../../renderer/bench/tabs/stroke/stroke-table-rows.ts';
import { exampleFit, exampleSeat } from '../core/example/example-fit.ts';
import { barriersInBothThemes } from './barriers.ts';
import { handlePlace, nextFrame } from './hand.ts';
import { type RunningProgram, startProgram } from './harness.ts';
import { callFromPage, enter, goTo, measure, numberIn, soon, textOf } from './screens.ts';

const PAD_HEIGHT = 'Knee pad: Height';
const STOCK = [
  { name: 'Reed', lengthM: 1.62, bladeLengthM: 0.57 },
  { name: 'Sedge', lengthM: 1.69, bladeLengthM: 0.6 },
  { name: 'Rush', lengthM: 1.73, bladeLengthM: 0.61, bladeAngleDeg: 4, massKg: 0.7 },
  { name: 'Iris', lengthM: 1.7, bladeLengthM: 0.55 },
];
const format = formatFor({ length: 'cm', mass: 'kg', decimal: 'point' });

let program: RunningProgram;
let page: Page;
let fitId: string;

const tabNamed = (name: string) => page.locator('.margin-tabs').getByRole('tab', { name, exact: true });
const slider = () => page.getByRole('slider', { name: 'Along the stroke' });
const undo = () => page.getByRole('button', { name: 'Undo', exact: true });

async function keptFit(): Promise<Fit> {
  await page.locator('.kept[data-keeping="kept"]').waitFor();
  return (await callFromPage(page, 'fits.open', { id: fitId })).fit;
}

async function openFit(fit: Fit): Promise<void> {
  fitId = (await callFromPage(page, 'fits.create', { fit })).id;
  await goTo(page, `#/fits/${fitId}`);
  await measure(page, PAD_HEIGHT).waitFor();
}

beforeAll(async () => {
  program = await startProgram();
  page = await program.openBrowser({ clock: true });
  for (const paddle of STOCK) await callFromPage(page, 'paddles.save', { paddle });
  await openFit({ ...exampleFit(), name: 'Through a stroke' });
});
afterAll(() => program?.dispose());

describe('the stroke’s slider', () => {
  beforeAll(async () => {
    await tabNamed('Stroke').click();
    // At the catch the lower hand is ahead of the cockpit's view.
    await page.getByRole('button', { name: 'Whole boat' }).click();
    await nextFrame(page);
  });

  it('moves the figure on the drawing: the lower hand goes forward to the catch and aft to the exit', async () => {
    const at = async () => (await handlePlace(page, 'lowerHand/profile')).x;
    const ready = await at();
    await page.getByRole('button', { name: 'Show the catch' }).click();
    await nextFrame(page);
    const atCatch = await at();
    await page.getByRole('button', { name: 'Show the exit' }).click();
    await nextFrame(page);
    const exit = await at();
    expect(atCatch - ready).toBeGreaterThan(30);
    expect(exit - ready).toBeLessThan(-10);
    await page.getByRole('button', { name: 'Show the ready' }).click();
    await nextFrame(page);
    expect(await at()).toBeCloseTo(ready, 1);
  });

  it('goes by arrow keys, says where it stands, and draws nothing of the page anew but its reading', async () => {
    await slider().focus();
    await page.evaluate(() => {
      const seen = new Set<string>();
      Object.assign(globalThis, { seen });
      const observer = new MutationObserver((records) => {
        for (const { target } of records) {
          const element = target instanceof Element ? target : target.parentElement;
          seen.add(element?.closest('[class]')?.className ?? 'nameless');
        }
      });
      const whatever = { subtree: true, childList: true, characterData: true };
      observer.observe(document.querySelector('.margin')!, whatever);
    });
    for (let i = 0; i < 20; i++) await page.keyboard.press('ArrowRight');
    await soon(() => slider().getAttribute('aria-valuetext')).toMatch(/^catch: bow [+−]?\d+.mm/);
    // The clock of what was kept when goes on meanwhile.
    await nextFrame(page);
    const changed = await page.evaluate(() => [...(globalThis as unknown as { seen: Set<string> }).seen]);
    expect(changed.filter((name) => name !== 'kept')).toEqual(['stroke-reading']);
    expect(await slider().inputValue()).toBe('1');
    const cursor = page.locator('.plot-cursor').first();
    const field = (await page.locator('.plot-field').first().boundingBox())!;
    const box = (await cursor.boundingBox())!;
    expect((box.x - field.x) / field.width).toBeCloseTo(1 / 3, 1);
  });

  it('lets go when the tab is left: the drawing stands ready again', async () => {
    const atCatch = (await handlePlace(page, 'lowerHand/profile')).x;
    await tabNamed('Values').click();
    await nextFrame(page);
    const left = (await handlePlace(page, 'lowerHand/profile')).x;
    expect(atCatch - left).toBeGreaterThan(30);
    await tabNamed('Stroke').click();
    expect(await slider().inputValue()).toBe('0');
  });
});

describe('the plots', () => {
  async function expected() {
    const fit = await keptFit();
    const rows = strokeCycle(strokeOfFit(fit, evaluateFit(fit)), 8);
    const { side } = fit.seats[0]!;
    return strokeTableRows(strokePlots(rows, { seat: 0, side, format })!, { perLeg: 8, format });
  }

  async function shown() {
    const table = page.locator('.stroke-numbers tbody tr');
    return table.evaluateAll((rows) =>
      rows.map((row) => ({
        id: (row as HTMLElement).dataset.row,
        cells: [...row.querySelectorAll('td')].map((cell) => cell.textContent),
      })),
    );
  }

  it('have a table of the core’s own numbers', async () => {
    await page.locator('.stroke-numbers summary').click();
    const rows = await expected();
    expect(rows.length).toBeGreaterThan(8);
    expect(await shown()).toEqual(rows.map(({ id, at, swing }) => ({ id, cells: [...at, swing] })));
  });

  it('follow the drive force, which goes to the document in one step and back', async () => {
    const before = await shown();
    await enter(page, 'Mean blade force in the drive, N', '260');
    await soon(async () => (await shown()).find(({ id }) => id === 'loads.blade')?.cells[2]).toBe('408');
    expect((await keptFit()).seats[0]!.stroke.driveForceN).toBe(260);
    expect(await shown()).toEqual(
      (await expected()).map(({ id, at, swing }) => ({ id, cells: [...at, swing] })),
    );
    await undo().click();
    await soon(shown).toEqual(before);
    expect((await keptFit()).seats[0]!.stroke).toEqual({});
  });

  it('are told to a screen reader, and nothing is in its way', async () => {
    const told = await page.getByRole('img', { name: /^Bow over stern, mm\. bow from/ }).count();
    expect(told).toBe(1);
    expect(await barriersInBothThemes(page)).toEqual([]);
  });
});

describe('the paddle’s tab', () => {
  beforeAll(() => tabNamed('Paddle').click());

  const value = (name: string) =>
    textOf(
      page
        .locator('.paddle-tab tr', { has: page.getByRole('rowheader', { name, exact: true }) })
        .locator('td')
        .first(),
    );

  async function paddleNow() {
    const fit = await keptFit();
    const report = evaluateFit(fit);
    return paddleOf(
      { ...report.seats[0]!, seat: fit.seats[0]! },
      { hull: hullOfBoat(fit.boat) },
      report.afloat.ready,
    )!;
  }

  it('shows the core’s lengths and parts', async () => {
    const paddle = await paddleNow();
    // Shown in whole centimetres where the doubt is of centimetres.
    for (const [name, { lengthM }] of [
      ['By stature', paddle.byStature],
      ['By the stance', paddle.byStance],
    ] as const)
      expect(Math.abs(numberIn(await value(name)) - 100 * lengthM), name).toBeLessThanOrEqual(0.5);
    const parts = await page.locator('.paddle-part-length').allTextContents();
    const sum = parts.reduce((total, text) => total + numberIn(text), 0);
    expect(sum).toBeCloseTo(100 * paddle.byStance.lengthM, 0);
  });

  it('follows the pad’s height while the hand still holds it', async () => {
    const before = numberIn(await value('By the stance'));
    const overWater = numberIn(await value('Lower hand over water, mid-drive'));
    const { x, y } = await handlePlace(page, 'kneePad/profile');
    await page.mouse.move(x, y);
    await page.mouse.down();
    await page.mouse.move(x, y - 12, { steps: 5 });
    await soon(async () => numberIn(await value('By the stance')) - before).toBeGreaterThan(1);
    expect(numberIn(await value('Lower hand over water, mid-drive'))).toBeGreaterThan(overWater + 1);
    await page.keyboard.press('Escape');
    await page.mouse.up();
    await soon(async () => numberIn(await value('By the stance'))).toBe(before);
  });

  it('ranks the club’s paddles as the core does, and takes one in one undoable step', async () => {
    const fit = await keptFit();
    const bladeBand = evaluateFit(fit).findings.find((f) => f.quantity === 'bladeShare')!.band;
    const ranked = (by: 'stature' | 'stance', paddle: Awaited<ReturnType<typeof paddleNow>>) =>
      rankStock(STOCK, wantedPaddle(paddle, by, bladeBand)).map((one) => one.paddle.name);
    const shown = () =>
      page
        .locator('.paddle-stock li')
        .evaluateAll((items) => items.map((li) => (li as HTMLElement).dataset.paddle));
    const paddle = await paddleNow();
    await soon(shown).toEqual(ranked('stature', paddle));
    await page.locator('.paddle-tab').getByText('by the stance', { exact: true }).click();
    await soon(shown).toEqual(ranked('stance', paddle));
    await page.getByRole('button', { name: 'Apply: paddle Rush' }).click();
    await page.getByText('used now').waitFor();
    expect((await keptFit()).seats[0]!.paddle).toMatchObject({
      lengthM: 1.73,
      bladeLengthM: 0.61,
      bladeAngleDeg: 4,
      massKg: 0.7,
      lowerHandM: fit.seats[0]!.paddle.lowerHandM,
    });
    await undo().click();
    expect((await keptFit()).seats[0]!.paddle).toEqual(fit.seats[0]!.paddle);
  });

  it('a measured height of the top hand moves the length by as much', async () => {
    const before = await paddleNow();
    const over = Math.round(before.midDrive.topHandOver * 100) - 10;
    await enter(page, 'Top hand over shoulders, mid-drive', String(over));
    const change = () =>
      value('By the stance').then((text) => numberIn(text) - 100 * before.byStance.lengthM);
    await soon(change).toBeCloseTo(over - 100 * before.midDrive.topHandOver, 0);
    expect((await keptFit()).seats[0]!.stroke.topHandOverM).toBeCloseTo(over / 100, 9);
    await undo().click();
  });

  it('has no barrier', async () => {
    expect(await barriersInBothThemes(page)).toEqual([]);
  });
});

describe('the club’s paddles', () => {
  it('are put in, changed, set aside and brought back', async () => {
    await goTo(page, '#/paddles');
    await page.getByRole('link', { name: 'Add paddle' }).click();
    await page.getByRole('button', { name: 'Save', exact: true }).click();
    expect(await page.locator('.field-problem', { hasText: 'This is needed.' }).count()).toBe(3);
    await page.getByRole('textbox', { name: 'Name on the paddle' }).fill('Willow');
    await enter(page, 'Overall length', '165');
    await enter(page, 'Blade length', '58');
    expect(await barriersInBothThemes(page)).toEqual([]);
    await page.getByRole('button', { name: 'Save', exact: true }).click();
    await page.getByRole('link', { name: 'Willow' }).click();
    await enter(page, 'Overall length', '166');
    await page.getByRole('button', { name: 'Save', exact: true }).click();
    await page.getByRole('link', { name: 'Willow' }).waitFor();
    const kept = await callFromPage(page, 'paddles.list', { search: 'willow' });
    expect(kept).toMatchObject([{ paddle: { name: 'Willow', lengthM: 1.66, bladeLengthM: 0.58 } }]);
    expect(await barriersInBothThemes(page)).toEqual([]);
    await page.getByRole('button', { name: /Willow/ }).click();
    await soon(async () => (await callFromPage(page, 'paddles.list', {})).length).toBe(STOCK.length);
  });
});

describe('what one centimetre does, and what would tighten a value', () => {
  beforeAll(() => openFit(exampleFit([exampleSeat({ side: 'right' })])));

  it('the table has the core’s derivatives, and the handle tells the same', async () => {
    await tabNamed('Values').click();
    await page.getByRole('button', { name: 'Effect of 1 cm on every value' }).click();
    const cell = (quantity: string, column: number) =>
      textOf(page.locator(`.centimetre tr[data-quantity="${quantity}"] td`).nth(column));
    await page.locator('.centimetre').waitFor();
    const fit = await keptFit();
    const evaluator = createEvaluator();
    const report = evaluator.evaluate(fit);
    const aft = derivativesTo({ evaluator, fit, report }, { seat: 0, coordinate: 'kneePad.aftM' });
    const trim = aft.find(({ id }) => id === 'trimRest')!.perUnit * 0.01 * 1000;
    const knee = (aft.find(({ id }) => id === 'frontKnee')!.perUnit * 0.01 * 180) / Math.PI;
    expect(numberIn(await cell('trimRest', 0))).toBeCloseTo(trim, 1);
    expect(numberIn(await cell('frontKnee', 0))).toBeCloseTo(knee, 1);
    expect(await barriersInBothThemes(page)).toEqual([]);
    await page.getByRole('button', { name: 'Close', exact: true }).click();
    await page.locator('[data-grip="kneePad/plan"]').focus();
    const row = page.locator('.part-card [data-coordinate="kneePad.aftM"]');
    expect(await textOf(row)).toContain(`${format.number(trim, { decimals: 1, signed: true })} mm`);
  });

  it('a value says which measurement would tighten it most, with the interval then', async () => {
    await page
      .getByRole('button', { name: /^Trunk forward/ })
      .first()
      .click();
    await page.getByRole('button', { name: /^What would make it surer\? trunk/i }).click();
    const first = page.locator('.tighten li').first();
    await first.waitFor();
    expect(await first.getAttribute('data-measure')).toBe('photo.trunkPitch');
    const [from = 0, to = 0] = (await textOf(first.locator('.tighten-change'))).split(' to ').map(numberIn);
    expect(from).toBeGreaterThan(6.5);
    expect(to).toBeGreaterThan(3);
    expect(to).toBeLessThan(from * 0.6);
    expect(await barriersInBothThemes(page)).toEqual([]);
  });
});
