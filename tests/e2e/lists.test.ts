import type { Page, Route } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { NEUTRAL_TERMS } from '../../core/document/neutral-schema.ts';
import { inventedBoat, inventedPaddle } from '../app/invented.ts';
import { exampleAthlete, exampleFit } from '../core/example/example-fit.ts';
import { english } from '../english.ts';
import { type RunningProgram, startProgram } from './harness.ts';
import { callFromPage, goTo, soon } from './screens.ts';

let program: RunningProgram;
let page: Page;

beforeAll(async () => {
  program = await startProgram();
  page = await program.openBrowser({ viewport: { width: 1280, height: 800 } });
});
afterAll(() => program?.dispose());

const names = () => page.locator('table.roster tbody th').allTextContents();
const button = (name: string) => page.getByRole('button', { name, exact: true });

describe('several at once', () => {
  const CREW = ['Ada', 'Berit', 'Chidi'];
  beforeEach(async () => {
    for (const name of CREW) await callFromPage(page, 'athletes.save', { athlete: exampleAthlete({ name }) });
  });

  it('are ticked and archived in one go, and each comes back from the one place for all', async () => {
    await goTo(page, '#/athletes');
    await soon(names).toEqual(CREW);
    for (const name of ['Ada', 'Chidi']) {
      await page.getByRole('checkbox', { name: english.say('list.select.of', { name }) }).check();
    }
    await page.getByText(english.say('list.selected', { count: 2 })).waitFor();
    await button('Archive').first().click();
    await soon(names).toEqual(['Berit']);
    await goTo(page, '#/archive');
    const archived = page.locator('.archived');
    await archived.getByRole('button', { name: 'Restore: Ada' }).click();
    await soon(() => archived.locator('tbody th').allTextContents()).toEqual(['Chidi']);
    await goTo(page, '#/athletes');
    await soon(names).toEqual(['Ada', 'Berit']);
  });
});

describe('a table with headings of its own', () => {
  it('has its columns named by hand where no alias is known', async () => {
    const table = 'Squad member,Height,Weight,Side,Length of the foot\nTomé Açoreiro,160,51,right,24.5';
    await goTo(page, '#/athletes/table');
    const chooser = page.waitForEvent('filechooser');
    await button('Choose a CSV file').click();
    const file = { name: 'club.csv', mimeType: 'text/csv', buffer: Buffer.from(table) };
    await (await chooser).setFiles([file]);
    const column = (heading: string) => page.getByLabel(english.say('table.columns.of', { heading }));
    await column('Squad member').selectOption({ label: 'Name' });
    await column('Length of the foot').selectOption({ label: 'Foot length [cm]' });
    await button('Import 1 athlete').click();
    await soon(async () => (await callFromPage(page, 'athletes.list', { search: 'Tomé' })).length).toBe(1);
    const [found] = await callFromPage(page, 'athletes.list', { search: 'Tomé' });
    expect(found!.athlete).toMatchObject({ side: 'right', statureM: 1.6, massKg: 51 });
    expect(found!.athlete.tape).toMatchObject({ footLength: { valueM: 0.245 } });
  });
});

/** An own neutral posture; no form asks for it. */
const neutral = {
  learntOn: '2026-11-02',
  pictures: 2,
  strays: Array<number>(NEUTRAL_TERMS).fill(0.1),
  roots: Array<number>(NEUTRAL_TERMS ** 2).fill(0),
  setAside: false,
};

