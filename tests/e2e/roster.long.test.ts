import { text as wholeText } from 'node:stream/consumers';
import Papa from 'papaparse';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { AthleteRecord, BoatRecord } from '../../app/contract/records.ts';
import { repeatedReading } from '../../core/body/repeated-reading.ts';
import { today } from '../../renderer/language/dates.ts';
import { barriersInBothThemes } from './barriers.ts';
import { type RunningProgram, startProgram } from './harness.ts';
import { callFromPage, enter, goTo, measure, settled, soon, textOf } from './screens.ts';
import { storyOf } from './story.ts';

let program: RunningProgram;
let page: Page;

const athleteNamed = async (search: string): Promise<AthleteRecord> =>
  (await callFromPage(page, 'athletes.list', { search }))[0]!;
const boatOfClass = async (boatClass: string): Promise<BoatRecord> =>
  (await callFromPage(page, 'boats.list', {})).find(({ boat }) => boat.boatClass === boatClass)!;
const names = () => page.locator('table.roster tbody th').allTextContents();

/** Lets the person choose these files when the button asks for them. */
async function chooseFiles(button: string, files: { name: string; mimeType: string; buffer: Buffer }[]) {
  const chooser = page.waitForEvent('filechooser');
  await page.getByRole('button', { name: button, exact: true }).click();
  await (await chooser).setFiles(files);
}

/** The page as it stands has no serious or critical barrier, in either theme. */
async function expectNoBarriers(): Promise<void> {
  expect(await barriersInBothThemes(page)).toEqual([]);
}

beforeAll(async () => {
  program = await startProgram();
  page = await program.openBrowser({ viewport: { width: 1280, height: 800 } });
  await callFromPage(page, 'demo.install', {});
  await goTo(page, '#/athletes');
  await page.locator('table.roster').waitFor();
});
afterAll(() => program.dispose());

describe('the roster', () => {
  it('finds by typing anywhere on the page, whatever the accents', async () => {
    await page.keyboard.type('legow');
    expect(await page.getByRole('searchbox', { name: 'Find' }).inputValue()).toBe('legow');
    await soon(names).toEqual(['Zofia Łęgowianka']);
    await page.getByRole('searchbox', { name: 'Find' }).fill('');
    await soon(async () => (await names()).length).toBe(6);
  });

  it('sorts by a heading, there and back', async () => {
    const statures = async () =>
      (await page.locator('tbody td:nth-child(4)').allTextContents()).map(Number.parseFloat);
    await page.getByRole('button', { name: 'Stature' }).click();
    const up = await statures();
    expect(up).toEqual(up.toSorted((a, b) => a - b));
    expect(await page.getByRole('columnheader', { name: 'Stature' }).getAttribute('aria-sort')).toBe(
      'ascending',
    );
    await page.getByRole('button', { name: 'Stature' }).click();
    expect(await statures()).toEqual(up.toReversed());
  });

  it('sets aside and brings back', async () => {
    await page.getByRole('button', { name: 'Archive: Zofia Łęgowianka' }).click();
    await soon(async () => (await names()).length).toBe(5);
    await page.getByRole('button', { name: 'Show archived' }).click();
    await page.getByRole('button', { name: 'Restore: Zofia Łęgowianka' }).click();
    await page.getByRole('button', { name: 'Hide archived' }).click();
    await soon(async () => (await names()).length).toBe(6);
    await expectNoBarriers();
  });
});

