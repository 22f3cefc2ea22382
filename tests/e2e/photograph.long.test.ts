import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Fit } from '../../core/document/fit-schema.ts';
import { inventedJpeg } from '../app/invented.ts';
import { barriersInBothThemes } from './barriers.ts';
import { type RunningProgram, startProgram } from './harness.ts';
import { detailAtHead, filmOfASpot, leaningMarks, REAL_PERSON, turnedJpeg } from './photographed.ts';
import { callFromPage, goTo, settled, soon } from './screens.ts';

/** The trunk of the athlete in the synthetic picture leans this much farther forward than the model would have it, degrees. */
const LEAN_DEG = 24;

let program: RunningProgram;
let page: Page;
let fitId: string;
let fit: Fit;
/** Addresses that the page asked for, other than this program's own. */
const abroad: string[] = [];

beforeAll(async () => {
  program = await startProgram();
  page = await program.openBrowser({ viewport: { width: 1280, height: 800 } });
  page.on('request', (request) => {
    const url = request.url();
    if (!url.startsWith(`${program.origin}/`) && !/^(data|blob):/.test(url)) abroad.push(url);
  });
  await callFromPage(page, 'demo.install', {});
  const fits = await callFromPage(page, 'fits.list', {});
  for (const { id } of fits) {
    const opened = await callFromPage(page, 'fits.open', { id });
    if (opened.fit.seats.length > 1 || !opened.fit.seats[0]!.athlete?.id) continue;
    [fitId, fit] = [id, opened.fit];
  }
  await goTo(page, `#/fits/${fitId}/photograph`);
  await page.getByRole('button', { name: 'Choose pictures or a video' }).waitFor();
});

afterAll(() => program.dispose());

type Chosen = string | { name: string; mimeType: string; buffer: Buffer };

async function choose(...files: Chosen[]): Promise<void> {
  const chooser = page.waitForEvent('filechooser');
  await page.getByRole('button', { name: 'Choose pictures or a video' }).click();
  await (await chooser).setFiles(files as never);
}

/** Bytes of a picture as the store has it. */
const storedBytes = async (id: string) =>
  Buffer.from((await callFromPage(page, 'photos.open', { id })).data, 'base64');

const studies = async () => {
  const athleteId = fit.seats[0]!.athlete!.id!;
  return callFromPage(page, 'photos.ofAthlete', { athleteId });
};

/** How much neighbouring pixels differ in the middle of the head of the first study's picture, in a shown picture. */
const detailAtTheHead = async (source: string | null) =>
  detailAtHead(page, source!, (await studies())[0]!.study!);

