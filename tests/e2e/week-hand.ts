import type { Page } from 'playwright-core';
import { english } from '../english.ts';
import { enter, goTo } from './screens.ts';

/** What a tape reads of an invented girl of 1.58 m, twice, centimetres. */
export const READ: Readonly<Record<string, readonly [string, string]>> = {
  sittingHeight: ['83', '83,4'],
  shoulderHeight: ['129', '129.5'],
  kneelingHeight: ['117', '117.6'],
  kneeToHipLength: ['41', '41.3'],
  footLength: ['23.4', '23.5'],
  armSpan: ['159', '159.6'],
};

/** Saves the fit on the bench under a name. */
export async function saveAs(page: Page, name: string): Promise<void> {
  await page.keyboard.press('Control+s');
  const dialog = page.getByRole('dialog');
  await dialog.getByRole('textbox').first().fill(name);
  await dialog.getByRole('button', { name: 'Save', exact: true }).click();
  await dialog.waitFor({ state: 'detached' });
}

/** Makes a boat of a class with drilled rails, through its own page. */
export async function makeBoat(page: Page, name: string, boatClass: string): Promise<void> {
  await goTo(page, '#/boats/new');
  await page.getByLabel('Name', { exact: true }).fill(name);
  await page.getByText(boatClass, { exact: true }).click();
  await page.getByText(english.say('boat.filled-in')).click();
  await drillRails(page);
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  await page.getByRole('heading', { level: 1, name }).waitFor();
}

/** Enters a hole pitch of one centimetre for pad and rest. */
export async function drillRails(page: Page): Promise<void> {
  await enter(page, english.say('boat.hardware.pad-pitch'), '1');
  await enter(page, english.say('boat.hardware.rest-pitch'), '1');
}

/** Makes a heavier partner who kneels on the right, through the athlete's own page. */
export async function makePartner(page: Page, name: string): Promise<void> {
  await goTo(page, '#/athletes/new');
  await page.getByLabel('Name', { exact: true }).fill(name);
  await page.getByText('right', { exact: true }).click();
  await page.getByText('male', { exact: true }).click();
  await enter(page, 'Stature', '184');
  await enter(page, 'Body mass', '84');
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  await page.getByRole('link', { name: name, exact: true }).waitFor();
}