storyOf('a guided measuring session', ({ step }) => {
  let before: AthleteRecord;

  step('questions a body that shot up, and does not count it', async () => {
    before = await athleteNamed('Νεφέλη');
    await goTo(page, `#/athletes/${before.id}`);
    await page.getByRole('link', { name: 'Measure', exact: true }).click();
    await page.getByRole('heading', { name: 'Stature and mass' }).waitFor();
    await enter(page, 'Stature', '182');
    await page.getByRole('alert').filter({ hasText: 'Measure again' }).waitFor();
    await enter(page, 'Stature', '152,5');
    await enter(page, 'Body mass', '45');
    await soon(() => page.locator('.odd-value').count()).toBe(0);
    expect(await page.getByRole('img', { name: /^Floor to top of head/ }).count()).toBe(1);
    await expectNoBarriers();
  });

  step('guards a tape against a slip of the pen by the survey’s range, until it is put right', async () => {
    await page.getByRole('button', { name: 'Next: Sitting height' }).click();
    expect(await page.getByRole('img', { name: /^Sitting height: from the seat to the top/ }).count()).toBe(
      1,
    );
    expect(await page.evaluate(() => document.activeElement?.getAttribute('role'))).toBe('spinbutton');
    await enter(page, 'First reading', '97');
    const question = page.locator('.odd-value');
    await question.waitFor();
    expect(await textOf(question)).toMatch(/97\.0 cm is unusual: of 100 people 152\.5 cm tall, 98 measure/);
    await expectNoBarriers();
    await enter(page, 'Second reading', '79.4');
    await enter(page, 'First reading', '79');
    await soon(() => question.count()).toBe(0);
    expect(await textOf(page.locator('.measure-step').getByRole('status'))).toMatch(
      /79\.2 cm ± \d mm: 2 readings, 4 mm apart/,
    );
  });

  step(
    'keeps an unusual reading when somebody says so, and asks for a third when two are far apart',
    async () => {
      await page.getByRole('button', { name: /^Foot length/ }).click();
      await enter(page, 'First reading', '27.6');
      await page.getByRole('button', { name: 'Use it anyway' }).click();
      await soon(() => page.locator('.odd-value').count()).toBe(0);
      await page.getByRole('button', { name: /^Arm span/ }).click();
      await enter(page, 'First reading', '151');
      await enter(page, 'Second reading', '153');
      // Tab goes on to the entry that the second reading has called for, not past it.
      const third = measure(page, 'Third reading');
      await soon(() => third.evaluate((entry) => entry === document.activeElement)).toBe(true);
      await enter(page, 'Third reading', '152.6');
      await soon(async () => textOf(page.locator('.measure-step').getByRole('status'))).toContain('152.6 cm');
    },
  );

  step('is there again after the page was closed', async () => {
    await page.reload();
    await page.getByRole('button', { name: /^Arm span/ }).click();
    expect(await measure(page, 'Third reading').inputValue()).toContain('152.6');
  });

  step('is kept with spread and day; the earlier body stays in the history', async () => {
    await page.getByRole('button', { name: 'Check and save', exact: true }).click();
    await page.getByRole('row', { name: /Sitting height/ }).waitFor();
    await expectNoBarriers();
    await page.getByRole('button', { name: 'Save measurements' }).click();
    await page.getByRole('heading', { name: 'Measured so far' }).waitFor();
    const { athlete } = await athleteNamed('Νεφέλη');
    expect(athlete).toMatchObject({ statureM: 1.525, massKg: 45, measuredOn: today() });
    const { sittingHeight, footLength, armSpan, kneeHeightSitting } = athlete.tape;
    const read = repeatedReading('sittingHeight', [0.79, 0.794])!;
    expect(sittingHeight).toMatchObject({ valueM: 0.792, takenOn: today() });
    expect(sittingHeight?.sdM).toBeCloseTo(read.sdM, 4);
    expect([footLength?.valueM, armSpan?.valueM]).toEqual([0.276, 1.526]);
    expect(kneeHeightSitting).toEqual(before.athlete.tape.kneeHeightSitting);
    const history = await callFromPage(page, 'measurings.list', { athleteId: before.id });
    expect(history.map(({ statureM }) => statureM)).toEqual([1.44, 1.47, 1.5, 1.52, 1.525]);
    await page.getByRole('img', { name: /^Stature: 5 measurements/ }).waitFor();
  });

  step('takes in an old note, takes it away, and brings it back', async () => {
    await page.getByText('Add earlier measurements').click();
    const form = page.locator('details', { hasText: 'Add earlier measurements' });
    await form.getByLabel('Day').fill('2025-09-20');
    await form.getByLabel('Stature').fill('144');
    await form.getByRole('button', { name: 'Save', exact: true }).click();
    await page.getByRole('img', { name: /^Stature: 6 measurements/ }).waitFor();
    await page.getByText('All measurements').click();
    await page.getByRole('button', { name: /^Remove: 20 Sept? 2025/ }).click();
    await page.getByRole('button', { name: 'Restore' }).click();
    await page.getByRole('img', { name: /^Stature: 6 measurements/ }).waitFor();
    await expectNoBarriers();
  });
});

