import type { Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { createEvaluator } from '../../core/evaluation/evaluator.ts';
import { usualHull } from '../../core/hull/usual-hull.ts';
import { propose } from '../../core/optimise/propose.ts';
import { withMoves } from '../../renderer/bench/proposal/with-moves.ts';
import { exampleAthlete, exampleFit, exampleSeat } from '../core/example/example-fit.ts';
import { barriersOn } from './barriers.ts';
import { type RunningProgram, startProgram } from './harness.ts';
import { PAD_AFT } from './open-bench.ts';
import { proposalHand, proposed, spoilt, spoiltPair } from './proposal-hand.ts';
import { callFromPage, goTo, measure, soon, textOf } from './screens.ts';

let program: RunningProgram;
let page: Page;
const { openFit, keptFit, ask, leave, undo, moves } = proposalHand(() => page);

beforeAll(async () => {
  program = await startProgram();
  page = await program.openBrowser();
});
afterAll(() => program?.dispose());

describe('a proposal that is not taken', () => {
  beforeEach(() => openFit(spoilt()));

  it('left, it leaves everything as it was', async () => {
    const before = await keptFit();
    await ask().click();
    await leave().click();
    await ask().waitFor();
    expect(await keptFit()).toEqual(before);
    expect(await undo().isDisabled()).toBe(true);
  });

  it('an edit makes it out of date: it is gone, not taken by mistake', async () => {
    await page.locator('.part-card').getByRole('tab', { name: 'Front foot' }).click();
    await ask().click();
    await leave().waitFor();
    await measure(page, 'Front foot: Heel ahead of mark').press('ArrowUp');
    await ask().waitFor();
    expect(await leave().count()).toBe(0);
  });
});

describe('the offers', () => {
  const seat = exampleSeat();
  const offering = exampleFit([{ ...seat, kneePad: { ...seat.kneePad, aftM: 0.205 } }]);
  const button = (name: RegExp) => page.locator('.proposal-offers').getByRole('button', { name });
  beforeEach(() => openFit(offering));

  it('come after the least change, each with its moves and its price, and change nothing by themselves', async () => {
    const before = await keptFit();
    const { offers } = proposed(before);
    await ask().click();
    await button(/^Show: /)
      .first()
      .waitFor();
    expect(await page.locator('.proposal-offers > li').count()).toBe(offers.length);
    const told = await textOf(page.locator('.proposal-offers > li').first());
    expect(told).toMatch(/Also changes: .* → |Nothing else changes/);
    await button(/^Show: /)
      .first()
      .click();
    await button(/^Hide: /)
      .first()
      .waitFor();
    expect(await keptFit()).toEqual(before);
    expect(await barriersOn(page)).toEqual([]);
  });

  it('applied, one clears its check in one step', async () => {
    const before = await keptFit();
    const { fit, offers } = proposed(before);
    const [offer] = offers;
    await ask().click();
    await button(/^Apply: /)
      .first()
      .click();
    await soon(keptFit).toEqual(withMoves(fit, offer!));
    const severity = createEvaluator()
      .evaluate(await keptFit())
      .findings.find(({ id }) => id === offer!.finding.id)!.severity;
    expect(severity).toBe('good');
    await undo().click();
    await soon(keptFit).toEqual(before);
  });
});

describe('a crew', () => {
  beforeEach(() => openFit(spoiltPair()));

  it('or for one paddler alone: nobody else is moved', async () => {
    const before = await keptFit();
    const { fit, moves: own, offers } = propose(createEvaluator(), before, [0]);
    await page.locator('.proposal').getByText('this paddler').click();
    await ask().click();
    await leave().waitFor();
    expect(await moves()).toHaveLength(own.length);
    await page
      .getByRole('button', { name: /^Apply: / })
      .first()
      .click();
    await soon(keptFit).toEqual(withMoves(fit, offers[0]!));
    const after = await keptFit();
    expect(after.seats[0]).not.toEqual(before.seats[0]);
    expect(after.seats[1]).toEqual(before.seats[1]);
  });
});

describe('a first setting', () => {
  it('is proposed from athlete and boat alone, shown first, and is what the fit begins from', async () => {
    const athlete = await callFromPage(page, 'athletes.save', {
      athlete: exampleAthlete({ name: 'Newly Come' }),
    });
    const boat = await callFromPage(page, 'boats.save', {
      boat: { ...usualHull({ boatClass: 'C1' }), name: 'First single' },
    });
    await goTo(page, '#/fits/new');
    await page.getByLabel('Boat').selectOption(boat.id);
    await page.getByLabel('Athlete').selectOption(athlete.id);
    await page.getByRole('button', { name: 'Propose a first setting' }).click();
    const padAft = page.locator('[data-coordinate="kneePad.aftM"] dd');
    await padAft.waitFor();
    const shown = await textOf(padAft);
    expect(await barriersOn(page)).toEqual([]);
    await page.getByRole('button', { name: 'Create' }).click();
    await measure(page, PAD_AFT).waitFor();
    expect((await measure(page, PAD_AFT).inputValue()).replace('\u{202f}', ' ')).toBe(shown);
    const [, id] = /fits\/([0-9a-f-]+)/.exec(page.url())!;
    const { fit } = await callFromPage(page, 'fits.open', { id: id! });
    const serious = createEvaluator()
      .evaluate(fit)
      .findings.filter(({ severity }) => severity === 'change' || severity === 'stop');
    expect(serious.map((f) => f.quantity)).toEqual([]);
  });

  it('is forgotten when another athlete is chosen', async () => {
    const [one, other] = [
      await callFromPage(page, 'athletes.save', { athlete: exampleAthlete({ name: 'First Chosen' }) }),
      await callFromPage(page, 'athletes.save', {
        athlete: exampleAthlete({ name: 'Somebody Else', statureM: 1.6, massKg: 55 }),
      }),
    ];
    const hull = { ...usualHull({ boatClass: 'C1' }), name: 'Second single' };
    const boat = await callFromPage(page, 'boats.save', { boat: hull });
    await goTo(page, '#/');
    await page.getByRole('heading', { level: 1 }).waitFor();
    await goTo(page, '#/fits/new');
    await page.getByLabel('Boat').selectOption(boat.id);
    await page.getByLabel('Athlete').selectOption(one.id);
    await page.getByRole('button', { name: 'Propose a first setting' }).click();
    await page.locator('.first-measures').waitFor();
    await page.getByLabel('Athlete').selectOption(other.id);
    await page.getByRole('button', { name: 'Propose a first setting' }).waitFor();
    expect(await page.locator('.first-measures').count()).toBe(0);
  });
});
