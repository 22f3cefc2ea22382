import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { exampleAthlete, exampleBoat, exampleFit } from '../core/example/example-fit.ts';
import { clippedOn } from './clipped.ts';
import { type RunningProgram, startProgram } from './harness.ts';
import { callFromPage, goTo, settled } from './screens.ts';

/** The smallest window that the program is made for, pixels. */
const SMALLEST = { width: 1024, height: 700 };

const LANGUAGES = ['de', 'es', 'hu', 'pl', 'zh'] as const;

let program: RunningProgram;
let routes: readonly string[];

beforeAll(async () => {
  program = await startProgram();
  const page = await program.openBrowser();
  const athlete = await callFromPage(page, 'athletes.save', { athlete: exampleAthlete() });
  const boat = await callFromPage(page, 'boats.save', { boat: exampleBoat() });
  const { id } = await callFromPage(page, 'fits.create', { fit: exampleFit() });
  routes = [
    ...[
      '#/',
      '#/fits',
      '#/fits/new',
      '#/athletes',
      '#/athletes/new',
      '#/athletes/table',
      '#/boats',
      '#/boats/new',
    ],
    ...['', '/show', '/set-out', '/trial/new', '/photograph', '/transfer', '/full-size'].map(
      (end) => `#/fits/${id}${end}`,
    ),
    ...[`#/athletes/${athlete.id}`, `#/athletes/${athlete.id}/measure`, `#/athletes/${athlete.id}/timeline`],
    ...[`#/boats/${boat.id}`, `#/boats/${boat.id}/lines`, '#/paddles', '#/archive', '#/help', '#/help/files'],
  ];
  await page.context().close();
});
afterAll(() => program?.dispose());

/**
 * A language 40 % longer than English: every message goes on with letters that no language has, in words of five. It is made of the
 * built page's own English file as that is fetched.
 */
async function speakLonger(page: Page): Promise<void> {
  const longer = `((m) => Object.fromEntries(Object.entries(m).map(([key, text]) => {
    const more = 'ôöőøœ '.repeat(Math.ceil((0.4 * text.replace(/\\{[^{}]*\\}/g, '').length) / 6)).trim();
    return [key, /^#?$/.test(text) ? text : text + ' ' + more];
  })))`;
  await page.route('**/assets/texts-en-*.js', async (route) => {
    const answer = await route.fetch();
    const script = (await answer.text()).replace(/export\s*\{([^}]*)\}/, (_, list: string) => {
      const names = list.split(',').map((one) => one.trim().split(/\s+as\s+/));
      const own = names.map(([name], i) => `longer${i}=longer(${name})`);
      return `const longer=${longer},${own};export{${names.map(([, as], i) => `longer${i} as ${as}`)}}`;
    });
    await route.fulfill({ response: answer, body: script });
  });
  await page.reload();
  await page.getByText('ôöőøœ').first().waitFor();
}

async function cutOnEveryPage(page: Page): Promise<string[]> {
  const found: string[] = [];
  for (const route of routes) {
    await goTo(page, route);
    await page.locator('h1, .title-block, canvas').first().waitFor();
    await settled(page);
    for (const text of await clippedOn(page)) found.push(`${route.replace(/[0-9a-f-]{36}/, 'ID')}: ${text}`);
  }
  return found;
}

/** The program in a language, in a window of a size. */
async function openIn(language: (typeof LANGUAGES)[number], viewport: typeof SMALLEST): Promise<Page> {
  const page = await program.openBrowser({ viewport });
  const display = await callFromPage(page, 'display.read', {});
  await callFromPage(page, 'display.keep', { ...display, language });
  await page.reload();
  await page.locator(`html[lang=${language}]`).waitFor();
  return page;
}

describe('a window of 1024 × 700', () => {
  it('cuts nothing off in a language 40 % longer than English', async () => {
    const page = await program.openBrowser({ viewport: SMALLEST });
    await speakLonger(page);
    expect(await cutOnEveryPage(page)).toEqual([]);
  });

  it.each(LANGUAGES)('cuts nothing off in %s', async (language) => {
    const page = await openIn(language, SMALLEST);
    expect(await cutOnEveryPage(page)).toEqual([]);
  });
});

describe('the card of the part in hand', () => {
  it.each(LANGUAGES)('stands still beside the drawing in %s, whichever tab is chosen', async (language) => {
    const page = await openIn(language, { width: 1280, height: 800 });
    await goTo(page, routes.find((route) => /^#\/fits\/[0-9a-f-]{36}$/.test(route))!);
    const card = page.locator('.part-card');
    await card.getByRole('tab').last().click();
    expect(await card.evaluate((box) => [box.scrollWidth - box.clientWidth, box.scrollLeft])).toEqual([0, 0]);
  });
});