describe('a photograph, in a real browser', () => {
  it('has joints proposed on this computer for a real person, as marks to be looked at', async () => {
    await choose(REAL_PERSON);
    await page.locator('.photograph-stage image').first().waitFor();
    await page.getByRole('button', { name: 'Propose joints' }).click();
    await page.getByText(/joints proposed/).waitFor();
    await soon(async () => Object.keys((await studies())[0]!.study!.joints).length).toBeGreaterThan(5);
    const { joints, image } = (await studies())[0]!.study!;
    // The person in the middle looks at us: her left is to the right, elbows lie below shoulders.
    const { lowerShoulder, topShoulder, lowerElbow } = joints;
    for (const { u } of [lowerShoulder!, topShoulder!]) {
      expect(u / image.width).toBeGreaterThan(0.35);
      expect(u / image.width).toBeLessThan(0.7);
    }
    expect(lowerElbow!.v).toBeGreaterThan(lowerShoulder!.v);
    expect((await studies())[0]!.study!.confirmed).toBe(false);
  });

  it('has each proposal with how sure it is, until it is looked at', async () => {
    const { joints, proposed } = (await studies())[0]!.study!;
    expect(Object.keys(proposed).toSorted()).toEqual(Object.keys(joints).toSorted());
    for (const share of Object.values(proposed)) expect(share).toBeGreaterThan(0.29);
    const one = Object.keys(proposed).length - 1;
    await page.getByRole('button', { name: 'Right: Top hand', exact: true }).click();
    await page.getByRole('button', { name: `All ${one} right` }).click();
    await soon(async () => (await studies())[0]!.study!.proposed).toEqual({});
    expect((await studies())[0]!.study!.joints).toEqual(joints);
  });

  it('is kept without what the camera wrote into it: maker, day, place', async () => {
    const { readFile } = await import('node:fs/promises');
    for (const word of ['Exif', 'SONY']) {
      expect((await readFile(REAL_PERSON)).includes(word)).toBe(true);
      expect((await storedBytes((await studies())[0]!.id)).includes(word)).toBe(false);
    }
  });

  it('has its marks set by pointer and moved by keys, a pixel at a time', async () => {
    await page.getByRole('button', { name: 'Bow, deck', exact: true }).click();
    const stage = page.getByRole('application');
    await stage.click({ position: { x: 60, y: 80 } });
    await soon(async () => (await studies())[0]!.study!.boat.bow).toBeDefined();
    const before = (await studies())[0]!.study!.boat.bow!;
    await page.getByRole('button', { name: 'Bow, deck', exact: true }).click();
    await stage.focus();
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('Shift+ArrowDown');
    const moved = { u: expect.closeTo(before.u + 1, 5), v: expect.closeTo(before.v + 10, 5) };
    await soon(async () => (await studies())[0]!.study!.boat.bow).toEqual(moved);
  });

  it('sets two marks on one place by a click, moves one of them by dragging, and takes steps back', async () => {
    const stage = page.getByRole('application');
    const board = async () => (await studies())[0]!.study!.boat;
    for (const name of ['Board, front end', 'Board, rear end']) {
      await page.getByRole('button', { name, exact: true }).click();
      await stage.click({ position: { x: 400, y: 300 } });
    }
    await soon(async () => (await board()).boardAft).toBeDefined();
    const { boardFore, boardAft } = await board();
    expect(boardAft).toEqual(boardFore);
    // Another waits to be set: a press that moves is a drag of the one under it.
    await page.getByRole('button', { name: 'Seat’s mark', exact: true }).click();
    const box = (await stage.boundingBox())!;
    await page.mouse.move(box.x + 400, box.y + 300);
    await page.mouse.down();
    await page.mouse.move(box.x + 430, box.y + 320, { steps: 3 });
    await page.mouse.up();
    await soon(async () => (await board()).boardAft!.u).toBeGreaterThan(boardFore!.u + 20);
    expect(await board()).toMatchObject({ boardFore });
    expect((await board()).seatMark).toBeUndefined();
    await page.keyboard.press('Control+z');
    await soon(async () => (await board()).boardAft).toEqual(boardFore);
    await page.getByRole('button', { name: 'Undo', exact: true }).click();
    await soon(async () => (await board()).boardAft).toBeUndefined();
    await page.keyboard.press('Control+Shift+z');
    await soon(async () => (await board()).boardAft).toEqual(boardFore);
  });

  it('is marked by keys alone: on to the next, set, taken away, another in hand', async () => {
    const stage = page.getByRole('application');
    const inHand = () => stage.getAttribute('aria-label');
    await page.getByRole('button', { name: 'Stern, deck', exact: true }).press('Enter');
    await stage.focus();
    await page.keyboard.press('ArrowUp');
    const { width, height } = (await studies())[0]!.study!.image;
    const middle = { u: expect.closeTo(width / 2, 0), v: expect.closeTo(height / 2 - 1, 0) };
    await soon(async () => (await studies())[0]!.study!.boat.stern).toEqual(middle);
    await page.keyboard.press('Enter');
    await soon(inHand).toContain('Seat’s mark');
    await page.keyboard.press('PageUp');
    await soon(inHand).toContain('Stern');
    await page.keyboard.press('Delete');
    await soon(async () => (await studies())[0]!.study!.boat.stern).toBeUndefined();
  });

  it('is marked by a finger, the place under it magnified at the other side', async () => {
    const touched = await program.openBrowser({ hasTouch: true, viewport: { width: 800, height: 1200 } });
    await goTo(touched, `#/fits/${fitId}/photograph`);
    await touched.getByRole('button', { name: 'Stern, deck', exact: true }).tap();
    const stage = touched.getByRole('application');
    await stage.locator('image').first().waitFor();
    await settled(touched);
    await stage.scrollIntoViewIfNeeded();
    const fingers = await touched.context().newCDPSession(touched);
    const touch = async (type: 'touchStart' | 'touchMove' | 'touchEnd', ...shares: number[]) => {
      // What is read from the marks comes later and moves the picture: it is looked for each time.
      const box = (await stage.boundingBox())!;
      const touchPoints = shares.map((share) => ({
        x: box.x + share * box.width,
        y: box.y + 0.5 * box.height,
      }));
      return fingers.send('Input.dispatchTouchEvent', { type, touchPoints });
    };
    const magnifier = touched.locator('.photograph-magnifier');
    await touch('touchStart', 0.2);
    for (let share = 0.22; share < 0.3; share += 0.02) await touch('touchMove', share);
    await touch('touchMove', 0.3);
    await expect.poll(() => magnifier.getAttribute('class')).toContain('on-right');
    const { width, height } = (await studies())[0]!.study!.image;
    await soon(async () => {
      const [left, , size] = (await magnifier.getAttribute('viewBox'))!.split(' ').map(Number);
      return (left! + size! / 2) / width;
    }).toBeCloseTo(0.3, 2);
    await touch('touchEnd');
    const set = { u: expect.closeTo(0.3 * width, -1), v: expect.closeTo(0.5 * height, -1) };
    await soon(async () => (await studies())[0]!.study!.boat.stern).toEqual(set);
    // A finger on a mark takes that one; it moves, and nothing else does.
    await touched.getByRole('button', { name: 'Bow, deck', exact: true }).tap();
    await touch('touchStart', 0.3);
    await touch('touchMove', 0.5);
    await touch('touchMove', 0.7);
    await expect.poll(() => magnifier.getAttribute('class')).toContain('on-left');
    const bow = (await studies())[0]!.study!.boat.bow;
    await touch('touchEnd');
    await soon(async () => (await studies())[0]!.study!.boat.stern!.u / width).toBeCloseTo(0.7, 2);
    expect((await studies())[0]!.study!.boat.bow).toEqual(bow);
    await touched.context().close();
  });

  it('shows plan and seen over the picture, and takes the difference into the fit', async () => {
    const [photo] = await studies();
    const { image, ...study } = photo!.study!;
    const { boat, joints } = leaningMarks(fit, image, LEAN_DEG);
    const ankle = joints.frontAnkle!;
    const frontAnkle = { ...ankle, u: ankle.u + 0.03 * image.width };
    await callFromPage(page, 'photos.study', {
      id: photo!.id,
      study: { ...study, image, boat, joints: { ...joints, frontAnkle } },
    });
    await page.reload();
    await page.getByTestId('plan-figure').waitFor();
    // An ankle far from where all others have it: it is named, and nothing is applied until it is moved or left out.
    const apply = page.getByRole('button', { name: 'Apply to the fit' });
    await page
      .getByText(/^Off the other marks: Front ankle \(\d+\smm\)\. First move or leave out\.$/)
      .waitFor();
    expect(await apply.isDisabled()).toBe(true);
    await page.getByRole('button', { name: 'Leave out' }).click();
    await soon(() => apply.isEnabled()).toBe(true);
    await soon(async () => (await studies())[0]!.study!.joints.frontAnkle).toBeUndefined();
    await page.getByRole('button', { name: 'Undo', exact: true }).click();
    await soon(() => apply.isDisabled()).toBe(true);
    await page.getByRole('button', { name: 'Redo', exact: true }).click();
    await soon(() => apply.isEnabled()).toBe(true);
    expect(await page.getByTestId('plan-figure').locator('path').count()).toBeGreaterThan(20);
    await page.getByText(/^Kneeling hip: \d+°\s±\s\d+° more bent$/).waitFor();
    const row = page.getByRole('row', { name: /^Trunk, forward/ });
    await soon(async () =>
      Number.parseFloat((await row.getByRole('cell').nth(1).textContent()) ?? ''),
    ).toBeGreaterThan(LEAN_DEG - 2);
    expect(await barriersInBothThemes(page, '#content')).toEqual([]);
    await page.getByRole('button', { name: 'Apply to the fit' }).click();
    await soon(
      async () => (await callFromPage(page, 'fits.open', { id: fitId })).fit.seats[0]!.pins.trunkPitchDeg,
    ).toBeCloseTo(LEAN_DEG, -0.5);
    await soon(async () => (await studies())[0]!.study!.confirmed).toBe(true);
    await page.getByRole('button', { name: 'Remember from 1 applied picture' }).click();
    const athleteId = fit.seats[0]!.athlete!.id!;
    const neutral = async () =>
      (await callFromPage(page, 'athletes.open', { id: athleteId })).athlete.neutral;
    await soon(async () => (await neutral())?.pictures).toBe(1);
    await page.getByText('Use in new fits').click();
    await soon(async () => (await neutral())?.setAside).toBe(true);
  });

  it('is opened from the athlete and from a trial as well', async () => {
    await goTo(page, `#/athletes/${fit.seats[0]!.athlete!.id}`);
    await page.getByRole('link', { name: `Photograph for ${fit.name}` }).click();
    await page.locator('.photograph-stage image').first().waitFor();
    await goTo(page, `#/fits/${fitId}/trial/new`);
    await page.getByRole('link', { name: 'Photograph', exact: true }).click();
    await page.locator('.photograph-stage image').first().waitFor();
  });

  it('is shown and printed with the face blurred in its own pixels, unless the coach chooses otherwise', async () => {
    await page.getByText('Show the athlete, face blurred, on screen and page').click();
    await soon(async () => (await studies())[0]!.study!.shown).toBe(true);
    await goTo(page, `#/fits/${fitId}/show`);
    const blurred = page.locator('img[data-face="blurred"]');
    await blurred.waitFor();
    const soft = await detailAtTheHead(await blurred.getAttribute('src'));
    const asked = page.waitForRequest((request) => (request.postData() ?? '').includes('take-home'));
    await page.getByRole('button', { name: 'Athlete’s page (PDF)' }).click();
    const { photographs } = (await asked).postDataJSON().input.wanted;
    expect(photographs).toHaveLength(1);
    expect(`data:image/jpeg;base64,${photographs[0].data}`).toBe(await blurred.getAttribute('src'));
    await goTo(page, `#/fits/${fitId}/photograph`);
    await page.getByText('Show the face too').click();
    await soon(async () => (await studies())[0]!.study!.faceSeen).toBe(true);
    await goTo(page, `#/fits/${fitId}/show`);
    const seen = page.getByRole('img', { name: /^Photograph: ready/ });
    await seen.waitFor();
    const sharp = await detailAtTheHead(await seen.getAttribute('src'));
    expect(soft).toBeLessThan(0.35 * sharp);
    await goTo(page, `#/fits/${fitId}/photograph`);
  });

  it('gives frames of a video, each of its moment, and the rate from its catches', async () => {
    const buffer = Buffer.from(await filmOfASpot(page), 'base64');
    await choose({ name: 'stroke.webm', mimeType: 'video/webm', buffer });
    const video = page.locator('.photograph-film video');
    await video.waitFor();
    for (const at of [0.2, 1.2]) {
      await video.evaluate(
        (film: HTMLVideoElement, time) =>
          new Promise((done) => {
            film.onseeked = done;
            film.currentTime = time;
          }),
        at,
      );
      await page.getByRole('button', { name: 'Catch here' }).click();
    }
    await page.getByText(/^60\s±\s\d+ per minute \(1 stroke\)$/).waitFor();
    const before = (await studies()).length;
    await page.locator('.photograph-film').getByText('exit').click();
    await page.getByRole('button', { name: 'Use this frame' }).click();
    await soon(async () => (await studies()).length).toBe(before + 1);
    expect((await studies()).at(-1)!.study).toMatchObject({
      moment: 'exit',
      image: { width: 160, height: 120 },
    });
    await page.getByRole('button', { name: 'Apply the rate' }).click();
    await soon(
      async () => (await callFromPage(page, 'fits.open', { id: fitId })).fit.seats[0]!.stroke.ratePerMin,
    ).toBe(60);
  });

  it('is turned upright as its camera was held', async () => {
    const before = (await studies()).length;
    await choose({ name: 'turned.jpg', mimeType: 'image/jpeg', buffer: turnedJpeg(inventedJpeg()) });
    await soon(async () => (await studies()).length).toBe(before + 1);
    // It is of the same moment and day as the first: their marks are joined.
    await page.getByText('Join this moment’s pictures').waitFor();
    const turned = (await studies()).at(-1)!;
    expect(turned.study!.image).toEqual({ width: 12, height: 16 });
    expect((await storedBytes(turned.id)).includes('Secretcam')).toBe(false);
  });

  it('keeps the marks of each picture while another is looked at, and a removed one comes back with them', async () => {
    const pictures = page.getByRole('list', { name: 'Pictures' }).getByRole('button');
    const last = async () => (await studies()).at(-1)!.study!;
    await page.getByRole('button', { name: 'Bow, deck', exact: true }).click();
    await page.getByRole('application').click({ position: { x: 50, y: 60 } });
    await soon(async () => (await last()).boat.bow).toBeDefined();
    await pictures.first().click();
    await pictures.last().click();
    await soon(() => page.locator('.photograph-mark').count()).toBe(1);
    const before = (await studies()).length;
    await page.getByRole('button', { name: 'Remove picture' }).click();
    await soon(async () => (await studies()).length).toBe(before - 1);
    await page.getByRole('button', { name: 'Restore' }).click();
    await soon(async () => (await studies()).length).toBe(before);
    expect((await last()).boat.bow).toBeDefined();
  });

  it.each(['drop', 'paste'] as const)('comes in by %s, as PNG or WebP too', async (way) => {
    const before = (await studies()).length;
    await page.evaluate(
      async ([how, selector]) => {
        const canvas = document.createElement('canvas');
        canvas.width = 30;
        canvas.height = 20;
        const type = how === 'drop' ? 'image/webp' : 'image/png';
        const blob = await new Promise<Blob | null>((done) => canvas.toBlob(done, type));
        const data = new DataTransfer();
        data.items.add(new File([blob!], 'picture', { type }));
        const event =
          how === 'drop'
            ? new DragEvent('drop', { dataTransfer: data, bubbles: true, cancelable: true })
            : new ClipboardEvent('paste', { clipboardData: data, bubbles: true });
        document.querySelector(how === 'drop' ? selector : 'body')!.dispatchEvent(event);
      },
      [way, '.photograph-drop'] as const,
    );
    await soon(async () => (await studies()).length).toBe(before + 1);
    expect((await studies()).at(-1)!.study!.image).toEqual({ width: 30, height: 20 });
  });

  it('has asked nobody outside this computer for anything', () => {
    expect(abroad).toEqual([]);
  });

  it('says no to HEIC plainly', async () => {
    await choose({ name: 'IMG_1.HEIC', mimeType: 'image/heic', buffer: Buffer.from('ftypheic') });
    await page.getByText(/is HEIC/).waitFor();
  });

  it('names each file that is no picture, and takes the others', async () => {
    const before = (await studies()).length;
    const none = (name: string) => ({ name, mimeType: 'image/jpeg', buffer: Buffer.from('none') });
    await choose(none('one.jpg'), none('two.jpg'), {
      name: 'three.jpg',
      mimeType: 'image/jpeg',
      buffer: inventedJpeg(),
    });
    await soon(async () => (await studies()).length).toBe(before + 1);
    await page.getByText(/one\.jpg: .*two\.jpg: /).waitFor();
  });
});
