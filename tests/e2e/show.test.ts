import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readPdf, wordsOf } from '../app/export/read-pdf.ts';
import { inventedFit } from '../core/setout/invented-set-out.ts';
import { BARRED_WORDS } from '../core/text/barred-words.ts';
import { barriersInBothThemes } from './barriers.ts';
import { type RunningProgram, startProgram } from './harness.ts';
import { callFromPage, chooseByWords, goTo, soon, textOf } from './screens.ts';

/** The pad goes back by this between the two revisions, millimetres; the picture's units are millimetres too. */
const PAD_BACK_MM = 30;
/** Points of the picture are written to a tenth of a millimetre. */
const WRITTEN_MM = 0.11;
const SIZES = [
  { width: 1024, height: 700 },
  { width: 1280, height: 800 },
  { width: 1920, height: 1080 },
];

let folder: string;
let program: RunningProgram;
let page: Page;
let fitId: string;

const slider = () => page.getByRole('slider', { name: 'Between before and now' });
const place = () => slider().getAttribute('aria-valuetext');

/** Where the pad's block begins in the picture, millimetres aft of the seat's mark being negative. */
async function padAft(): Promise<number> {
  const path = await page.locator('.show-person [data-role="wood"]').first().getAttribute('d');
  const xs = [...path!.matchAll(/[ML](-?[\d.]+) /g)].map(([, x]) => Number(x));
  return Math.min(...xs);
}

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'kneelwright-show-'));
  program = await startProgram();
  page = await program.openBrowser({ viewport: SIZES[1]!, reducedMotion: 'reduce' });
  const fit = { ...inventedFit(), name: 'Žofie in the grey single' };
  const opened = await callFromPage(page, 'fits.create', { fit });
  fitId = opened.id;
  await callFromPage(page, 'revisions.save', { fitId, fit, name: 'First', reason: '' });
  const seats = fit.seats.map((seat) => ({
    ...seat,
    kneePad: { ...seat.kneePad, aftM: seat.kneePad.aftM + PAD_BACK_MM / 1000 },
  }));
  const later = { ...fit, seats };
  const reason = 'The bow dug in at pace.';
  await callFromPage(page, 'revisions.save', { fitId, fit: later, name: 'Pad back', reason });
});
afterAll(async () => {
  await program.dispose();
  rmSync(folder, { recursive: true, force: true });
});

describe('an athlete’s own position', () => {
  it('is reached from the list of fits and from the bench, and takes the whole window', async () => {
    await goTo(page, '#/fits');
    await page.getByRole('link', { name: 'For the athlete: Žofie in the grey single' }).click();
    await page.getByRole('heading', { level: 1, name: 'Žofie Łuczak' }).waitFor();
    expect(await page.getByRole('navigation').count()).toBe(0);
    await page.getByRole('link', { name: 'Back to the bench' }).click();
    await page.getByRole('link', { name: 'For the athlete', exact: true }).click();
    await page.getByRole('img', { name: 'You from the side' }).waitFor();
  });

  it('says what is good and what to look after, then what changes, why, and what to feel for', async () => {
    for (const heading of ['What is good', 'What to watch']) {
      await page.getByRole('heading', { name: heading }).waitFor();
    }
    await page.getByRole('tab', { name: 'What changes' }).click();
    for (const heading of ['What changes', 'Why', 'What you will feel']) {
      await page.getByRole('heading', { name: heading }).waitFor();
    }
    const words = (await page.getByRole('tabpanel').textContent())!;
    expect(words).toMatch(/Your knee pad goes 3\scm back\./);
    expect(words).toContain('The bow dug in at pace.');
  });

  it('shows no word of jargon and nothing of body mass', async () => {
    for (const tab of ['Your position', 'What changes']) {
      await page.getByRole('tab', { name: tab }).click();
      const texts = page.locator('main :is(h1, h2, p, li, dt, dd, button, a, label, [role=tab])');
      const words = (await texts.allTextContents()).join(' ').toLowerCase();
      expect(words).toContain('your position');
      for (const barred of BARRED_WORDS) expect(words).not.toMatch(new RegExp(`\\b${barred}`));
      expect(words).not.toMatch(/\bkg\b|\blb\b/);
    }
  });

  it('looks from the side, from behind and from above', async () => {
    for (const [choice, picture] of [
      ['From behind', 'You from behind'],
      ['From above', 'You from above'],
      ['From the side', 'You from the side'],
    ] as const) {
      await page.getByText(choice, { exact: true }).click();
      await page.getByRole('img', { name: picture, exact: true }).waitFor();
    }
  });
});

