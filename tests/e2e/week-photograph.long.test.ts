import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect } from 'vitest';
import type { Fit } from '../../core/document/fit-schema.ts';
import { evaluateFit } from '../../core/evaluation/evaluator.ts';
import { type RunningProgram, startProgram } from './harness.ts';
import { leaningMarks, REAL_PERSON } from './photographed.ts';
import { callFromPage, goTo, soon } from './screens.ts';
import { storyOf } from './story.ts';

/** How far her trunk leans forward in the photograph, degrees. */
const SEEN_LEAN_DEG = 14;

let program: RunningProgram;
let page: Page;
let athleteId: string;
let fitId: string;

/** A fit of the demo club in a single. */
async function singleFit(): Promise<Fit> {
  for (const { id } of await callFromPage(page, 'fits.list', {})) {
    const { fit } = await callFromPage(page, 'fits.open', { id });
    if (fit.seats.length === 1 && fit.boat.id) return fit;
  }
  throw new Error('the demo club has no single');
}

beforeAll(async () => {
  program = await startProgram();
  page = await program.openBrowser({ viewport: { width: 1440, height: 900 }, reducedMotion: 'reduce' });
  await callFromPage(page, 'demo.install', {});
  const fit = await singleFit();
  const seat = fit.seats[0]!;
  const junior = { ...seat.athlete!, name: 'Runa Vadstrand', bornOn: '2012-05-20', id: undefined };
  const { id, athlete } = await callFromPage(page, 'athletes.save', { athlete: junior });
  athleteId = id;
  const made = { ...fit, name: 'Runa', seats: [{ ...seat, athlete: { ...athlete, id } }] };
  fitId = (await callFromPage(page, 'fits.create', { fit: made })).id;
});
afterAll(() => program?.dispose());

async function choosePicture(): Promise<void> {
  const chooser = page.waitForEvent('filechooser');
  await page.getByRole('button', { name: 'Choose pictures or a video' }).click();
  await (await chooser).setFiles(REAL_PERSON);
}

storyOf('Tuesday: the photograph of a junior', ({ step }) => {
  step('is refused until a guardian has consented to it', async () => {
    await goTo(page, `#/fits/${fitId}/photograph`);
    await choosePicture();
    await page
      .getByText(/guardian’s consent to photographs/)
      .first()
      .waitFor();
    expect(await callFromPage(page, 'photos.ofAthlete', { athleteId })).toEqual([]);
    const { athlete } = await callFromPage(page, 'athletes.open', { id: athleteId });
    const photographs = { by: 'Her father', on: '2026-01-02' };
    await callFromPage(page, 'athletes.save', {
      athlete: { ...athlete, id: athleteId, consent: { photographs } },
    });
    await choosePicture();
    await page.locator('.photograph-stage image').first().waitFor();
  });

  step('is marked, and its posture narrows what the fit knows', async () => {
    const [photo] = await callFromPage(page, 'photos.ofAthlete', { athleteId });
    const { fit } = await callFromPage(page, 'fits.open', { id: fitId });
    const study = { ...photo!.study!, ...leaningMarks(fit, photo!.study!.image, SEEN_LEAN_DEG) };
    await callFromPage(page, 'photos.study', { id: photo!.id, study });
    await page.reload();
    await page.getByTestId('plan-figure').waitFor();
    await page.getByRole('button', { name: 'Apply to the fit' }).click();
    const now = async () => (await callFromPage(page, 'fits.open', { id: fitId })).fit;
    await soon(async () =>
      Math.abs(((await now()).seats[0]!.pins.trunkPitchDeg ?? 99) - SEEN_LEAN_DEG),
    ).toBeLessThan(3);
    const sd = (of: Fit) => evaluateFit(of).quantities.find(({ id }) => id === 'trunkPitch')!.sd!;
    expect(sd(await now())).toBeLessThan(0.6 * sd({ ...fit, seats: [{ ...fit.seats[0]!, pins: {} }] }));
    await page.getByRole('link', { name: 'Back to the bench' }).click();
    await page.locator('.kept').first().waitFor();
  });
});
