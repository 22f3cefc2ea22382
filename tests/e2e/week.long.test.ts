import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect } from 'vitest';
import { FIRST_TAPES } from '../../core/body/measuring.ts';
import type { Fit } from '../../core/document/fit-schema.ts';
import { createEvaluator } from '../../core/evaluation/evaluator.ts';
import type { Report } from '../../core/evaluation/report.ts';
import { rankChanges } from '../../core/trial/rank-changes.ts';
import { toldFirst } from '../../core/trial/told-first.ts';
import { english } from '../english.ts';
import { barriersInBothThemes } from './barriers.ts';
import { countedHand } from './counted-hand.ts';
import { handlePlace, nextFrame } from './hand.ts';
import { type RunningProgram, startProgram } from './harness.ts';
import { callFromPage, enter, goTo, measure, numberIn, shown, soon, textOf } from './screens.ts';
import { storyOf } from './story.ts';
import { drillRails, makeBoat, makePartner, READ, saveAs } from './week-hand.ts';

const PAD_AFT = 'Knee pad: Aft of the mark';
const NAME = 'Runa Vadstrand';
const PARTNER = 'Bohuš Křivolák';
const SINGLE = 'Training single';
const OTHER_SINGLE = 'No. 4, single';
const PAIR = 'No. 7, pair';

/** Interactions that a person may need from the first start to a saved fit, and on to its sheet as PDF. */
const TO_A_SAVED_FIT = 12;
const TO_A_SHEET = 15;
/** Changes that the page tells at once. */
const TOLD_FIRST = 3;
let program: RunningProgram;
let page: Page;
let athleteId: string;
let fitId: string;
const evaluator = createEvaluator();

async function keptFit(id = fitId): Promise<Fit> {
  await page.locator('.kept[data-keeping="kept"]').waitFor();
  return (await callFromPage(page, 'fits.open', { id })).fit;
}

const revisions = async (id = fitId) => (await callFromPage(page, 'fits.open', { id })).revisions;
const value = (report: Report, id: string) => report.quantities.find((q) => q.id === id)!.value;
const quantity = (id: string) => page.locator(`[data-quantity="${id}"] .value-number`);
const tabNamed = (name: string) => page.getByRole('tab', { name: new RegExp(`^${name}`) }).first();
const button = (name: string | RegExp) => page.getByRole('button', { name, exact: typeof name === 'string' });

/** The fit that the address names. */
const fitInAddress = () => /#\/fits\/([0-9a-f-]{36})/.exec(page.url())?.[1] ?? '';

/** Serious findings of axe in both themes. */
const barriers = () => barriersInBothThemes(page);

beforeAll(async () => {
  program = await startProgram();
  page = await program.openBrowser({
    viewport: { width: 1440, height: 900 },
    reducedMotion: 'reduce',
    clock: true,
  });
});
afterAll(() => program?.dispose());

