import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Fit } from '../../core/document/fit-schema.ts';
import { barriersInBothThemes } from './barriers.ts';
import { type RunningProgram, startProgram } from './harness.ts';
import { leaningMarks, REAL_PERSON } from './photographed.ts';
import { callFromPage, goTo, soon } from './screens.ts';

/** The trunk of the athlete in the synthetic picture leans this much farther forward than the model would have it, degrees. */
const LEAN_DEG = 24;

let program: RunningProgram;
let page: Page;
let fitId: string;
let fit: Fit;

beforeAll(async () => {
  program = await startProgram();
  page = await program.openBrowser({ viewport: { width: 1280, height: 800 } });
  await callFromPage(page, 'demo.install', {});
  const fits = await callFromPage(page, 'fits.list', {});
  for (const { id } of fits) {
    const opened = await callFromPage(page, 'fits.open', { id });
    if (opened.fit.seats.length > 1 || !opened.fit.seats[0]!.athlete?.id) continue;
    [fitId, fit] = [id, opened.fit];
  }
  await goTo(page, `#/fits/${fitId}/photograph`);
  await page.getByRole('button', { name: 'Choose pictures or a video' }).waitFor();
});

afterAll(() => program.dispose());

async function choose(file: string | { name: string; mimeType: string; buffer: Buffer }): Promise<void> {
  const chooser = page.waitForEvent('filechooser');
  await page.getByRole('button', { name: 'Choose pictures or a video' }).click();
  await (await chooser).setFiles([file] as never);
}

const studies = async () => {
  const athleteId = fit.seats[0]!.athlete!.id!;
  return callFromPage(page, 'photos.ofAthlete', { athleteId });
};

describe('a photograph, in a real browser', () => {
  it('has joints proposed on this computer for a real person, as marks to be looked at', async () => {
    await choose(REAL_PERSON);
    await page.locator('.photograph-stage image').first().waitFor();
    await page.getByRole('button', { name: 'Propose joints' }).click();
    await page.getByText(/joints are proposed/).waitFor();
    await soon(async () => Object.keys((await studies())[0]!.study!.joints).length).toBeGreaterThan(5);
    const { joints, image } = (await studies())[0]!.study!;
    // The person in the middle looks at us: her left is to the right, elbows lie below shoulders.
    const { lowerShoulder, topShoulder, lowerElbow } = joints;
    for (const { u } of [lowerShoulder!, topShoulder!]) {
      expect(u / image.width).toBeGreaterThan(0.35);
      expect(u / image.width).toBeLessThan(0.7);
    }
    expect(lowerElbow!.v).toBeGreaterThan(lowerShoulder!.v);
    expect((await studies())[0]!.study!.confirmed).toBe(false);
  });

  it('has its marks set by pointer and moved by keys, a pixel at a time', async () => {
    await page.getByRole('button', { name: 'Bow, at the deck', exact: true }).click();
    const stage = page.getByRole('application');
    await stage.click({ position: { x: 60, y: 80 } });
    await soon(async () => (await studies())[0]!.study!.boat.bow).toBeDefined();
    const before = (await studies())[0]!.study!.boat.bow!;
    await page.getByRole('button', { name: 'Bow, at the deck', exact: true }).click();
    await stage.focus();
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('Shift+ArrowDown');
    const moved = { u: expect.closeTo(before.u + 1, 5), v: expect.closeTo(before.v + 10, 5) };
    await soon(async () => (await studies())[0]!.study!.boat.bow).toEqual(moved);
  });

  it('shows plan and seen over the picture, and takes the difference into the fit', async () => {
    const [photo] = await studies();
    const { image, ...study } = photo!.study!;
    await callFromPage(page, 'photos.study', {
      id: photo!.id,
      study: { ...study, image, ...leaningMarks(fit, image, LEAN_DEG) },
    });
    await page.reload();
    await page.getByTestId('plan-figure').waitFor();
    const row = page.getByRole('row', { name: /^Trunk, forward/ });
    await soon(async () =>
      Number.parseFloat((await row.getByRole('cell').nth(1).textContent()) ?? ''),
    ).toBeGreaterThan(LEAN_DEG - 2);
    expect(await barriersInBothThemes(page, '#content')).toEqual([]);
    await page.getByRole('button', { name: 'Apply to the fit' }).click();
    await soon(
      async () => (await callFromPage(page, 'fits.open', { id: fitId })).fit.seats[0]!.pins.trunkPitchDeg,
    ).toBeCloseTo(LEAN_DEG, -0.5);
    await soon(async () => (await studies())[0]!.study!.confirmed).toBe(true);
    await page.getByRole('button', { name: 'Remember from 1 applied picture' }).click();
    const athleteId = fit.seats[0]!.athlete!.id!;
    await soon(
      async () => (await callFromPage(page, 'athletes.open', { id: athleteId })).athlete.neutral?.pictures,
    ).toBe(1);
  });

  it('is shown to the athlete with the face blurred, unless the coach chooses otherwise', async () => {
    await page.getByText('Show this picture to the athlete, face blurred').click();
    await soon(async () => (await studies())[0]!.study!.shown).toBe(true);
    await goTo(page, `#/fits/${fitId}/show`);
    await page.getByTestId('blurred-face').waitFor();
    await goTo(page, `#/fits/${fitId}/photograph`);
    await page.getByText('Show the face as well').click();
    await soon(async () => (await studies())[0]!.study!.faceSeen).toBe(true);
    await goTo(page, `#/fits/${fitId}/show`);
    await page.getByRole('img', { name: /^Photograph: ready/ }).waitFor();
    expect(await page.getByTestId('blurred-face').count()).toBe(0);
    await goTo(page, `#/fits/${fitId}/photograph`);
  });

  it('says no to HEIC plainly', async () => {
    await choose({ name: 'IMG_1.HEIC', mimeType: 'image/heic', buffer: Buffer.from('ftypheic') });
    await page.getByText(/is a HEIC picture, which cannot be read here/).waitFor();
  });
});