describe('somebody new', () => {
  it('is put in and measured in one go', async () => {
    await goTo(page, '#/athletes/new');
    await page.getByLabel('Name').fill('Nova Measured');
    await page.getByText('left', { exact: true }).click();
    await enter(page, 'Stature', '160');
    await enter(page, 'Body mass', '52');
    await page.getByRole('button', { name: 'Save, then measure' }).click();
    await page.getByRole('heading', { level: 1, name: 'Measure Nova Measured' }).waitFor();
    expect(await measure(page, 'Stature').inputValue()).toContain('160.0');
    await page.getByRole('button', { name: 'Next: Sitting height' }).click();
    await enter(page, 'First reading', '84');
    await page.getByRole('button', { name: 'Check and save', exact: true }).click();
    await page.getByRole('button', { name: 'Save measurements' }).click();
    await page.getByRole('heading', { name: 'Measured so far' }).waitFor();
    const { id, athlete } = await athleteNamed('Nova');
    expect(athlete).toMatchObject({ statureM: 1.6, massKg: 52, tape: { sittingHeight: { valueM: 0.84 } } });
    expect(await callFromPage(page, 'measurings.list', { athleteId: id })).toHaveLength(1);
    await callFromPage(page, 'athletes.erase', { id, name: 'Nova Measured' });
  });
});

describe('a minor', () => {
  it('without a noted consent is named on the page and before the position is shown', async () => {
    const { id, athlete } = await athleteNamed('Νεφέλη');
    const { consent, ...without } = athlete;
    expect(consent?.bodyData?.by).toBe('A parent');
    await callFromPage(page, 'athletes.save', { athlete: { ...without, id } });
    await goTo(page, '#/athletes');
    await goTo(page, `#/athletes/${id}`);
    const note = page.getByRole('note').filter({ hasText: 'No consent noted' });
    expect(await textOf(note)).toContain(`for ${athlete.name}, a minor: body data and photographs`);
    const [fit] = await callFromPage(page, 'athletes.fits', { id });
    for (const subpage of ['show', 'set-out']) {
      await goTo(page, `#/fits/${fit!.id}/${subpage}`);
      await note.waitFor();
      expect(await textOf(note)).toContain('body data.');
    }
    await note.getByRole('link', { name: 'Note consent' }).click();
    const given = page.getByRole('group', { name: 'Body data are saved, shown' });
    await given.getByLabel('Given by').fill('A guardian');
    await page.getByRole('button', { name: 'Save', exact: true }).click();
    await given.getByText('Needed: who, and the day.').waitFor();
    await given.getByLabel('On').fill('2026-09-28');
    await page.getByRole('button', { name: 'Save', exact: true }).click();
    await page.locator('table.roster').waitFor();
    await goTo(page, `#/fits/${fit!.id}/set-out`);
    await page.getByRole('heading', { level: 1 }).waitFor();
    await settled(page);
    expect(await note.count()).toBe(0);
  });
});

