import type { Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { bodyOfAthlete } from '../../core/body/body-of-athlete.ts';
import { FIT_FORMAT, type Fit, fitSchema } from '../../core/document/fit-schema.ts';
import { createEvaluator } from '../../core/evaluation/evaluator.ts';
import { firstSetting } from '../../core/optimise/first-setting.ts';
import { exampleAthlete, exampleFit, exampleSeat } from '../core/example/example-fit.ts';
import { handlePlace, nextFrame } from './hand.ts';
import { type RunningProgram, startProgram } from './harness.ts';
import { callFromPage, goTo, numberIn, soon } from './screens.ts';

let program: RunningProgram;
let page: Page;
let pairId: string;
let made = 0;

const PAIR = ['Bohuš Křivolák', 'Zofia Łęgowianka'] as const;

async function roster() {
  const athletes = await callFromPage(page, 'athletes.list', {});
  const boats = await callFromPage(page, 'boats.list', {});
  const athlete = (name: string) => athletes.find((a) => a.athlete.name === name)!.athlete;
  const boat = (name: string) => boats.find((b) => b.boat.name === name)!.boat;
  return { athlete, boat };
}

async function makeFit(name: string, boatName: string, crew: readonly string[]): Promise<string> {
  const { athlete, boat } = await roster();
  const hull = boat(boatName);
  const seats = crew.map((who, i) => {
    const person = athlete(who);
    const stationX = hull.seats[i]!.stationM;
    return {
      ...firstSetting({ body: bodyOfAthlete(person), boat: hull, stationX, side: person.side }),
      athlete: person,
      side: i === 0 ? ('right' as const) : ('left' as const),
    };
  });
  const fit = fitSchema.parse({ format: FIT_FORMAT, name, boat: hull, seats });
  return (await callFromPage(page, 'fits.create', { fit })).id;
}

async function kept(): Promise<Fit> {
  await page.locator('.kept[data-keeping="kept"]').waitFor();
  return (await callFromPage(page, 'fits.open', { id: pairId })).fit;
}

const crew = (name: string | RegExp) => page.locator('.crew').getByRole('button', { name });

beforeAll(async () => {
  program = await startProgram();
  page = await program.openBrowser({ viewport: { width: 1440, height: 900 }, clock: true });
  await callFromPage(page, 'demo.install', {});
  for (const name of PAIR) await makeFit(`${name}, own single`, 'Broad single', [name]);
});
/** A pair that nobody has changed yet, with its crew’s tab open. */
beforeEach(async () => {
  made += 1;
  const name = `Unequal pair ${made}`;
  pairId = await makeFit(name, 'No. 7, pair', PAIR);
  await goTo(page, `#/fits/${pairId}`);
  await page.getByRole('heading', { level: 1, name, exact: true }).waitFor();
  await page.getByRole('tab', { name: 'Crew' }).click();
});
afterAll(() => program?.dispose());

describe('a pair with unequal masses, from two singles’ fits', () => {
  it('starts each seat from its paddler’s own single: the stance comes along', async () => {
    for (const [seat, name] of PAIR.entries()) {
      await page
        .getByRole('radio', { name: new RegExp(name) })
        .or(page.getByText(`${seat + 1}: ${name}`))
        .first()
        .click();
      await crew(new RegExp(`Start ${name} from`)).click();
      await page.locator('.crew [role="status"]').waitFor();
    }
    const fit = await kept();
    const fits = await callFromPage(page, 'fits.list', { search: 'own single' });
    for (const [seat, name] of PAIR.entries()) {
      const summary = fits.find((f) => f.name.startsWith(name))!;
      const single = (await callFromPage(page, 'fits.open', { id: summary.id })).fit;
      expect(fit.seats[seat]!.kneePad).toEqual(single.seats[0]!.kneePad);
      expect(fit.seats[seat]!.frontFoot).toEqual(single.seats[0]!.frontFoot);
    }
  });

  it('levels the crew: bow a centimetre up, weight over the centreline, each stance kept', async () => {
    const before = createEvaluator().evaluate(await kept());
    await crew('Level the crew').click();
    await crew('Apply').first().click();
    const after = createEvaluator().evaluate(await kept());
    const afloat = after.afloat.ready;
    if (afloat.kind !== 'afloat') throw new Error('the pair does not float');
    expect(afloat.bowOverStern).toBeCloseTo(0.01, 3);
    const angle = (r: typeof after, seat: number) => r.seats[seat]!.stances.ready.angles.kneelingKnee;
    for (const seat of [0, 1]) expect(Math.abs(angle(after, seat) - angle(before, seat))).toBeLessThan(0.02);
  });

  it('compares every seating order and takes one in a single step', async () => {
    await crew('Compare every order').click();
    await page.locator('.crew .crew-table').last().locator('tbody tr').nth(1).waitFor();
    // What the order is worth on the water, with its doubt.
    await page
      .locator('.crew')
      .getByText(/\d\s±\s\d[\d.]*\sN \(\d[\d.]*\s%\)/)
      .waitFor();
    await crew(/seat them/)
      .first()
      .click();
    const swapped = await kept();
    expect(swapped.seats.map((s) => s.athlete!.name)).toEqual([...PAIR].reverse());
    await page.keyboard.press('Control+z');
    await soon(async () => (await kept()).seats.map((s) => s.athlete!.name)).toEqual([...PAIR]);
  });

  it('warns of a paddler who kneels on the knee of the other side', async () => {
    const row = page.locator('.crew-bands tr', { hasText: 'Kneels on paddling side' });
    expect(await row.locator('td[data-severity="good"]').count()).toBe(2);
    await page.getByText('Kneels on other knee', { exact: true }).click();
    await row.locator('td[data-severity="change"]', { hasText: 'no' }).waitFor();
    const fit = await kept();
    expect(fit.seats.filter(({ side, kneels }) => kneels && kneels !== side)).toHaveLength(1);
    await page.keyboard.press('Control+z');
    await soon(() => row.locator('td[data-severity="good"]').count()).toBe(2);
  });

  it('seats nobody where somebody is missing, and the boat still floats', async () => {
    const whole = await kept();
    const seats = whole.seats.map((seat, i) => (i === 0 ? { ...seat, athlete: null } : seat));
    const { id } = await callFromPage(page, 'fits.create', { fit: { ...whole, name: 'One missing', seats } });
    const other = await program.openBrowser();
    await other.goto(`${program.origin}/#/fits/${id}`);
    await other.getByRole('tab', { name: 'Crew' }).click();
    await other.locator('.crew-table tfoot').first().waitFor();
    expect(await other.locator('.crew-table').first().locator('tbody tr').count()).toBe(1);
    await other.getByText('1: nobody').click();
    await other.getByRole('tab', { name: /^Findings/ }).click();
    await other.getByText('Nobody is in this seat.').waitFor();
    await other.context().close();
  });

  it('drags both pads together with Ctrl and Shift, as one step', async () => {
    const before = await kept();
    const at = await handlePlace(page, 'kneePad/plan');
    await page.keyboard.down('Control');
    await page.keyboard.down('Shift');
    await page.mouse.move(at.x, at.y);
    await page.mouse.down();
    await page.mouse.move(at.x - 30, at.y, { steps: 8 });
    await nextFrame(page);
    await page.mouse.up();
    await page.keyboard.up('Shift');
    await page.keyboard.up('Control');
    await soon(async () => (await kept()).seats[0]!.kneePad.aftM).not.toBe(before.seats[0]!.kneePad.aftM);
    const after = await kept();
    const moved = after.seats.map((s, i) => s.kneePad.aftM - before.seats[i]!.kneePad.aftM);
    expect(Math.abs(moved[0]!)).toBeGreaterThan(0.005);
    expect(moved[1]).toBeCloseTo(moved[0]!, 6);
  });
});

describe('the seating orders of a four', () => {
  let id: string;
  beforeEach(async () => {
    const sides = ['left', 'right', 'left', 'right'] as const;
    const seats = sides.map((side, i) =>
      exampleSeat({ side, athlete: exampleAthlete({ name: `Paddler ${i + 1}`, massKg: 60 + 8 * i }) }),
    );
    ({ id } = await callFromPage(page, 'fits.create', { fit: { ...exampleFit(seats), name: 'A four' } }));
  });

  it('are all tried, told as they come, and stopped when asked', async () => {
    const other = await program.openBrowser();
    await other.addInitScript(holdOrdersAfterThree);
    await other.goto(`${program.origin}/#/fits/${id}`);
    await other.reload();
    await other.getByRole('tab', { name: 'Crew' }).click();
    const panel = other.locator('.crew');
    await panel.getByRole('button', { name: 'Compare every order' }).click();
    await panel.getByText('3 of 24 orders tried').waitFor();
    await panel.getByRole('button', { name: 'Stop' }).click();
    await panel.locator('progress').waitFor({ state: 'detached' });
    expect(await other.evaluate(() => (window as unknown as { ended: number }).ended)).toBe(1);
    expect(await panel.locator('.crew-table').last().locator('tbody tr').count()).toBe(3);
    await other.context().close();
  });

  it('are told best first, each of the 24 once', async () => {
    await goTo(page, `#/fits/${id}`);
    await page.getByRole('heading', { level: 1, name: 'A four' }).waitFor();
    await page.getByRole('tab', { name: 'Crew' }).click();
    await crew('Compare every order').click();
    const rows = page.locator('.crew .crew-table').last().locator('tbody tr th');
    await soon(() => rows.count()).toBe(24);
    expect(new Set(await rows.allTextContents()).size).toBe(24);
  });
});

/** In the page: lets three seating orders through from the worker that judges them, so that there is time to stop it. */
function holdOrdersAfterThree(): void {
  const Real = window.Worker;
  class Held extends Real {
    private orders = false;
    private heard = 0;
    override postMessage(question: { name?: string }): void {
      this.orders = question.name === 'compareSeatingOrders';
      super.postMessage(question);
    }
    override set onmessage(listener: ((event: MessageEvent) => void) | null) {
      super.onmessage = (event: MessageEvent) => {
        if (this.orders) this.heard += 1;
        if (this.heard <= 3) listener?.(event);
      };
    }
    override terminate(): void {
      if (this.orders) Object.assign(window, { ended: 1 });
      super.terminate();
    }
  }
  window.Worker = Held;
}

describe('the crew on paper', () => {
  beforeEach(async () => {
    await page.getByRole('link', { name: 'Print the crew sheet' }).click();
    await page.getByRole('img', { name: /^No. 7, pair/ }).waitFor();
  });

  it('has the whole boat, every seat’s places from both marks, trim, and who brings what', async () => {
    const { fit } = await callFromPage(page, 'fits.open', { id: pairId });
    const report = createEvaluator().evaluate(fit);
    const cells = async (row: string) => {
      const line = page.getByRole('row', { name: row }).first();
      return (await line.getByRole('cell').allTextContents()).map((text) => text.replaceAll('\u{202f}', ' '));
    };
    const place = (aftM: number) => `${(Math.abs(aftM) * 100).toFixed(1)} cm ${aftM > 0 ? 'aft' : 'forward'}`;
    const aft = fit.seats.map(({ kneePad }) => kneePad.aftM);
    const written = (texts: readonly string[]) => texts.map((text) => Number.parseFloat(text).toFixed(1));
    expect(await cells('Paddler')).toEqual([...PAIR]);
    const fromSeat = await cells('Bearing point from seat’s mark');
    expect(written(fromSeat)).toEqual(aft.map((a) => (a * 100).toFixed(1)));
    const fromCentre = await cells('Bearing point from centre mark');
    expect(fromCentre.map((text) => text.split(' ').at(-1))).toEqual(
      aft.map((a, i) =>
        place(a - fit.boat.seats[i]!.stationM)
          .split(' ')
          .at(-1),
      ),
    );
    const afloat = report.afloat.ready;
    if (afloat.kind !== 'afloat') throw new Error('the pair does not float');
    const together = await cells('Together');
    expect(numberIn(together[0]!)).toBe(Math.round(afloat.bowOverStern * 1000));
    const judged = await page.locator('.crew-bands td[data-severity]').count();
    const shown = report.findings.filter(({ seat }) => seat !== null).length;
    expect(judged).toBeGreaterThan(20);
    expect(judged).toBeLessThanOrEqual(shown);
  });

  it('prints on two sheets of A4, light whatever the screen, without the program’s own strip', async () => {
    await page.emulateMedia({ colorScheme: 'dark' });
    await page.evaluate(() => {
      const asked = { times: 0 };
      Object.assign(window, { asked, print: () => asked.times++ });
    });
    await page.getByRole('button', { name: 'Print' }).click();
    expect(await page.evaluate(() => (window as unknown as { asked: { times: number } }).asked.times)).toBe(
      1,
    );
    await page.emulateMedia({ media: 'print', colorScheme: 'dark' });
    await soon(() => page.evaluate(() => document.documentElement.dataset.theme)).toBe('light');
    expect(await page.locator('.sheet-head').isVisible()).toBe(false);
    const pdf = (await page.pdf({ format: 'A4', preferCSSPageSize: true })).toString('latin1');
    expect(pdf.match(/\/Type\s*\/Page\b/g)).toHaveLength(2);
    await page.emulateMedia({ media: 'screen', colorScheme: 'light' });
  });
});