storyOf('a coach’s week, from a blank start to next spring', ({ step }) => {
  // Monday: a new junior.
  step('has a saved fit and its sheet as PDF from a blank start, in a few interactions', async () => {
    const hand = countedHand(page);
    await hand.click(page.getByRole('link', { name: english.say('start.blank') }));
    await hand.fill('Name', NAME);
    await hand.fill('Stature', '158');
    await hand.fill('Body mass', '49');
    await hand.click(page.getByText('left', { exact: true }));
    await hand.click(page.getByText(english.say('boat.usual.training'), { exact: true }));
    await hand.click(button(english.say('new-fit.begin')));
    await measure(page, PAD_AFT).waitFor();
    await hand.click(button(english.say('revisions.save')).first());
    await hand.fill('Name', 'As estimated');
    await hand.click(page.getByRole('dialog').getByRole('button', { name: 'Save', exact: true }));
    await page.getByRole('dialog').waitFor({ state: 'detached' });
    expect(hand.count()).toBeLessThanOrEqual(TO_A_SAVED_FIT);
    await hand.click(page.getByRole('link', { name: english.say('setout.page'), exact: true }));
    const download = page.waitForEvent('download');
    await hand.click(button(english.say('setout.sheet.pdf')));
    expect((await download).suggestedFilename()).toMatch(/\.pdf$/);
    expect(hand.count()).toBeLessThanOrEqual(TO_A_SHEET);
  });

  step('is measured with six tapes, each read twice, and the boat gets its holes', async () => {
    const [entered] = await callFromPage(page, 'athletes.list', { search: NAME });
    const [boat] = await callFromPage(page, 'boats.list', {});
    expect(boat!.boat).toMatchObject({ name: SINGLE, hull: { kind: 'usual' } });
    await goTo(page, `#/boats/${boat!.id}`);
    await drillRails(page);
    await button('Save').click();
    await page.getByText(english.say('boat.older', { count: 1 })).waitFor();
    await goTo(page, `#/athletes/${entered!.id}`);
    await page.getByText('female', { exact: true }).click();
    await page.getByLabel('Born on').fill('2012-05-20');
    await button('Save').click();
    await page.getByRole('link', { name: NAME, exact: true }).click();
    await page.getByRole('link', { name: 'Measure', exact: true }).click();
    await enter(page, 'Stature', '158');
    await enter(page, 'Body mass', '49');
    for (const tape of FIRST_TAPES) {
      await button(`Next: ${english.say(`tape.${tape}.name`)}`).click();
      const [first, second] = READ[tape]!;
      await enter(page, 'First reading', first);
      await enter(page, 'Second reading', second);
      expect(await button('Use it anyway').count(), tape).toBe(0);
    }
    await button(`Next: ${english.say('measure.step.end')}`).click();
    await button('Save measurements').click();
    await soon(async () => {
      const all = await callFromPage(page, 'athletes.list', { search: NAME });
      athleteId = all[0]!.id;
      return Object.keys(all[0]!.athlete.tape).sort();
    }).toEqual([...FIRST_TAPES].sort());
  });

  step('is put into the club’s training single, from a setting that is proposed', async () => {
    await goTo(page, '#/fits/new');
    await page.getByLabel('Boat').selectOption({ label: SINGLE });
    await page.getByLabel('Athlete').selectOption({ label: NAME });
    await button('Propose a first setting').click();
    await page.getByText('The fit starts from:').first().waitFor();
    await button('Create').click();
    await measure(page, PAD_AFT).waitFor();
    fitId = fitInAddress();
    const [seat] = (await keptFit()).seats;
    expect(seat!.athlete).toMatchObject({ id: athleteId, name: NAME });
  });

  step(
    'drags the pad a hole back: the bow comes up and the front knee opens, on the screen as in the core',
    async () => {
      await tabNamed('Values').click();
      const before = await shown(page, PAD_AFT);
      const was = evaluator.evaluate(await keptFit());
      const { x, y } = await handlePlace(page, 'kneePad/plan');
      await page.mouse.move(x, y);
      await page.mouse.down();
      for (let pulled = 0; pulled < 60 && (await shown(page, PAD_AFT)) < before + 0.9; pulled += 1) {
        await page.mouse.move(x - pulled, y);
        await nextFrame(page);
      }
      await page.mouse.up();
      expect(await shown(page, PAD_AFT)).toBeCloseTo(before + 1, 6);
      await soon(async () => (await keptFit()).seats[0]!.kneePad.aftM).toBeCloseTo((before + 1) / 100, 9);
      const is = evaluator.evaluate(await keptFit());
      expect(value(is, 'trimRest')).toBeGreaterThan(value(was, 'trimRest'));
      expect(value(is, 'frontKnee')).toBeGreaterThan(value(was, 'frontKnee'));
      const bow = async () => numberIn(await textOf(quantity('trimRest')));
      await soon(bow).toBe(Math.round(value(is, 'trimRest') * 1000));
    },
  );

  step('pins the trunk’s lean as a photograph shows it, and saves', async () => {
    await page
      .getByRole('button', { name: /^Trunk forward/ })
      .first()
      .click();
    await button('Hold this angle').first().click();
    await soon(async () => (await keptFit()).seats[0]!.pins.trunkPitchDeg).toBeTypeOf('number');
    await saveAs(page, 'First setting');
    await soon(async () => (await revisions()).map(({ name }) => name)).toEqual(['First setting']);
  });

  // Tuesday: the boatman.
  step('takes the set-out sheet and the templates with him', async () => {
    await page.getByRole('link', { name: 'Workshop sheet', exact: true }).click();
    await page.getByRole('region', { name: 'Workshop sheet' }).waitFor();
    for (const [name, ending] of [
      ['Sheet as PDF', /\.pdf$/],
      ['Templates as PDF', /\.pdf$/],
    ] as const) {
      const download = page.waitForEvent('download');
      await button(name).click();
      expect((await download).suggestedFilename()).toMatch(ending);
    }
    await page.getByRole('link', { name: 'Back to the bench' }).click();
  });

  // Wednesday: on the water.
  step('has the trial entered by two touches, the caution first', async () => {
    await tabNamed('Trials').click();
    await page.getByText('No trial yet.').first().waitFor();
    await page.getByRole('link', { name: 'Enter a trial' }).click();
    await button('Save').click();
    await page.getByText(english.say('trial.keep.none')).first().waitFor();
    await button('Rear toes').click();
    await button('Save').click();
    await page.getByText('What was felt here?').first().waitFor();
    await page.locator('.felt-list').getByText('numb', { exact: true }).click();
    await page.getByText('Stop and change the fit before the next session.').first().waitFor();
    await button('Bow digs in').click();
    await page.getByLabel('In words').fill('Foot asleep after ten minutes, bow under at pace');
    expect(await barriers()).toEqual([]);
    await page.reload();
    await soon(() => page.getByLabel('In words').inputValue()).toBe(
      'Foot asleep after ten minutes, bow under at pace',
    );
    await button('Save').click();
    await page.locator('.trial-change').first().waitFor();
  });

  step(
    'is answered on the bench by the changes that the core ranks, with what each moves besides',
    async () => {
      const [record] = await callFromPage(page, 'trials.list', { fitId });
      const [tried] = await revisions();
      expect(record).toMatchObject({ athleteId, revisionId: tried!.id, trial: { seat: 0 } });
      const fit = await keptFit();
      const { changes } = rankChanges(createEvaluator(), { fit, trial: record!.trial });
      expect(changes.length).toBeGreaterThan(0);
      const told = page.locator('.trial-change');
      expect(await told.count()).toBe(toldFirst(changes, TOLD_FIRST).length);
      const text = await textOf(page.locator('.trial-answers'));
      expect(text.indexOf('Stop and change')).toBeLessThan(text.indexOf('Helpful changes'));
      expect(await barriers()).toEqual([]);
    },
  );

  step('shows the first as an outline, then takes it as one step that can be taken back', async () => {
    const before = await keptFit();
    const first = page.locator('.trial-change').first();
    await first.getByRole('button', { name: /^Show:/ }).click();
    await first.getByRole('button', { name: /^Hide:/ }).waitFor();
    expect(await keptFit()).toEqual(before);
    await first.getByRole('button', { name: /^Apply:/ }).click();
    await soon(() => keptFit()).not.toEqual(before);
    const after = await keptFit();
    await page.keyboard.press('Control+z');
    await soon(() => keptFit()).toEqual(before);
    await page.keyboard.press('Control+Shift+z');
    await soon(() => keptFit()).toEqual(after);
  });

  step('and the next revision says what it answers', async () => {
    await page.keyboard.press('Control+s');
    const dialog = page.getByRole('dialog');
    const ticks = dialog.getByRole('checkbox');
    await soon(() => ticks.count()).toBe(2);
    expect(await barriers()).toEqual([]);
    for (const tick of await ticks.all()) await tick.locator('xpath=ancestor::label').click();
    await dialog.getByRole('textbox').first().fill('After Wednesday');
    await dialog.getByRole('button', { name: 'Save', exact: true }).click();
    await soon(async () => (await revisions())[0]!.answers.length).toBe(2);
    await page.getByText('addressed in rev. 2').first().waitFor();
    await page.getByText(english.say('trials.changes.closed')).first().waitFor();
    expect(await page.locator('.trial-change').count()).toBe(0);
    await tabNamed('Revisions').click();
    await page
      .getByText(english.say('answers.of', { what: 'Rear toes: numb (moderate), Bow digs in (moderate)' }))
      .waitFor();
  });

  // Thursday: the athlete.
  step('is shown before and after', async () => {
    await page.getByRole('link', { name: english.say('show.page'), exact: true }).click();
    await page.getByRole('heading', { level: 1, name: NAME }).waitFor();
    const said = page.locator('.show-said').first();
    await said.getByText('Foot asleep after ten minutes').waitFor();
    expect(await said.getByText(english.say('show.said.done')).count()).toBe(2);
    await page.getByRole('tab', { name: 'What changes' }).click();
    await page.locator('.show-cautions').getByText('see a physiotherapist or doctor').waitFor();
    await page.getByRole('heading', { name: english.say('athlete-page.feel') }).waitFor();
    await page.getByRole('link', { name: 'Back to the bench' }).click();
    await measure(page, PAD_AFT).waitFor();
  });

  step('finds the story in the timeline, newest first, each with its reason', async () => {
    await page.keyboard.press('Control+.');
    await page.keyboard.type('timeline');
    await soon(() => page.getByRole('option', { name: `Timeline of ${NAME}` }).count()).toBe(1);
    await page.keyboard.press('Enter');
    await page.getByRole('heading', { name: `Timeline of ${NAME}` }).waitFor();
    const kinds = () =>
      page.locator('.timeline > li').evaluateAll((items) => items.map((i) => i.getAttribute('data-kind')));
    await soon(kinds).toEqual(['revision', 'trial', 'revision', 'revision']);
    await page.getByText(english.say('answers.of', { what: 'Rear toes: numb (moderate)' })).waitFor();
    expect(await barriers()).toEqual([]);
  });

  // Saturday: a pair with a heavier partner.
  step('is levelled by shifting whole settings, each stance kept', async () => {
    await makeBoat(page, PAIR, 'C2');
    await makePartner(page, PARTNER);
    await goTo(page, '#/fits/new');
    await page.getByLabel('Boat').selectOption({ label: PAIR });
    const seats = page.getByLabel(/^Seat \d/);
    await seats.nth(0).selectOption({ label: NAME });
    await seats.nth(1).selectOption({ label: PARTNER });
    await button('Create').click();
    await measure(page, PAD_AFT).waitFor();
    const pairId = fitInAddress();
    await tabNamed('Crew').click();
    const before = await keptFit(pairId);
    await button('Level the crew').click();
    await page.locator('.crew').getByRole('button', { name: 'Apply' }).first().click();
    await soon(() => keptFit(pairId)).not.toEqual(before);
    const after = await keptFit(pairId);
    const bow = (fit: Fit) => {
      const { ready } = evaluator.evaluate(fit).afloat;
      return ready.kind === 'afloat' ? ready.bowOverStern : Number.NaN;
    };
    expect(Math.abs(bow(after) - 0.01)).toBeLessThan(Math.abs(bow(before) - 0.01) + 1e-9);
    for (const seat of [0, 1]) {
      const knee = (fit: Fit) => evaluator.evaluate(fit).seats[seat]!.stances.ready.angles.kneelingKnee;
      expect(Math.abs(knee(after) - knee(before))).toBeLessThan(0.02);
    }
    await saveAs(page, 'Pair levelled');
  });

  // The same stance in another hull.
  step('stands side by side with what keeps the trim, and becomes a new fit in one press', async () => {
    await makeBoat(page, OTHER_SINGLE, 'C1');
    await goTo(page, `#/fits/${fitId}/transfer`);
    await page.getByLabel('Boat').selectOption({ label: OTHER_SINGLE });
    await page.locator('.transfer-table').waitFor();
    expect(await barriers()).toEqual([]);
    await button(`Save as a new fit: ${OTHER_SINGLE}, in its holes`).click();
    await measure(page, PAD_AFT).waitFor();
    const moved = await keptFit(fitInAddress());
    const from = (await callFromPage(page, 'fits.open', { id: fitId })).fit;
    expect(moved.boat.name).toBe(OTHER_SINGLE);
    expect(moved.notes).toContain(`From “${from.name}” in ${SINGLE}`);
    expect(moved.seats[0]!.kneePad.heightM).toBe(from.seats[0]!.kneePad.heightM);
    const aft = moved.seats[0]!.kneePad.aftM;
    expect(aft / 0.01).toBeCloseTo(Math.round(aft / 0.01), 6);
    const angle = (fit: Fit) => evaluator.evaluate(fit).seats[0]!.stances.ready.angles.kneelingKnee;
    expect(Math.abs(angle(moved) - angle(from))).toBeLessThan(0.02);
  });

  // Spring: four centimetres taller.
  step('the athlete’s page says which fits the body has outgrown', async () => {
    const [record] = await callFromPage(page, 'athletes.list', { search: NAME });
    const { athlete } = record!;
    await callFromPage(page, 'athletes.save', {
      athlete: {
        ...athlete,
        statureM: athlete.statureM + 0.04,
        massKg: athlete.massKg + 4,
        measuredOn: '2027-04-02',
      },
    });
    await goTo(page, `#/athletes/${athleteId}`);
    const rows = page.locator('.athlete-fits tbody tr');
    await soon(() => rows.count()).toBe(4);
    await soon(async () => textOf(rows.first())).toMatch(/4\.0.cm of growth since · (nothing|\d)/);
    expect(await barriers()).toEqual([]);
  });

  step(
    'the bench says it too, predicts every finding, and brings the fit up to date in one step',
    async () => {
      await goTo(page, `#/fits/${fitId}`);
      await page.getByText(`${NAME} has grown`).first().waitFor();
      await page.getByRole('link', { name: 'See what changes' }).click();
      await page.locator('.finding-changes').waitFor();
      const before = await keptFit();
      const told = await textOf(page.locator('.finding-changes'));
      await button(english.say('growth.take.of', { name: NAME })).click();
      await soon(async () => (await keptFit()).seats[0]!.athlete!.statureM).toBeCloseTo(1.62, 9);
      const after = await keptFit();
      expect({ ...after.seats[0], athlete: null }).toEqual({ ...before.seats[0], athlete: null });
      const [was, is] = [evaluator.evaluate(before), evaluator.evaluate(after)];
      const degrees = (report: Report) => ((value(report, 'frontKnee') * 180) / Math.PI).toFixed(0);
      expect(told).toContain(`${degrees(was)}° → ${degrees(is)}°`);
      await page.getByText(english.say('growth.done')).first().waitFor();
      expect(await page.getByText(`${NAME} has grown`).count()).toBe(0);
      expect(await barriers()).toEqual([]);
    },
  );

  step('and proposes the re-fit, which is taken and saved', async () => {
    const before = await keptFit();
    await button('Propose the smallest change').first().click();
    const take = button('Apply the proposal').first();
    await take.or(button('Discard the proposal').first()).first().waitFor();
    if ((await take.count()) > 0) {
      await take.click();
      await soon(() => keptFit()).not.toEqual(before);
    }
    await saveAs(page, 'Spring');
    await soon(async () => (await revisions()).map(({ number }) => number)).toEqual([3, 2, 1]);
  });

  // Anything, later.
  step('is found by a word of it, and recent work stands where the program opens', async () => {
    await goTo(page, '#/');
    await page.getByRole('heading', { name: 'Home' }).waitFor();
    await page.getByRole('link', { name: /^Continue: / }).waitFor();
    expect(await barriers()).toEqual([]);
    await page.getByLabel('Find anything').fill('ASLEEP vadstrand');
    await page.getByText('1 result').first().waitFor();
    await page.locator('.found-list a').click();
    await page.getByText('Foot asleep after ten minutes').first().waitFor();
  });
});