storyOf('a table of athletes', ({ step }) => {
  const TABLE = [
    'Name;Side;Stature [cm];Mass [kg];Foot length [mm];Shoe size;Born on',
    'Bohuš Křivolák;;;85,5;;44;',
    'New Paddler;left;17.2;61;251;38;3/4/2009',
    'Another New;up;168;58;;39;2009-04-03',
    'Tomé Açoreiro;right;160;51;;40;2011-04-17',
    'Sound Newcomer;r;171;62;352;41;',
  ].join('\r\n');
  const csv = (text: string, name = 'club.csv') => [
    { name, mimeType: 'text/csv', buffer: Buffer.from(text) },
  ];

  step('that is none is refused, and nothing changes', async () => {
    await goTo(page, '#/athletes/table');
    await chooseFiles('Choose a CSV file', csv('Mass;Side\r\n60;left', 'no-names.csv'));
    await page.getByRole('alert').filter({ hasText: 'no-names.csv has no column “Name”' }).waitFor();
    expect(await callFromPage(page, 'athletes.list', {})).toHaveLength(6);
  });

  step('names each bad cell: row, column, what is wrong, what is allowed', async () => {
    await chooseFiles('Choose a CSV file', csv(TABLE));
    const bad = page.locator('.table-bad tbody tr');
    await soon(() => bad.count()).toBe(3);
    const told = (await bad.allTextContents()).map((text) => text.replaceAll('\u{202f}', ' '));
    expect(told[0]).toMatch(/^3Stature.*17\.2 cm is not between 80\.0 cm and 260\.0 cm/);
    expect(told[1]).toMatch(/^3Born on.*“3\/4\/2009”: day or month first\?/);
    expect(told[2]).toMatch(/^4Side.*“up” is not known; allowed: left, right/);
    expect(await page.getByText('Columns left out').textContent()).toContain('“Shoe size”');
    await page.getByRole('row', { name: /Bohuš Křivolák changes: .*mass/i }).waitFor();
    await page.getByRole('row', { name: /Tomé Açoreiro no change/ }).waitFor();
    const odd = page.getByRole('row', { name: /Sound Newcomer new/ });
    expect(await textOf(odd)).toMatch(/unusual: Foot length 35\.2 cm; 98 of 100 measure/);
    await expectNoBarriers();
  });

  step('is taken in for the rows that are right; the others wait with their cells', async () => {
    const was = await athleteNamed('Bohuš');
    await page.getByRole('button', { name: 'Import 2 athletes' }).click();
    await page.getByText(/^2 athletes imported\./).waitFor();
    const { athlete } = await athleteNamed('Bohuš');
    expect(athlete).toEqual({ ...was.athlete, massKg: 85.5, measuredOn: today() });
    expect((await athleteNamed('Sound Newcomer')).athlete).toMatchObject({ side: 'right', statureM: 1.71 });
    expect(await callFromPage(page, 'athletes.list', { search: 'Another New' })).toEqual([]);
    await soon(() => page.locator('.table-bad tbody tr').count()).toBe(3);
  });

  step('has its cells put right on the spot', async () => {
    for (const [label, text] of [
      ['Row 2, Stature', '172'],
      ['Row 2, Born on', '2009-04-03'],
      ['Row 3, Side', 'right'],
    ] as const) {
      await page.getByLabel(label).fill(text);
      await page.getByLabel(label).press('Enter');
      await soon(() => page.getByLabel(label).count()).toBe(0);
    }
    await page.getByRole('button', { name: 'Import 2 athletes' }).click();
    await page.getByText(/^2 athletes imported\./).waitFor();
    const { athlete } = await athleteNamed('New Paddler');
    expect(athlete).toMatchObject({ statureM: 1.72, bornOn: '2009-04-03' });
    expect(athlete.tape.footLength).toEqual({ valueM: 0.251, takenOn: today() });
  });

  step('is handed out, and taken in again as the same', async () => {
    const download = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Export athletes' }).click();
    const file = await download;
    expect(file.suggestedFilename()).toBe(`Athletes ${today()}.csv`);
    const text = await wholeText(await file.createReadStream());
    const { data } = Papa.parse<string[]>(text.replace('\u{feff}', ''));
    expect(data).toHaveLength(10);
    expect(data[0]?.slice(0, 5)).toEqual(['Name', 'Side', 'Sex', 'Born on', 'Stature [cm]']);
    await chooseFiles('Choose a CSV file', csv(text));
    await page.getByText('Nothing new in this table.').waitFor();
    expect(await page.getByRole('row', { name: /no change/ }).count()).toBe(9);
  });
});