describe('a page that was open while somebody else changed the same record', () => {
  it('saves what was entered there, and keeps what the other changed', async () => {
    const { id, athlete } = await callFromPage(page, 'athletes.save', {
      athlete: exampleAthlete({ name: 'Changed by two', neutral }),
    });
    await goTo(page, `#/athletes/${id}`);
    const name = page.getByRole('textbox', { name: 'Name', exact: true });
    await name.fill('Renamed here');
    await callFromPage(page, 'athletes.save', { athlete: { ...athlete, massKg: 71.5 } });
    await button(english.say('trial.keep')).click();
    await soon(names).toContain('Renamed here');
    const now = (await callFromPage(page, 'athletes.open', { id })).athlete;
    expect(now).toMatchObject({ name: 'Renamed here', massKg: 71.5, neutral });
  });

  it('leaves a value that both changed to be decided, and says so at once', async () => {
    const paddle = inventedPaddle('Changed by two');
    const { id } = await callFromPage(page, 'paddles.save', { paddle });
    await goTo(page, `#/paddles/${id}`);
    const note = page.getByRole('textbox', { name: english.say('paddles.note'), exact: true });
    await note.fill('for Ada');
    await callFromPage(page, 'paddles.save', { paddle: { ...paddle, id, note: 'for Bo' } });
    await button(english.say('trial.keep')).click();
    await page.getByRole('link', { name: 'To decide: Changed by two' }).click();
    const section = page.getByRole('region', { name: english.say('conflicts.title') });
    await section.getByText('for Ada', { exact: true }).waitFor();
    await section.getByRole('button', { name: 'Use for Bo' }).click();
    await section.getByText(english.say('conflicts.none')).waitFor();
    expect((await callFromPage(page, 'paddles.open', { id })).paddle.note).toBe('for Bo');
    await goTo(page, '#/paddles');
    await soon(names).toContain('Changed by two');
    expect(await page.getByRole('link', { name: /^To decide/ }).count()).toBe(0);
  });
});

describe('a trial that is open while somebody else changes it', () => {
  it('has what both saw, and the notes of both to decide', async () => {
    const fit = { ...exampleFit(), name: 'Tried by two' };
    const { id: fitId } = await callFromPage(page, 'fits.create', { fit });
    const revision = await callFromPage(page, 'revisions.save', { fitId, fit, name: 'First', reason: '' });
    const tried = { revisionId: revision.id, trial: { seat: 0, heldOn: '2026-03-04', notes: 'calm' } };
    const seen = [{ kind: 'boat', sign: 'tippy', strength: 2 }] as const;
    const { id, trial } = await callFromPage(page, 'trials.save', {
      ...tried,
      trial: { ...tried.trial, observations: [] },
    });
    await goTo(page, `#/fits/${fitId}/trial/${id}`);
    const notes = page.getByRole('textbox', { name: english.say('trial.notes'), exact: true });
    await notes.fill('mine');
    await callFromPage(page, 'trials.save', {
      id,
      ...tried,
      trial: { ...trial, observations: [...seen], notes: 'theirs' },
    });
    await button(english.say('trial.keep')).click();
    await page.getByRole('link', { name: /^To decide: / }).waitFor();
    const [now] = await callFromPage(page, 'trials.list', { fitId });
    expect(now!.trial).toMatchObject({ notes: 'mine', observations: seen });
    const asked = (await callFromPage(page, 'conflicts.list', {})).filter((one) => one.id === id);
    expect(asked.map(({ path }) => path)).toEqual(['notes']);
    await callFromPage(page, 'conflicts.decide', { kind: 'trial', id, path: 'notes', value: '"theirs"' });
  });
});