describe('another language than the screen’s', () => {
  const chooseLanguage = async (label: string) => {
    await page.getByRole('button', { name: 'What is shown' }).click();
    await page.getByRole('dialog').getByLabel('Language').selectOption({ label });
    await page.keyboard.press('Escape');
  };

  it('is what the athlete reads; the coach’s buttons stay as they are', async () => {
    await chooseLanguage('简体中文');
    await page.locator('.show-body[lang=zh]').waitFor();
    await page.getByText('你用').first().waitFor();
    expect(await textOf(page.locator('.show-body'))).not.toContain('What changes');
    await chooseLanguage('English');
    await page.locator('.show-body[lang=en]').waitFor();
    expect(await textOf(page.locator('.show-body'))).toContain('What changes');
  });
});

describe('between before and now', () => {
  it('the slider goes by keys, says where it is, and moves the picture as far as the pad went', async () => {
    await slider().focus();
    expect(await place()).toBe('Now');
    const now = await padAft();
    await page.keyboard.press('Home');
    expect(await place()).toBe('Before');
    expect(await padAft()).toBeGreaterThan(now + PAD_BACK_MM - WRITTEN_MM);
    expect(await padAft()).toBeLessThan(now + PAD_BACK_MM + WRITTEN_MM);
    for (let press = 0; press < 10; press++) await page.keyboard.press('ArrowRight');
    expect(await place()).toBe('10\u{202f}% of the way');
    expect(Math.abs((await padAft()) - (now + 0.9 * PAD_BACK_MM))).toBeLessThan(WRITTEN_MM);
    await page.keyboard.press('End');
    expect(await place()).toBe('Now');
    expect(await padAft()).toBe(now);
  });

  it('its words move it at once for those who asked for less motion, else by way of what lies between', async () => {
    await page.getByRole('button', { name: 'Before' }).click();
    expect(await place()).toBe('Before');
    await page.emulateMedia({ reducedMotion: 'no-preference' });
    await page.evaluate(() => {
      const bar = document.querySelector('input[type=range]')!;
      const seen: string[] = [];
      Object.assign(window, { seen });
      new MutationObserver(() => seen.push(bar.getAttribute('aria-valuetext')!)).observe(bar, {
        attributeFilter: ['aria-valuetext'],
      });
    });
    await page.getByRole('button', { name: 'Now' }).click();
    await soon(place).toBe('Now');
    const seen = await page.evaluate(() => (window as unknown as { seen: string[] }).seen);
    expect(seen.some((text) => text.includes('% of the way'))).toBe(true);
    await page.emulateMedia({ reducedMotion: 'reduce' });
  });

  it('is gone when there is nothing before', async () => {
    await page.getByRole('button', { name: 'What is shown' }).click();
    await page.getByRole('dialog').getByLabel('Before').selectOption({ label: 'Nothing' });
    await page.keyboard.press('Escape');
    await soon(() => slider().count()).toBe(0);
    expect(await page.getByRole('tab').count()).toBe(0);
    await page.getByRole('button', { name: 'What is shown' }).click();
    await chooseByWords(page.getByRole('dialog').getByLabel('Before'), ': First');
    await page.keyboard.press('Escape');
    await slider().waitFor();
  });
});

