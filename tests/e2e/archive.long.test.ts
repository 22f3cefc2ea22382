import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { exampleAthlete, exampleFit } from '../core/example/example-fit.ts';
import { english } from '../english.ts';
import { type RunningProgram, startProgram } from './harness.ts';
import { callFromPage, goTo, soon } from './screens.ts';

let folder: string;
let program: RunningProgram;
let page: Page;
const names = async () =>
  (await callFromPage(page, 'athletes.list', {})).map(({ athlete }) => athlete.name).sort();

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'kneelwright-archive-'));
  program = await startProgram();
  page = await program.openBrowser();
  await callFromPage(page, 'athletes.save', { athlete: exampleAthlete({ name: 'Stays' }) });
  await callFromPage(page, 'fits.create', { fit: exampleFit() });
});
afterAll(async () => {
  await program.dispose();
  rmSync(folder, { recursive: true, force: true });
});

describe('the archive, through its own screen', () => {
  it('hands everything out as one file, and takes it into an empty store', async () => {
    await goTo(page, '#/archive');
    const download = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Export everything' }).click();
    const file = join(folder, (await download).suggestedFilename());
    await (await download).saveAs(file);

    const other = await startProgram();
    try {
      const there = await other.openBrowser();
      await goTo(there, '#/archive');
      const chooser = there.waitForEvent('filechooser');
      await there.getByRole('button', { name: 'Choose a file' }).click();
      await (await chooser).setFiles(file);
      await there.getByRole('button', { name: 'Import' }).click();
      await there.getByText(/^Imported, after a backup\./).waitFor();
      const fits = await callFromPage(there, 'fits.list', {});
      expect(fits.map(({ name }) => name)).toEqual(['Example']);
      const athletes = await callFromPage(there, 'athletes.list', {});
      expect(athletes.map(({ athlete }) => athlete.name)).toEqual(['Stays']);
    } finally {
      await other.dispose();
    }
  });

  it('encrypts the file with a passphrase, and opens it with that one alone', async () => {
    const passphrase = 'four invented words of a test';
    await goTo(page, '#/archive');
    await page.getByText('Encrypt with a passphrase').click();
    const exports = page.getByRole('button', { name: 'Export everything' });
    expect(await exports.isDisabled()).toBe(true);
    await page.getByLabel('New passphrase').fill(passphrase);
    await page.getByLabel('The same again').fill('another one entirely');
    await page.getByText('Not the same.').waitFor();
    expect(await exports.isDisabled()).toBe(true);
    await page.getByLabel('The same again').fill(passphrase);
    await page.getByText(/Without it nobody can open the file/).waitFor();
    const download = page.waitForEvent('download');
    await exports.click();
    const file = join(folder, (await download).suggestedFilename());
    expect(file).toMatch(/\.age$/);
    await (await download).saveAs(file);

    const chooser = page.waitForEvent('filechooser');
    await page.getByRole('button', { name: 'Choose a file' }).click();
    await (await chooser).setFiles(file);
    await page.getByLabel('Passphrase', { exact: true }).fill('not this one');
    await page.getByRole('button', { name: 'Open', exact: true }).click();
    await page.getByText('Not this file’s passphrase.').waitFor();
    await page.getByLabel('Passphrase', { exact: true }).fill(passphrase);
    await page.getByRole('button', { name: 'Open', exact: true }).click();
    // It is this store's own file: it opens, and brings nothing.
    await page.getByText(english.say('archive.counts.nothing')).waitFor();
    expect(await page.getByRole('button', { name: 'Import', exact: true }).count()).toBe(0);
    await page.getByRole('button', { name: 'Close', exact: true }).click();
    expect(await names()).toEqual(['Stays']);
  });

  it('explains a file that is none, and changes nothing', async () => {
    const chooser = page.waitForEvent('filechooser');
    await page.getByRole('button', { name: 'Choose a file' }).click();
    await (await chooser).setFiles({ name: 'x', mimeType: 'text/plain', buffer: Buffer.from('no bundle') });
    await page.getByRole('alert').waitFor();
    expect(await page.getByRole('button', { name: 'Import' }).count()).toBe(0);
    expect(await names()).toEqual(['Stays']);
  });

  it('goes back to a backup, after asking, and back again from there', async () => {
    await page.getByRole('button', { name: 'Back up now' }).click();
    await page.getByRole('row', { name: /by hand/ }).waitFor();
    await callFromPage(page, 'athletes.save', { athlete: exampleAthlete({ name: 'Came later' }) });
    await page
      .getByRole('row', { name: /by hand/ })
      .getByRole('button', { name: /^Restore: / })
      .click();
    await page.getByRole('alertdialog').getByRole('button', { name: 'Restore', exact: true }).click();
    await soon(names).toEqual(['Stays']);
    await page
      .getByRole('row', { name: /before restoring/ })
      .first()
      .getByRole('button', { name: /^Restore what is missing/ })
      .click();
    await soon(names).toEqual(['Came later', 'Stays']);
  });

  it('erases an athlete only with the name typed', async () => {
    const [record] = await callFromPage(page, 'athletes.list', { search: 'later' });
    await goTo(page, `#/athletes/${record!.id}`);
    await page.getByRole('button', { name: 'Erase for good …' }).click();
    const erase = page.getByRole('button', { name: 'Erase', exact: true });
    expect(await erase.isDisabled()).toBe(true);
    await page.getByLabel(/^Type the name/).fill('Came later');
    await erase.click();
    await page.getByRole('link', { name: 'To the list' }).click();
    await soon(names).toEqual(['Stays']);
  });
});
