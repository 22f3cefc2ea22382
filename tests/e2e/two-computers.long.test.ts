import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect } from 'vitest';
import { exampleAthlete } from '../core/example/example-fit.ts';
import { type RunningProgram, startProgram } from './harness.ts';
import { callFromPage, goTo, soon } from './screens.ts';
import { storyOf } from './story.ts';

let folder: string;
let programs: RunningProgram[];
let here: Page;
let there: Page;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'kneelwright-two-'));
  programs = [await startProgram(), await startProgram()];
  [here, there] = (await Promise.all(programs.map((program) => program.openBrowser()))) as [Page, Page];
});
afterAll(async () => {
  for (const program of programs) await program.dispose();
  rmSync(folder, { recursive: true, force: true });
});

/** Exports on one computer and imports on the other, by hand. */
async function bring(into: Page, from: Page): Promise<void> {
  await goTo(from, '#/archive');
  const download = from.waitForEvent('download');
  await from.getByRole('button', { name: 'Export everything' }).click();
  const file = join(folder, (await download).suggestedFilename());
  await (await download).saveAs(file);
  await goTo(into, '#/athletes');
  await goTo(into, '#/archive');
  const chooser = into.waitForEvent('filechooser');
  await into.getByRole('button', { name: 'Choose a file' }).click();
  await (await chooser).setFiles(file);
  await into.getByRole('button', { name: 'Import' }).click();
  await into.getByText('Imported, after a backup.').waitFor();
}

storyOf('two computers that exchange files', ({ step }) => {
  step('show what both changed side by side, and a decision goes to the other', async () => {
    const { id, athlete } = await callFromPage(here, 'athletes.save', {
      athlete: exampleAthlete({ name: 'Both Change' }),
    });
    await bring(there, here);
    await callFromPage(here, 'athletes.save', { athlete: { ...athlete, id, massKg: 61 } });
    await callFromPage(there, 'athletes.save', { athlete: { ...athlete, id, massKg: 63 } });
    await bring(here, there);
    const section = here.getByRole('region', { name: 'To decide' });
    await section.getByText('Both Change: mass').waitFor();
    await section.getByRole('button', { name: /61/ }).click();
    await section.getByText('Nothing to decide.').waitFor();
    await bring(there, here);
    await there.getByText('Nothing to decide.').waitFor();
    const [listed] = await callFromPage(there, 'athletes.list', {});
    expect(listed!.athlete.massKg).toBe(61);
  });

  step('join two entries of one person, and take them apart', async () => {
    const { id } = await callFromPage(here, 'athletes.save', {
      athlete: exampleAthlete({ name: 'Entered Twice' }),
    });
    const [first] = await callFromPage(here, 'athletes.list', { search: 'both' });
    await goTo(here, `#/athletes/${first!.id}`);
    await here.getByLabel('The other entry').selectOption(id);
    await here.getByRole('button', { name: 'Merge with Both Change' }).click();
    await here.getByText('Merged into this entry: Entered Twice').waitFor();
    expect(await callFromPage(here, 'athletes.list', {})).toHaveLength(1);
    await here.getByRole('button', { name: 'Separate Entered Twice' }).click();
    await soon(async () => (await callFromPage(here, 'athletes.list', {})).length).toBe(2);
  });

  step('say where else a name stands before it is erased, and clear it there', async () => {
    await callFromPage(here, 'paddles.save', {
      paddle: { name: 'Lent by Entered Twice', lengthM: 1.6, bladeLengthM: 0.5 },
    });
    const [record] = await callFromPage(here, 'athletes.list', { search: 'twice' });
    await goTo(here, `#/athletes/${record!.id}`);
    await here.getByRole('button', { name: 'Erase for good …' }).click();
    await here.getByText('Lent by Entered Twice', { exact: false }).waitFor();
    await here.getByLabel(/^Type the name/).fill('Entered Twice');
    await here.getByRole('button', { name: 'Erase', exact: true }).click();
    await here.getByRole('link', { name: 'To the list' }).waitFor();
    const [paddle] = await callFromPage(here, 'paddles.list', {});
    expect(paddle!.paddle.name).toBe('Lent by (erased)');
  });
});