describe('entries that were left unfinished', () => {
  it('are there again, beside what somebody else changed meanwhile', async () => {
    const { id, athlete } = await callFromPage(page, 'athletes.save', {
      athlete: exampleAthlete({ name: 'Left open' }),
    });
    await goTo(page, `#/athletes/${id}`);
    await page.getByRole('textbox', { name: 'Name', exact: true }).fill('Left unfinished');
    await goTo(page, '#/help');
    await page.getByRole('heading', { level: 1, name: 'Help' }).waitFor();
    await callFromPage(page, 'athletes.save', { athlete: { ...athlete, massKg: 72.5 } });
    await page.goBack();
    const name = page.getByRole('textbox', { name: 'Name', exact: true });
    await soon(() => name.inputValue()).toBe('Left unfinished');
    await button(english.say('trial.keep')).click();
    await soon(names).toContain('Left unfinished');
    const now = (await callFromPage(page, 'athletes.open', { id })).athlete;
    expect(now).toMatchObject({ name: 'Left unfinished', massKg: 72.5 });
  });

  it('leave a value to be decided that somebody else changed meanwhile too, and keep his other tape measures', async () => {
    const tape = { footLength: { valueM: 0.25 } };
    const { id, athlete } = await callFromPage(page, 'athletes.save', {
      athlete: exampleAthlete({ name: 'Left to decide', massKg: 70, tape }),
    });
    await goTo(page, `#/athletes/${id}`);
    const mass = page.getByRole('spinbutton', { name: english.say('athlete.mass') });
    const seat = page.getByRole('spinbutton', { name: english.say('tape.sittingHeight.name') });
    await mass.fill('66');
    await seat.fill('90');
    await seat.press('Tab');
    await goTo(page, '#/help');
    await page.getByRole('heading', { level: 1, name: 'Help' }).waitFor();
    await callFromPage(page, 'athletes.save', {
      athlete: { ...athlete, massKg: 72, tape: { footLength: { valueM: 0.26 } } },
    });
    await page.goBack();
    await soon(() => mass.inputValue()).toContain('66');
    await button(english.say('trial.keep')).click();
    await page.getByRole('link', { name: 'To decide: Left to decide' }).waitFor();
    const now = (await callFromPage(page, 'athletes.open', { id })).athlete;
    expect(now.massKg).toBe(66);
    expect(now.tape).toMatchObject({ footLength: { valueM: 0.26 }, sittingHeight: { valueM: 0.9 } });
    const asked = (await callFromPage(page, 'conflicts.list', {})).filter((one) => one.id === id);
    expect(asked.map(({ path, values }) => [path, values.map(({ value }) => value)])).toEqual([
      ['massKg', ['66', '72']],
    ]);
  });
});

describe('more things found than are shown', () => {
  beforeAll(async () => {
    for (let i = 0; i < 40; i++)
      await callFromPage(page, 'paddles.save', { paddle: inventedPaddle(`Quill ${i}`) });
  });
  const more = english.say('find.more');

  it('are shown by the keyboard alone in the finder', async () => {
    await goTo(page, '#/help');
    await page.keyboard.press('Control+.');
    await page.keyboard.type('quill');
    const names = () => page.getByRole('option').locator('span:first-child').allTextContents();
    const chosen = () => page.locator('[role=option][aria-selected=true]').textContent();
    await soon(async () => (await names()).length).toBe(9);
    expect((await names()).at(-1)).toBe(more);
    await page.keyboard.press('ArrowUp');
    await soon(chosen).toBe(more);
    await page.keyboard.press('Enter');
    await soon(async () => (await names()).length).toBe(33);
    expect(await chosen()).toContain('Quill');
    await page.keyboard.type(' 39');
    await soon(names).toEqual(['Quill 39']);
    await page.keyboard.press('Escape');
  });

  it('are shown by a press where the program opens, and counted once all are there', async () => {
    await goTo(page, '#/');
    await page.getByLabel(english.say('find.label')).fill('quill');
    const found = page.locator('.found-list li');
    await soon(() => found.count()).toBe(24);
    expect(await page.getByText(english.say('find.count', { count: 24 })).count()).toBe(0);
    await button(more).click();
    await page.getByText(english.say('find.count', { count: 40 })).waitFor();
    expect(await found.count()).toBe(40);
    expect(await button(more).count()).toBe(0);
  });
});

describe('unfinished entries of an athlete who is erased', () => {
  const kept = () =>
    page.evaluate(() =>
      Object.entries<string>({ ...localStorage }).map(([place, text]) => `${place} ${text}`),
    );
  const leftOpen = async (name: string) => {
    const { id } = await callFromPage(page, 'athletes.save', { athlete: exampleAthlete({ name }) });
    await goTo(page, `#/athletes/${id}`);
    await page.getByRole('textbox', { name: 'Name', exact: true }).fill(`${name} too`);
    await soon(async () => (await kept()).some((text) => text.includes(id))).toBe(true);
    return id;
  };

  it('go with the athlete, those of others stay', async () => {
    const [stays, goes] = [await leftOpen('Stays Unfinished'), await leftOpen('Goes Unfinished')];
    await page.getByRole('button', { name: english.say('erase.begin') }).click();
    await page.getByLabel(/^Type the name/).fill('Goes Unfinished');
    await page.getByRole('button', { name: 'Erase', exact: true }).click();
    await page.getByRole('link', { name: english.say('erase.back') }).waitFor();
    expect((await kept()).filter((text) => text.includes(goes))).toEqual([]);
    expect((await kept()).filter((text) => text.includes(stays))).toHaveLength(1);
  });

  it('go at the next start where the athlete was erased elsewhere', async () => {
    const id = await leftOpen('Elsewhere Unfinished');
    await callFromPage(page, 'athletes.erase', { id, name: 'Elsewhere Unfinished' });
    await page.goto(await program.freshAddress());
    await soon(async () => (await kept()).filter((text) => text.includes(id))).toEqual([]);
    expect((await kept()).filter((text) => text.includes('Stays Unfinished'))).toHaveLength(1);
  });
});

