import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { exampleFit } from '../core/example/example-fit.ts';
import { type RunningProgram, startProgram } from './harness.ts';
import { callFromPage, enter, goTo, textOf } from './screens.ts';

let program: RunningProgram;
let page: Page;

const newtonsOf = async (row: string) => {
  const cells = await page.getByRole('row', { name: row }).getByRole('cell').allTextContents();
  return Number.parseFloat(cells[0]!.replace('\u2212', '-'));
};

beforeAll(async () => {
  program = await startProgram();
  page = await program.openBrowser();
  const fit = { ...exampleFit(), name: 'Under way' };
  const { id } = await callFromPage(page, 'fits.create', { fit });
  await callFromPage(page, 'revisions.save', { fitId: id, fit, name: 'First', reason: '' });
  const [seat] = fit.seats;
  const back = { ...seat!, kneePad: { ...seat!.kneePad, aftM: seat!.kneePad.aftM + 0.03 } };
  await callFromPage(page, 'drafts.save', { id, fit: { ...fit, seats: [back] } });
  await goTo(page, `#/fits/${id}`);
  await page.getByRole('tab', { name: 'Under way' }).click();
});
afterAll(() => program.dispose());

describe('what the water says', () => {
  it('tells resistance with its doubt and parts, and what ten kilograms cost beside what trim costs', async () => {
    await page.getByText(/drag is \d+\s±\s\d+\sN/).waitFor();
    const [mass, bow] = [await newtonsOf('10.0 kg more on board'), await newtonsOf('bow 35 mm higher')];
    expect(mass).toBeGreaterThan(2);
    expect(Math.abs(bow)).toBeLessThan(mass / 3);
  });

  it('holds the setting against the first revision while none is compared: 3 cm of pad are no matter of speed', async () => {
    expect(Math.abs(await newtonsOf('revision 1'))).toBeLessThan(1);
  });

  it('follows the speed', async () => {
    await enter(page, 'Speed, m/s', '3');
    await page.getByText(/At 3\.0\sm\/s/).waitFor();
    await page.getByText('5:33 over 1000 m').waitFor();
  });

  it('shows the bow through a stroke as a range, with the boat’s own periods', async () => {
    await page.getByRole('img', { name: /The bow through one stroke/ }).waitFor();
    await page
      .getByText(/bow over stern \d+\s*mm\s±\s\d+\s*mm at ready, \d+\s*mm\slower\s±\s\d+\s*mm at catch/)
      .waitFor();
    await page.getByText(/Bow swing per stroke: \d+\s*mm\s±\s\d+\s*mm/).waitFor();
    await page
      .getByText(/pitch 0\.\d\d\s±\s0\.\d+\ss, heave 0\.\d\d\s±\s0\.\d+\ss, stroke 1\.00\ss/)
      .waitFor();
  });

  it('gives each figure its formula, source and doubt', async () => {
    const rows = page.locator('.under-way-how dl > div');
    await page.getByText('Calculation', { exact: true }).click();
    await rows.first().waitFor();
    for (const [name, formula, source] of [
      ['friction', '½ρU²S·(1 + k)', 'ITTC 1957'],
      ['waves', '∫|H|²', 'Michell 1898'],
      ['air', '½ρU²·Cd·A', 'our estimate'],
      ['all', 'R₁ + R₂ + R₃', '±₁²'],
      ['Change', 'ΔR', '0.07·ΔR₁'],
      ['s over 1000 m', 'R(U)·U', '±ΔR'],
      ['Trim', '< 1.5', 'our estimate'],
      ['Bow', 'sin(πt/τ)', 'Salvesen'],
      ['Periods', '(M + A)/C', 'Frank 1967'],
      ['Bow over stern', 'tan(trim)', 'hydrostatics'],
    ] as const) {
      const row = textOf(rows.filter({ has: page.locator('dt', { hasText: name }) }).first());
      for (const part of [formula, source]) expect(await row, name).toContain(part);
    }
    expect(await textOf(rows.filter({ hasText: 'ISO 2533' }))).toMatch(/Cd·A = 0\.4 m²/);
  });

  it('tells seconds over the course that is chosen', async () => {
    const seconds = async () => {
      const cells = await page
        .getByRole('row', { name: '10.0 kg more on board' })
        .getByRole('cell')
        .allTextContents();
      return Number.parseFloat(cells.at(-1)!.replace('+', ''));
    };
    const whole = await seconds();
    await page.getByLabel('Course').selectOption('200');
    await page.getByRole('columnheader', { name: 's over 200 m' }).waitFor();
    expect(await seconds()).toBeCloseTo(whole / 5, 0);
  });

  it('follows the depth of the water', async () => {
    await page.getByLabel('Depth of the water').selectOption('2');
    await page.getByText(/At 3\.0\sm\/s/).waitFor();
    expect(await newtonsOf('in 2 m of water')).toBe(0);
  });
});
