import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { LONG } from '../cases.ts';
import { exampleAthlete, exampleBoat, exampleFit } from '../core/example/example-fit.ts';
import { barriersOn } from './barriers.ts';
import { type RunningProgram, startProgram } from './harness.ts';
import { callFromPage, goTo, settled } from './screens.ts';

/** Pages that the quick run looks at as well; the long run looks at all. */
const QUICK = ['fits', 'trial', 'athlete', 'boat'];

let program: RunningProgram;
let routes: Readonly<Record<string, string>>;

beforeAll(async () => {
  program = await startProgram();
  const page = await program.openBrowser();
  const athlete = await callFromPage(page, 'athletes.save', { athlete: exampleAthlete() });
  const boat = await callFromPage(page, 'boats.save', { boat: exampleBoat() });
  const fit = await callFromPage(page, 'fits.create', { fit: exampleFit() });
  routes = {
    home: '#/',
    fits: '#/fits',
    'new fit': '#/fits/new',
    trial: `#/fits/${fit.id}/trial/new`,
    show: `#/fits/${fit.id}/show`,
    'workshop sheet': `#/fits/${fit.id}/set-out`,
    photograph: `#/fits/${fit.id}/photograph`,
    athletes: '#/athletes',
    athlete: `#/athletes/${athlete.id}`,
    measure: `#/athletes/${athlete.id}/measure`,
    'athletes as a table': '#/athletes/table',
    boat: `#/boats/${boat.id}`,
    lines: `#/boats/${boat.id}/lines`,
    'new boat': '#/boats/new',
    paddles: '#/paddles',
    data: '#/archive',
    help: '#/help',
  };
  await page.context().close();
});
afterAll(() => program?.dispose());

/** Goes to a page and waits until it is there with all that it fetches. */
async function open(page: Page, name: string): Promise<void> {
  await goTo(page, routes[name]!);
  await page.getByRole('heading', { level: 1 }).waitFor();
  await settled(page);
}

/** What of a page is larger than the window: what may be has a bar of its own, and the head stays where it is. */
function tooLarge(page: Page): Promise<string[]> {
  return page.evaluate(() =>
    ['html', '#content'].flatMap((place) => {
      const element = document.querySelector(place);
      const wide = element ? element.scrollWidth - element.clientWidth : 0;
      const tall = place === 'html' && element ? element.scrollHeight - element.clientHeight : 0;
      return wide > 0 || tall > 0 ? [`${place} is ${wide} px too wide, ${tall} px too tall`] : [];
    }),
  );
}

/** What can be pressed and is lower than a finger needs. A box to tick is pressed by the label around it. */
function tooSmall(page: Page): Promise<string[]> {
  const pressed = ':is(#content, header) :is(button, input, select, summary, .choice, .tick, a.button)';
  return page.evaluate(
    (targets) =>
      [...document.querySelectorAll(targets)]
        .filter((element) => !(element.matches('input') && element.closest('.choice, .tick')))
        .map((element) => ({
          name: element.textContent || element.ariaLabel || element.outerHTML.slice(0, 80),
          box: (element.closest('.tick-box') ?? element).getBoundingClientRect(),
        }))
        .filter(({ box }) => box.height > 2 && box.height < 43.5)
        .map(({ name, box }) => `${name} is ${box.height} px high`),
    pressed,
  );
}

it('every page fits a window of 1280 × 800 enlarged to 200 %, with targets of 44 px and no barrier', async () => {
  const page = await program.openBrowser({
    viewport: { width: 640, height: 400 },
    deviceScaleFactor: 2,
    hasTouch: true,
    reducedMotion: 'reduce',
  });
  const wrong: string[] = [];
  for (const name of LONG ? Object.keys(routes) : QUICK) {
    await open(page, name);
    const found = [...(await tooLarge(page)), ...(await tooSmall(page)), ...(await barriersOn(page))];
    wrong.push(...found.map((one) => `${name}: ${one}`));
  }
  expect(wrong).toEqual([]);
});
