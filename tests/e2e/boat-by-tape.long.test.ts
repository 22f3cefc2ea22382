import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type RunningProgram, startProgram } from './harness.ts';
import { enter, goTo, measure, shown, soon } from './screens.ts';

/** A tape's readings as a spreadsheet copies them: station, keel, sheer, beam, two lower beams, centimetres. */
const ROWS = [
  ['60', '3', '36', '24', '6', '14'],
  ['120', '0.8', '33', '36', '22', '28'],
  ['190', '0.2', '31', '44', '29', '38'],
  ['260', '0', '30', '48', '33', '42'],
  ['330', '0.2', '31', '44', '29', '38'],
  ['400', '0.8', '33', '36', '22', '28'],
  ['460', '3', '36', '24', '6', '14'],
];

let program: RunningProgram;
let page: Page;

beforeAll(async () => {
  program = await startProgram();
  page = await program.openBrowser({ viewport: { width: 1280, height: 900 } });
  await goTo(page, '#/boats/new');
  await page.getByText('tape', { exact: true }).click();
  await page.getByLabel('Name', { exact: true }).fill('By tape');
});
afterAll(() => program.dispose());

/** Pastes a text into an entry, as a spreadsheet leaves it on the clipboard. */
const paste = (name: string, text: string) =>
  measure(page, name).evaluate((entry, pasted) => {
    const clipboardData = new DataTransfer();
    clipboardData.setData('text/plain', pasted);
    entry.dispatchEvent(new ClipboardEvent('paste', { clipboardData, bubbles: true, cancelable: true }));
  }, text);

describe('a boat measured with a tape', () => {
  it('is pasted from a spreadsheet into the table at once', async () => {
    await paste('Station 1: from stern', ROWS.map((row) => row.join('\t')).join('\r\n'));
    await page.getByText('Table pasted.').first().waitFor();
    expect(await shown(page, 'Station 7: from stern')).toBe(460);
    expect(await shown(page, 'Station 4: beam at sheer')).toBe(48);
    await enter(page, 'Length overall', '520');
    await page.getByRole('img', { name: /^Hull sections, / }).waitFor();
  });

  it('goes on with Enter, entry by entry', async () => {
    await measure(page, 'Station 1: from stern').press('Enter');
    await soon(() => measure(page, 'Station 1: keel').evaluate((e) => e === document.activeElement)).toBe(
      true,
    );
  });

  it('asks about a beam that stands out from those beside it, until somebody says it is right', async () => {
    await enter(page, 'Station 2: beam at sheer', '62');
    const asked = page.locator('.field-problem').filter({ hasText: 'Station 2:' });
    await asked.first().waitFor();
    expect((await asked.first().textContent())!.replaceAll('\u{202f}', ' ')).toMatch(
      /62\.0 cm .*24\.0 cm .*44\.0 cm/,
    );
    await asked.first().getByRole('button').click();
    await soon(() => asked.count()).toBe(0);
    await enter(page, 'Station 2: beam at sheer', '36');
  });

  it('names the two stations that are at one place', async () => {
    await enter(page, 'Station 3: from stern', '120');
    await page.getByRole('button', { name: 'Save', exact: true }).click();
    await page.getByText('Stations 2 and 3 coincide.').first().waitFor();
    await enter(page, 'Station 3: from stern', '190');
  });
});

describe('a table of offsets whose zero is not the boat’s', () => {
  it('is taken with its zero moved, and says by how much', async () => {
    await goTo(page, '#/boats');
    await goTo(page, '#/boats/new');
    await page.getByText('table of offsets', { exact: true }).click();
    const rows = [0, 1, 2, 3, 4, 5].flatMap((x) => [
      `${x * 1000},0,40`,
      `${x * 1000},${x === 0 || x === 5 ? 20 : 200},340`,
    ]);
    const csv = ['station [mm],half-breadth [mm],height [mm]', ...rows].join('\n');
    const chooser = page.waitForEvent('filechooser');
    await page.getByRole('button', { name: 'Read a CSV file' }).click();
    await (await chooser).setFiles({ name: 'lines.csv', mimeType: 'text/csv', buffer: Buffer.from(csv) });
    const told = page.getByText(/Zero moved to the keel/).first();
    await told.waitFor();
    expect((await told.textContent())!.replaceAll('\u{202f}', ' ')).toMatch(/250.*cm along, 4.*cm up/);
  });
});
