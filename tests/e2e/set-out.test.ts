import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { unzipSync } from 'fflate';
import type { Page, Route } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { PAPERS } from '../../core/setout/paper.ts';
import { type ReadPage, readPdf, wordsOf } from '../app/export/read-pdf.ts';
import { inventedFit, ROWS_OF_HOLES } from '../core/setout/invented-set-out.ts';
import { barriersInBothThemes } from './barriers.ts';
import { type RunningProgram, startProgram } from './harness.ts';
import { callFromPage, chooseByWords, enter, goTo, measure, soon } from './screens.ts';

/** Lengths on screen and paper agree to this, millimetres: the screen's points are written to a thousandth. */
const SAME_MM = 0.01;
/** CSS makes an inch of 96 px; the browser lays out in 1/64 px. */
const MM_PER_PX = 25.4 / 96;

let folder: string;
let program: RunningProgram;
let page: Page;
let fitId: string;
let files = 0;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'kneelwright-set-out-'));
  program = await startProgram();
  page = await program.openBrowser({ viewport: { width: 1280, height: 800 }, reducedMotion: 'reduce' });
  const fit = { ...inventedFit({ hardware: ROWS_OF_HOLES }), name: 'Žofie in the grey single' };
  const opened = await callFromPage(page, 'fits.create', { fit });
  fitId = opened.id;
  await callFromPage(page, 'revisions.save', { fitId, fit, name: 'First', reason: '' });
  const seats = fit.seats.map((seat) => ({ ...seat, kneePad: { ...seat.kneePad, aftM: 0.2 } }));
  const later = { ...fit, seats };
  await callFromPage(page, 'revisions.save', { fitId, fit: later, name: 'Pad back', reason: 'bow up' });
});
afterAll(async () => {
  await program.dispose();
  rmSync(folder, { recursive: true, force: true });
});

/** Presses a button that hands a file over; gives its name and bytes. */
async function fileFrom(button: string): Promise<{ name: string; bytes: Uint8Array }> {
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: button, exact: true }).click();
  const name = (await download).suggestedFilename();
  files += 1;
  const path = join(folder, `${files}-file`);
  await (await download).saveAs(path);
  return { name, bytes: new Uint8Array(readFileSync(path)) };
}

/** Lines of the drawing on the screen, each as its points in millimetres of paper. */
function linesOnScreen(): Promise<number[][][]> {
  return page
    .locator('.set-out-sheet .paper-drawing')
    .locator('path')
    .evaluateAll((paths) =>
      paths.map((path) =>
        path
          .getAttribute('d')!
          .replace(/^M|Z$/g, '')
          .split('L')
          .map((pair) => pair.split(' ').map(Number)),
      ),
    );
}

const spans = (points: readonly (readonly number[])[]) =>
  points.map((point) => Math.hypot(point[0]! - points[0]![0]!, point[1]! - points[0]![1]!));

function isDrawn(line: readonly (readonly number[])[], { paths }: ReadPage): boolean {
  const wanted = spans(line);
  return paths.some(({ points }) => {
    const closed = points.length === line.length + 1;
    if (!closed && points.length !== line.length) return false;
    return wanted.every((span, k) => Math.abs(span - spans(points)[k]!) <= SAME_MM);
  });
}

