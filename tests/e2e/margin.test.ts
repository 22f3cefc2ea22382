import type { Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { formatFor } from '../../app/language/format.ts';
import { evaluateFit } from '../../core/evaluation/evaluator.ts';
import { quantityText } from '../../renderer/bench/quantity-text.ts';
import { exampleFit, exampleSeat } from '../core/example/example-fit.ts';
import { findingTitle, plainSpaces } from '../english.ts';
import { inOneBurst } from './hand.ts';
import { type RunningProgram, startProgram } from './harness.ts';
import { openOnBench, PAD_AFT, padAft as padAftOn } from './open-bench.ts';
import { callFromPage, enter, measure, soon, textOf } from './screens.ts';

let program: RunningProgram;
let page: Page;
let fitId: string;

/** A front foot too far aft and a rest that runs into the hull, so that there is something to propose. */
function closedKnee() {
  const seat = exampleSeat();
  return exampleFit([{ ...seat, frontFoot: { ...seat.frontFoot, forwardM: 0.3 } }]);
}

/** A new fit on the bench. */
async function openBench(): Promise<void> {
  fitId = await openOnBench(page, closedKnee());
}

const padAft = () => padAftOn(page);
const undo = () => page.getByRole('button', { name: 'Undo' }).click();
/** The fit as it is on the disk once everything has been kept. */
async function keptFit() {
  await page.locator('.kept[data-keeping="kept"]').waitFor();
  return (await callFromPage(page, 'fits.open', { id: fitId })).fit;
}

beforeAll(async () => {
  program = await startProgram();
  page = await program.openBrowser();
});
beforeEach(openBench);
afterAll(() => program?.dispose());

describe('measures typed beside the drawing', () => {
  it('are understood as people write them', async () => {
    for (const [typed, shown] of [
      ['16.5', '16.5 cm'],
      ['16,6', '16.6 cm'],
      ['167 mm', '16.7 cm'],
      ['6 7/8 in', '17.46 cm'],
    ] as const) {
      await enter(page, PAD_AFT, typed);
      expect(await padAft(), typed).toBe(shown);
    }
  });

  it('are kept on the disk without being asked', async () => {
    await enter(page, PAD_AFT, '18');
    await soon(async () => (await keptFit()).seats[0]!.kneePad.aftM).toBe(0.18);
  });

  it('out of range explain themselves and keep the last good value', async () => {
    await enter(page, PAD_AFT, '18');
    await enter(page, PAD_AFT, '99');
    expect(await padAft()).toBe('18.0 cm');
    const why = page.getByRole('alert').filter({ hasText: 'is too large; at most' });
    expect(await textOf(why)).toContain('18.0 cm stays.');
    await enter(page, PAD_AFT, 'about so much');
    expect(await padAft()).toBe('18.0 cm');
    await measure(page, PAD_AFT).press('Escape');
    await why.waitFor({ state: 'detached' });
  });

  it('nudged in a burst are one step of undo, and the result is spoken', async () => {
    await enter(page, PAD_AFT, '18');
    await measure(page, PAD_AFT).focus();
    await inOneBurst(page, async () => {
      for (let i = 0; i < 12; i++) await page.keyboard.press('ArrowUp');
      await page.keyboard.press('Shift+ArrowUp');
      await page.keyboard.press('Control+ArrowDown');
    });
    expect(await padAft()).toBe('20.19 cm');
    await soon(() => textOf(page.locator('#spoken'))).toMatch(/Knee pad: Aft of the mark 20[.]19/);
    await undo();
    expect(await padAft()).toBe('18.0 cm');
  });

  it('undo and redo by key, each typed value a step', async () => {
    await enter(page, PAD_AFT, '18');
    await enter(page, PAD_AFT, '19');
    await enter(page, PAD_AFT, '20');
    await page.keyboard.press('Control+z');
    expect(await padAft()).toBe('19.0 cm');
    await page.keyboard.press('Control+z');
    expect(await padAft()).toBe('18.0 cm');
    await page.keyboard.press('Control+Shift+z');
    await page.keyboard.press('Control+y');
    expect(await padAft()).toBe('20.0 cm');
  });
});

describe('the numbers on the screen', () => {
  it('are those of the evaluation, every one of them', async () => {
    await enter(page, PAD_AFT, '16');
    const fit = await keptFit();
    const report = evaluateFit(fit);
    const format = formatFor({ length: 'cm', mass: 'kg', decimal: 'point' });
    await page.getByRole('tab', { name: 'Values' }).click();
    const shown = await page
      .locator('[data-quantity]')
      .evaluateAll((rows) =>
        rows.map((row) => [
          (row as HTMLElement).dataset.quantity!,
          row.querySelector('.value-number')!.textContent!,
        ]),
      );
    const wanted = report.quantities.map((quantity) => [quantity.id, quantityText(quantity, format)]);
    expect(new Map(shown as [string, string][])).toEqual(new Map(wanted as [string, string][]));
    expect(shown.length).toBe(report.quantities.length);
  });

  it('and so are the notes, in the same order', async () => {
    await enter(page, PAD_AFT, '16');
    await page.getByRole('tab', { name: /^Findings/ }).click();
    const report = evaluateFit(await keptFit());
    const format = formatFor({ length: 'cm', mass: 'kg', decimal: 'point' });
    const titles = await page.locator('.note-title').allInnerTexts();
    const wanted = report.findings.map((finding) => findingTitle(finding, format.quantity(finding.quantity)));
    expect(titles.map(plainSpaces)).toEqual(wanted);
  });
});

describe('margin notes', () => {
  it('show their change as an outline and take it in one step', async () => {
    const note = page.locator('[data-finding="restBevel@0"]');
    await note.getByRole('button', { name: /^Apply:/ }).waitFor();
    const before = await keptFit();
    await note.getByRole('button', { name: /^Show:/ }).click();
    expect((await keptFit()).seats).toEqual(before.seats);
    await note.getByRole('button', { name: /^Hide:/ }).waitFor();
    await note.getByRole('button', { name: /^Apply:/ }).click();
    await soon(async () => (await keptFit()).seats).not.toEqual(before.seats);
    await soon(() => note.getAttribute('data-severity')).toBe('good');
    await undo();
    await soon(async () => (await keptFit()).seats).toEqual(before.seats);
  });

  it('never propose to move what is locked', async () => {
    const note = page.locator('[data-finding="frontKnee@0"]');
    await page.getByRole('tab', { name: 'Front foot' }).click();
    await page.getByRole('button', { name: /^Lock Front foot/ }).click();
    await page.getByRole('button', { name: /^Locked: Front foot/ }).waitFor();
    await note.locator('.note-change, .note-looking').filter({ hasNotText: 'Looking' }).waitFor();
    expect(await textOf(note)).not.toContain('Front foot');
    expect((await keptFit()).seats[0]!.locks).toEqual(['frontFoot']);
  });

  it('light their part when pointed at', async () => {
    const note = page.locator('[data-finding="frontKnee@0"]');
    // Answers that come in meanwhile may push the note away from under the pointer.
    const pointedAt = async () => {
      await page.mouse.move(5, 5);
      await note.hover();
      return note.getAttribute('data-lit');
    };
    await soon(pointedAt).not.toBeNull();
    await page.mouse.move(5, 5);
    await soon(() => note.getAttribute('data-lit')).toBeNull();
  });
});

describe('two windows on one fit', () => {
  it('never write over each other: the later one is told and may load the newer state', async () => {
    await enter(page, PAD_AFT, '18');
    const fit = await keptFit();
    const other = {
      ...fit,
      seats: [{ ...fit.seats[0]!, kneePad: { ...fit.seats[0]!.kneePad, aftM: 0.155 } }],
    };
    await callFromPage(page, 'drafts.save', { id: fitId, fit: other });
    await enter(page, PAD_AFT, '19');
    await page.getByRole('button', { name: 'Load again' }).click();
    await soon(padAft).toBe('15.5 cm');
  });
});

describe('a program that is gone', () => {
  it('is told of, and what was edited meanwhile is kept when it is back', async () => {
    await page.route('**/call', (route) => route.abort());
    await enter(page, PAD_AFT, '18,5');
    await page.getByText('not saved yet; retrying').waitFor();
    await enter(page, PAD_AFT, '18,6');
    await page.getByRole('button', { name: 'Try again' }).waitFor();
    await page.unroute('**/call');
    await soon(async () => (await keptFit()).seats[0]!.kneePad.aftM).toBe(0.186);
  });
});