describe('the page to take home', () => {
  async function takenHome(): Promise<string> {
    const download = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Athlete’s page (PDF)' }).click();
    const path = join(folder, 'home.pdf');
    await (await download).saveAs(path);
    const { pages } = readPdf(new Uint8Array(readFileSync(path)));
    expect(pages).toHaveLength(1);
    return wordsOf(pages[0]!);
  }

  it('says what the screen says, without body mass', async () => {
    const words = await takenHome();
    expect(words.replaceAll(' ', '')).toContain('ŽofieŁuczak');
    expect(words).toMatch(/Your knee pad goes 3\scm back\./);
    expect(words).not.toMatch(/\bkg\b|Body mass/);
  });

  it('carries body mass, as the screen does, only once it is turned on', async () => {
    await page.getByRole('button', { name: 'What is shown' }).click();
    await page.getByRole('checkbox', { name: 'Body mass' }).press('Space');
    await page.keyboard.press('Escape');
    await page.getByText(/^Body mass 80\.0/).waitFor();
    expect(await takenHome()).toContain('Body mass 80.0 kg');
    await goTo(page, '#/fits');
    await goTo(page, `#/fits/${fitId}/show`);
    await slider().waitFor();
    expect(await page.getByText(/^Body mass/).count()).toBe(0);
  });
});

describe('the moving picture', () => {
  it('is a file by itself that shows one stroke, seen as on the screen', async () => {
    const download = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Moving picture (SVG)' }).click();
    const path = join(folder, 'stroke.svg');
    await (await download).saveAs(path);
    const text = readFileSync(path, 'utf8');
    expect(text).toContain('<title>Žofie Łuczak, You from the side');
    expect(text).toContain('@keyframes');
  });
});

describe('the screen', () => {
  it.each(SIZES)('$width × $height holds all of it: no bar to scroll the page by', async (size) => {
    await page.setViewportSize(size);
    const over = await page.evaluate(() => {
      const { scrollWidth, scrollHeight, clientWidth, clientHeight } = document.documentElement;
      return [scrollWidth - clientWidth, scrollHeight - clientHeight];
    });
    expect(over).toEqual([0, 0]);
    for (const name of ['What is shown', 'Athlete’s page (PDF)', 'Full screen', 'Before', 'Now']) {
      const box = (await page.getByRole('button', { name, exact: true }).boundingBox())!;
      expect(box.x + box.width).toBeLessThanOrEqual(size.width);
      expect(box.y + box.height).toBeLessThanOrEqual(size.height);
    }
    const type = await page
      .locator('.show-words li')
      .first()
      .evaluate((item) => Number.parseFloat(getComputedStyle(item).fontSize));
    expect(type).toBeGreaterThanOrEqual(20);
  });

  it('is worked by keys alone, in a sensible order', async () => {
    await page.locator('#content').focus();
    const reached: string[] = [];
    for (let press = 0; press < 12; press++) {
      await page.keyboard.press('Tab');
      reached.push(
        await page.evaluate(() => {
          const at = document.activeElement!;
          return at.getAttribute('aria-label') ?? at.closest('label')?.textContent ?? at.textContent ?? '';
        }),
      );
    }
    const order = [
      'What is shown',
      'Athlete’s page',
      'Full screen',
      'Back to the bench',
      'Between',
      'From the',
    ];
    const places = order.map((word) => reached.findIndex((text) => text.includes(word)));
    expect(places).not.toContain(-1);
    expect(places).toEqual([...places].sort((a, b) => a - b));
  });

  it('is filled and left again by Escape; another Escape leads back to the bench', async () => {
    const filled = () => page.evaluate(() => document.fullscreenElement !== null);
    await page.getByRole('button', { name: 'Full screen' }).press('Enter');
    await soon(filled).toBe(true);
    await page.keyboard.press('Escape');
    await soon(filled).toBe(false);
    await page.getByRole('button', { name: 'Full screen' }).waitFor();
    expect(await page.evaluate(() => window.location.hash)).toBe(`#/fits/${fitId}/show`);
    await soon(async () => {
      await page.keyboard.press('Escape');
      return page.evaluate(() => window.location.hash);
    }).toBe(`#/fits/${fitId}`);
  });

  it('has no serious barrier in either theme', async () => {
    await goTo(page, `#/fits/${fitId}/show`);
    await slider().waitFor();
    expect(await barriersInBothThemes(page)).toEqual([]);
  });
});