describe('the boatbuilder’s page', () => {
  it('is reached from the list of fits and from the bench', async () => {
    await goTo(page, '#/fits');
    await page.getByRole('link', { name: 'Workshop sheet: Žofie in the grey single' }).click();
    await page.getByRole('heading', { level: 1, name: 'Workshop sheet: Žofie in the grey single' }).waitFor();
    await page.getByRole('link', { name: 'Back to the bench' }).click();
    await page.getByRole('link', { name: 'Workshop sheet', exact: true }).click();
    await page.getByRole('region', { name: 'Workshop sheet' }).waitFor();
  });

  it('shows the drawing, the marks with their tolerance, checks, holes, order of work and cautions', async () => {
    const sheet = page.getByRole('region', { name: 'Workshop sheet' });
    await sheet.getByRole('img', { name: /^Plan, profile, section of the seat, 1:10 on A4/ }).waitFor();
    const headings = await sheet.getByRole('heading', { level: 3 }).allTextContents();
    for (const part of [
      'Before cutting',
      'Marks',
      'Check dimensions',
      'Heights',
      'Angles',
      'Knee and recess',
      'Holes: knee pad',
      'Holes: rear foot rest',
      'Order of work',
      'Fixing and strap',
      'Cautions',
    ]) {
      expect(
        headings.some((heading) => heading.startsWith(part)),
        part,
      ).toBe(true);
    }
    const row = sheet.getByRole('row', { name: /^K recess bottom/ });
    expect(await row.getByRole('cell').allTextContents()).toEqual([
      'recess bottom, under the knee',
      '200 aft',
      '35 left',
      '2',
    ]);
    expect(await sheet.textContent()).toMatch(/revision 2 [2-9A-Y]{5}, Pad back/);
    expect(await sheet.textContent()).toContain('Žofie Łuczak');
  });

  it('says that nobody has measured the knee; a knee that is kept with the athlete it draws for', async () => {
    const sheet = page.getByRole('region', { name: 'Workshop sheet' });
    await sheet.getByText(/^Measure the bent knee: /).waitFor();
    const fit = inventedFit({ hardware: ROWS_OF_HOLES });
    const [seat] = fit.seats;
    const athlete = { ...seat!.athlete!, kneeBreadthM: 0.108 };
    const measured = { ...fit, name: 'Measured', seats: [{ ...seat!, athlete }] };
    const { id } = await callFromPage(page, 'fits.create', { fit: measured });
    await goTo(page, `#/fits/${id}/set-out`);
    await sheet.getByRole('row', { name: /^Knee breadth, across the bone 108/ }).waitFor();
    expect(await sheet.textContent()).not.toContain('Measure the bent knee');
    await goTo(page, `#/fits/${fitId}/set-out`);
    await sheet.getByText(/^Measure the bent knee/).waitFor();
  });

  it('draws on the screen what the PDF draws, line by line, and says the same words', async () => {
    const { name, bytes } = await fileFrom('Sheet as PDF');
    expect(name).toMatch(/^Workshop sheet, Žofie Łuczak, Example hull, revision 2 [2-9A-Y]{5}\.pdf$/);
    const { pages } = readPdf(bytes);
    expect(pages[0]!.width).toBeCloseTo(PAPERS.A4.long, 2);
    expect(pages[0]!.height).toBeCloseTo(PAPERS.A4.short, 2);
    const lines = await linesOnScreen();
    expect(lines.length).toBeGreaterThan(60);
    for (const line of lines) expect(isDrawn(line, pages[0]!), `a line from ${line[0]}`).toBe(true);
    const words = pages.map(wordsOf).join(' ');
    expect(words).toMatch(/revision 2 [2-9A-Y]{5}, Pad back/);
    for (const cell of ['200 aft', '35 left', 'saved', 'drawing 1:10 on A4']) {
      expect(words).toContain(cell);
    }
    await page.getByText('See your browser’s downloads.').waitFor();
  });

  it('changes setting, paper and lengths', async () => {
    const sheet = page.getByRole('region', { name: 'Workshop sheet' });
    await chooseByWords(page.getByLabel('Setting'), ': First');
    await sheet.getByRole('row', { name: /^K .* 175 aft/ }).waitFor();
    await page.getByText('Letter', { exact: true }).click();
    await page.getByRole('radiogroup', { name: 'Lengths' }).getByText('in', { exact: true }).click();
    await sheet.getByRole('row', { name: /^K .* 6 7\/8 aft/ }).waitFor();
    const { name, bytes } = await fileFrom('Sheet as PDF');
    expect(name).toMatch(/revision 1 [2-9A-Y]{5}\.pdf$/);
    const { pages } = readPdf(bytes);
    expect(pages[0]!.width).toBeCloseTo(PAPERS.Letter.long, 2);
    const words = pages.map(wordsOf).join(' ');
    expect(words).toContain('6 7/8 aft');
    expect(words).toContain('inches to 1/32');
  });

  it('keeps on the printed page the scale that it names', async () => {
    await page.getByText('A4', { exact: true }).click();
    await page.getByRole('img', { name: /1:10 on A4/ }).waitFor();
    await page.emulateMedia({ media: 'print' });
    const drawing = page.locator('.set-out-sheet .paper-drawing');
    const [, , wide] = (await drawing.getAttribute('viewBox'))!.split(' ').map(Number);
    const box = (await drawing.boundingBox())!;
    expect(box.width * MM_PER_PX).toBeCloseTo(wide!, 1);
    expect(await page.getByRole('button', { name: 'Sheet as PDF' }).isVisible()).toBe(false);
    // Paper is white, whatever the screen is.
    await page.emulateMedia({ media: 'print', colorScheme: 'dark' });
    await page.waitForFunction(() => document.documentElement.dataset.theme === 'light');
    await page.emulateMedia({ media: 'screen', colorScheme: 'light' });
  });
});