describe('a page whose calls fail', () => {
  const refuse = (call: string) => (route: Route) =>
    route.request().postData()?.includes(call) ? route.abort() : route.fallback();
  const gone = english.say('error.gone', { saved: english.say('error.saved') });
  const box = () => page.locator('.error-box');

  it('says so where it is seen, however far down the button is', async () => {
    for (let i = 0; i < 30; i++) {
      const { id } = await callFromPage(page, 'paddles.save', { paddle: inventedPaddle(`Old ${i}`) });
      await callFromPage(page, 'paddles.archive', { id });
    }
    await goTo(page, '#/archive');
    const restore = page.getByRole('button', { name: 'Restore: Old 29' });
    await restore.scrollIntoViewIfNeeded();
    const refused = refuse('paddles.restore');
    await page.route('**/call', refused);
    await restore.click();
    await soon(() => box().textContent()).toBe(gone);
    await soon(async () => (await box().boundingBox())!.y).toBeGreaterThan(0);
    await page.unroute('**/call', refused);
    await restore.click();
    await soon(() => restore.count()).toBe(0);
  });

  it('does not call archived records none', async () => {
    await goTo(page, '#/boats');
    const refused = refuse('"archived":true');
    await page.route('**/call', refused);
    await goTo(page, '#/archive');
    await soon(() => box().textContent()).toContain(gone);
    expect(await page.getByText(english.say('list.archived.none')).count()).toBe(0);
    await page.unroute('**/call', refused);
    for (const _ of ['fits', 'athletes', 'boats', 'paddles'])
      await button(english.say('error.retry')).click();
    await page.getByRole('button', { name: 'Restore: Old 0' }).waitFor();
  });
});

it('a paddle that is gone is said to be gone', async () => {
  await goTo(page, '#/paddles/00000000-0000-4000-8000-000000000000');
  await page.getByText(english.say('problem.not-found', { what: 'paddle' })).waitFor();
});

it('a name without a gap breaks: what can be done with its row stays in sight', async () => {
  const name = 'W'.repeat(120);
  await callFromPage(page, 'paddles.save', { paddle: inventedPaddle(name, { note: name }) });
  await goTo(page, '#/paddles');
  const archive = page.getByRole('button', { name: `Archive: ${name}` });
  await archive.waitFor();
  const { x, width } = (await archive.boundingBox())!;
  expect(x + width).toBeLessThanOrEqual(1280);
});

it('two athletes, and two boats, of one name are told apart where one is chosen', async () => {
  for (const bornOn of ['2001-02-03', '2006-05-04'])
    await callFromPage(page, 'athletes.save', { athlete: exampleAthlete({ name: 'Namesake', bornOn }) });
  for (const massKg of [14, 16.5])
    await callFromPage(page, 'boats.save', { boat: inventedBoat('Sister', { massKg }) });
  await goTo(page, '#/fits/new');
  const offered = async (label: string, name: string) => {
    const list = page.getByLabel(label, { exact: true });
    await list.waitFor();
    return list
      .locator('option', { hasText: name })
      .allTextContents()
      .then((texts) => texts.toSorted());
  };
  const boats = await offered('Boat', 'Sister');
  expect(boats).toEqual([expect.stringMatching(/14.0.kg/), expect.stringMatching(/16.5.kg/)]);
  await page.getByLabel('Boat', { exact: true }).selectOption({ label: boats[1]! });
  const athletes = await offered('Athlete', 'Namesake');
  expect(athletes).toEqual([expect.stringContaining('2001'), expect.stringContaining('2006')]);
  // A name that nobody shares stands alone.
  expect(await offered('Athlete', 'Berit')).toEqual(['Berit']);
});