storyOf('a boat', ({ step }) => {
  /** A picture of 2400 by 1500, with something drawn on it. */
  const picture = async () => {
    const url = await page.evaluate(() => {
      const canvas = Object.assign(document.createElement('canvas'), { width: 2400, height: 1500 });
      canvas.getContext('2d')!.fillRect(100, 100, 700, 50);
      return canvas.toDataURL();
    });
    return { name: 'bow.png', mimeType: 'image/png', buffer: Buffer.from(url.split(',')[1]!, 'base64') };
  };

  step('is held against the dated limits of its class', async () => {
    const { id, boat } = await boatOfClass('C1');
    await callFromPage(page, 'boats.save', { boat: { ...boat, id, massKg: 13.8 } });
    await goTo(page, `#/boats/${id}`);
    await page.getByRole('row', { name: /^Mass .*change: 0\.2\skg under/ }).waitFor();
    await page.getByRole('row', { name: /^Length overall .*good, on the limit/ }).waitFor();
    await page.getByText(/^C1 limits, .*: 2025, not from the rule book itself; check it/).waitFor();
    await page.getByRole('link', { name: 'Ylva in No. 4' }).waitFor();
  });

  step('keeps photographs, made smaller, with their captions; removed ones come back', async () => {
    const text = { name: 'notes.png', mimeType: 'image/png', buffer: Buffer.from('no picture at all') };
    await chooseFiles('Add a photograph', [await picture(), text]);
    await page.getByRole('alert').filter({ hasText: 'notes.png: choose JPEG' }).waitFor();
    const shown = page.getByRole('img', { name: 'Photograph 1' });
    await soon(() => shown.evaluate((img: HTMLImageElement) => img.naturalWidth)).toBe(2048);
    await page.getByLabel('Caption of photograph 1').fill('The bow');
    await page.getByLabel('Caption of photograph 1').press('Tab');
    const { id } = await boatOfClass('C1');
    const kept = async () =>
      (await callFromPage(page, 'photos.list', { boatId: id })).map(({ caption, mime }) => [caption, mime]);
    await soon(kept).toEqual([['The bow', 'image/jpeg']]);
    await page.getByRole('button', { name: 'Remove photograph 1' }).click();
    await soon(kept).toEqual([]);
    await page.getByRole('button', { name: 'Restore' }).click();
    await soon(kept).toEqual([['The bow', 'image/jpeg']]);
  });

  step('keeps profile, rails and stock, and says which figure is missing', async () => {
    await page.getByRole('button', { name: 'Add a point' }).click();
    await page.getByRole('button', { name: 'Add a point' }).click();
    const points = page.getByRole('group', { name: /^Point/ });
    for (const [i, [fromStern, height]] of [
      ['150', '5'],
      ['370', '3'],
    ].entries()) {
      await points.nth(i).getByLabel('From stern').fill(fromStern!);
      await points.nth(i).getByLabel('Height').fill(height!);
    }
    await page.getByRole('button', { name: 'Add a pad' }).click();
    await page.getByRole('button', { name: 'Save', exact: true }).click();
    await page.getByText('This is needed.').first().waitFor();
    const added = page.locator('.kept-row', { hasText: 'This is needed.' });
    await added.getByLabel('Recess bottom’s height').fill('13');
    await added.getByLabel('Name').fill('Middle pad');
    await expectNoBarriers();
    await page.getByRole('button', { name: 'Save', exact: true }).click();
    await soon(async () => (await boatOfClass('C1')).boat.stock?.pads.length).toBe(3);
    const { boat } = await boatOfClass('C1');
    expect(boat.stock?.pads).toMatchObject([{}, {}, { name: 'Middle pad', heightM: 0.13, count: 1 }]);
    expect(boat.floorboard.profile?.map(({ heightM }) => heightM)).toEqual([0.05, 0.03]);
    expect(boat.floorboard.profile?.[0]?.xM).toBeCloseTo(1.5 - 2.6, 6);
  });

  step('lends its stock to a seat on the bench, as one step', async () => {
    const [fit] = await callFromPage(page, 'boats.fits', { id: (await boatOfClass('C1')).id });
    await goTo(page, `#/fits/${fit!.id}`);
    await page.getByLabel('From the stock').selectOption({ label: 'Middle pad' });
    await soon(() => measure(page, 'Knee pad: Height').inputValue()).toMatch(/^13\.0/);
  });

  step('has a band of the athlete’s own kept for every new fit, from the bench', async () => {
    await page.getByRole('tab', { name: 'Values' }).click();
    await page.getByRole('button', { name: /^Front knee/ }).click();
    await page.getByRole('button', { name: 'This athlete’s band' }).click();
    const own = page.locator('.own-band');
    await own.getByLabel('Why').fill('short hamstrings');
    await own.getByRole('button', { name: 'Save band' }).click();
    await own.getByRole('button', { name: 'Also in Ylva Tornqvarn’s new fits' }).click();
    await own.getByText('Also saved for Ylva Tornqvarn.').waitFor();
    const { athlete } = await athleteNamed('Ylva');
    expect(athlete.bands).toMatchObject([{ quantity: 'frontKnee', reason: 'short hamstrings' }]);
  });

  step('is duplicated under a name of its own', async () => {
    const { id, boat } = await boatOfClass('C1');
    await goTo(page, `#/boats/${id}`);
    await page.getByRole('button', { name: 'Duplicate' }).click();
    await page.getByRole('heading', { level: 1, name: `${boat.name} (2)` }).waitFor();
    const [copy] = await callFromPage(page, 'boats.list', { search: '(2)' });
    expect(copy!.id).not.toBe(id);
    expect({ ...copy!.boat, id, name: boat.name }).toEqual({ ...boat, id });
    await page.getByText('No photograph yet.').waitFor();
    await page.getByText('None yet.').waitFor();
  });
});