describe('templates from the page', () => {
  const ticks = () => page.locator('.template-list').getByRole('checkbox');

  it('cannot be had with none ticked', async () => {
    for (const tick of await ticks().all()) await tick.press('Space');
    await page.getByText('Tick at least one.').waitFor();
    expect(await page.getByRole('button', { name: 'Templates as PDF' }).isDisabled()).toBe(true);
  });

  it('come as one SVG in millimetres when one is ticked', async () => {
    await page.getByRole('checkbox', { name: 'Knee pad: recess' }).press('Space');
    const { name, bytes } = await fileFrom('As SVG, in millimetres');
    expect(name).toMatch(/^Knee pad recess.*\.svg$/);
    const svg = new TextDecoder().decode(bytes);
    const [, wide, units] = /width="([\d.]+)mm".*viewBox="0 0 ([\d.]+) /.exec(svg)!;
    expect(Number(wide)).toBeCloseTo(Number(units), 6);
  });

  it('come as DXF in one archive when several are, and as PDF at full size', async () => {
    await page.getByRole('checkbox', { name: 'Rear foot rest: wedge' }).press('Space');
    const { bytes } = await fileFrom('As DXF (CNC)');
    const names = Object.keys(unzipSync(bytes));
    expect(names).toHaveLength(2);
    for (const name of names) expect(name).toMatch(/\.dxf$/);
    const pdf = readPdf((await fileFrom('Templates as PDF')).bytes);
    for (const each of pdf.pages) expect(wordsOf(each)).toContain('1:1');
  });
});

describe('a file that takes long, or fails', () => {
  /** Answers some calls in the program's place; all others go through. */
  async function standIn(answer: (name: string) => Promise<object> | object | null): Promise<void> {
    await page.route('**/call', async (route: Route) => {
      const { name } = route.request().postDataJSON() as { name: string };
      const body = await answer(name);
      return body ? route.fulfill({ json: body }) : route.continue();
    });
  }

  it('shows how far it has come, stops when asked, and says that nothing came of it', async () => {
    const { promise: stopped, resolve: stop } = Promise.withResolvers<void>();
    await standIn(async (name) => {
      if (name === 'work.progress') return { ok: true, value: { what: 'export', done: 3, of: 14 } };
      if (name === 'work.cancel') {
        stop();
        return { ok: true, value: { asked: true } };
      }
      if (name !== 'paper.export') return null;
      await stopped;
      const message = 'Stopped, as you asked. Nothing was changed.';
      return { ok: false, error: { code: 'cancelled', message, problems: [] } };
    });
    await page.getByRole('button', { name: 'Templates as PDF' }).click();
    const progress = page.getByRole('progressbar', { name: 'Writing … 3 of 14' });
    await progress.waitFor();
    expect(await progress.getAttribute('value')).toBe('3');
    expect(await page.getByRole('button', { name: 'Sheet as PDF' }).isDisabled()).toBe(true);
    await page.getByRole('button', { name: 'Stop' }).click();
    await page.getByRole('alert').getByText('Nothing was changed.').waitFor();
    await progress.waitFor({ state: 'detached' });
    await page.unroute('**/call');
  });

  it('says plainly why a file could not be written, and can be tried again', async () => {
    const message = 'The disk is full. Nothing was left behind; make room and try again.';
    await standIn((name) =>
      name === 'paper.export' ? { ok: false, error: { code: 'disk-full', message, problems: [] } } : null,
    );
    await page.getByRole('button', { name: 'Sheet as PDF' }).click();
    await page.getByRole('alert').getByText(message).waitFor();
    await page.unroute('**/call');
    await fileFrom('Sheet as PDF');
    await soon(() => page.getByRole('alert').count()).toBe(0);
  });

  it('has no serious barrier in either theme', async () => {
    expect(await barriersInBothThemes(page)).toEqual([]);
  });
});

describe('a setting that has just been changed at the bench', () => {
  it('is the one that is set out, without a revision, however quickly one goes there', async () => {
    await goTo(page, `#/fits/${fitId}`);
    await measure(page, 'Knee pad: Aft of the mark').waitFor();
    await enter(page, 'Knee pad: Aft of the mark', '210 mm');
    await page.getByRole('link', { name: 'Workshop sheet', exact: true }).click();
    const sheet = page.getByRole('region', { name: 'Workshop sheet' });
    await sheet.getByRole('row', { name: /^K .* 210 aft/ }).waitFor();
    expect(await sheet.textContent()).toContain('no revision');
    await page.getByText(/^Save a revision before cutting/).waitFor();
    const { name } = await fileFrom('Sheet as PDF');
    expect(name).toBe('Workshop sheet, Žofie Łuczak, Example hull, no revision.pdf');
  });
});

describe('a boat that nobody kneels in', () => {
  it('says what to do instead of showing an empty sheet', async () => {
    const fit = inventedFit();
    const empty = { ...fit, seats: fit.seats.map((seat) => ({ ...seat, athlete: null })) };
    const { id } = await callFromPage(page, 'fits.create', { fit: empty });
    await goTo(page, `#/fits/${id}/set-out`);
    await page.getByText(/^Nobody is in this boat yet/).waitFor();
    expect(await page.getByRole('button', { name: 'Sheet as PDF' }).count()).toBe(0);
  });
});
