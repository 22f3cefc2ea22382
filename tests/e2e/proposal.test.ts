import type { Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { barriersOn } from './barriers.ts';
import { pressWhenItComes } from './hand.ts';
import { type RunningProgram, startProgram } from './harness.ts';
import { proposalHand, proposed, spoilt, spoiltPair } from './proposal-hand.ts';
import { soon, textOf } from './screens.ts';

let program: RunningProgram;
let page: Page;
const { openFit, keptFit, ask, take, leave, undo, moves } = proposalHand(() => page);

beforeAll(async () => {
  program = await startProgram();
  page = await program.openBrowser();
});
afterAll(() => program?.dispose());

describe('the least change, in the bench', () => {
  beforeEach(() => openFit(spoilt()));

  it('is drawn before anything is changed, with every move and what it could not clear and why', async () => {
    const before = await keptFit();
    await ask().click();
    await take().waitFor();
    expect(await moves()).toHaveLength(proposed(before).moves.length);
    expect(await textOf(page.locator('.proposal-left'))).toMatch(
      /non-slip|opens by itself|Brace the pad|paddling side/,
    );
    await page.getByRole('button', { name: 'Hide', exact: true }).first().waitFor();
    expect(await keptFit()).toEqual(before);
    expect(await undo().isDisabled()).toBe(true);
    expect(await barriersOn(page)).toEqual([]);
  });

  it('taken, it is the core’s proposal in one step, and the same each time', async () => {
    const before = await keptFit();
    const { fit } = proposed(before);
    for (let round = 0; round < 2; round++) {
      await ask().click();
      await take().click();
      await soon(keptFit).toEqual(fit);
      await undo().click();
      await soon(keptFit).toEqual(before);
      expect(await undo().isDisabled()).toBe(true);
    }
  });

  it('respects a lock, and says which lock stands in the way', async () => {
    await page.locator('.part-card').getByRole('tab', { name: 'Front foot' }).click();
    await page.getByRole('button', { name: /^Lock Front foot/ }).click();
    const before = await keptFit();
    await ask().click();
    await leave().waitFor();
    for (const move of await moves()) expect(move).not.toMatch(/^(Front foot|Front toes|Wedge)/);
    if ((await take().count()) > 0) await take().click();
    const after = await keptFit();
    expect(after.seats[0]!.frontFoot).toEqual(before.seats[0]!.frontFoot);
    expect(after).toEqual(proposed(before).fit);
  });
});

describe('a crew', () => {
  beforeEach(() => openFit(spoiltPair()));

  it('is worked out for everybody, in a worker that can be stopped', async () => {
    const before = await keptFit();
    await Promise.all([pressWhenItComes(page, 'Stop'), ask().click()]);
    await ask().waitFor();
    expect(await take().count()).toBe(0);
    expect(await keptFit()).toEqual(before);
    await ask().click();
    await take().waitFor();
    const wanted = proposed(before);
    expect(await moves()).toHaveLength(wanted.moves.length);
    await take().click();
    await soon(keptFit).toEqual(wanted.fit);
    await undo().click();
    await soon(keptFit).toEqual(before);
  });
});
