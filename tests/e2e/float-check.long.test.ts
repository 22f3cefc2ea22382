import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect } from 'vitest';
import type { Boat } from '../../core/document/boat-schema.ts';
import { waterSchema } from '../../core/document/water-schema.ts';
import { correctHull } from '../../core/hull/correct-hull.ts';
import { hullOfBoat } from '../../core/hull/hull-of-boat.ts';
import { sheerHeight } from '../../core/hull/section-at.ts';
import { shellCentre } from '../../core/hull/shell-centre.ts';
import { floatAtRest } from '../../core/hydrostatics/float-at-rest.ts';
import { waterDensity } from '../../core/hydrostatics/water-density.ts';
import { heightAboveWater } from '../../core/hydrostatics/water-plane.ts';
import { today } from '../../renderer/language/dates.ts';
import { barriersInBothThemes } from './barriers.ts';
import { type RunningProgram, startProgram } from './harness.ts';
import { callFromPage, enter, goTo, soon, textOf } from './screens.ts';
import { storyOf } from './story.ts';

const MARK_M = 2.2;
const LOAD = { massKg: 60, atXM: 0.1 };
/** Height of a known mass above the keel, as the check takes it. */
const LOAD_HEIGHT_M = 0.1;
/** The boat as it would really float: this much fuller than its offsets say. */
const FULLER = 0.06;

/** What is printed on of an A4 page's width, with margins of a centimetre, CSS pixels (96 to an inch). */
const A4_WIDE = Math.floor((190 / 25.4) * 96);

let program: RunningProgram;
let page: Page;

/** Freeboards at bow and stern mark, centimetres to the millimetre, of the boat as really built. */
function freeboards(boat: Boat, loaded: boolean): [string, string] {
  const drawn = hullOfBoat({ ...boat, correction: null });
  const hull = correctHull(drawn, { fullness: FULLER, foreAftFullness: 0 });
  const shell = shellCentre(drawn);
  const masses = [
    { mass: boat.massKg, x: shell.x, y: 0, z: shell.z },
    ...(loaded ? [{ mass: LOAD.massKg, x: LOAD.atXM, y: 0, z: hull.lowestZ + LOAD_HEIGHT_M }] : []),
  ];
  const rest = floatAtRest(hull, { masses, waterDensity: waterDensity(waterSchema.parse({})) });
  if (rest.kind !== 'afloat') throw new Error(rest.kind);
  const read = (x: number) => heightAboveWater({ x, y: 0, z: sheerHeight(hull, x) }, rest);
  return [MARK_M, -MARK_M].map((x) => (100 * read(x)).toFixed(1)) as [string, string];
}

async function readAfloat(boat: Boat): Promise<void> {
  const [aloneBow, aloneStern] = freeboards(boat, false);
  const [loadedBow, loadedStern] = freeboards(boat, true);
  for (const [label, text] of [
    ['Bow mark forward of mid', '220'],
    ['Stern mark aft of mid', '220'],
    ['Alone, bow', aloneBow],
    ['Alone, stern', aloneStern],
    ['Known mass', String(LOAD.massKg)],
    ['Its place forward of mid', String(100 * LOAD.atXM)],
    ['Loaded, bow', loadedBow],
    ['Loaded, stern', loadedStern],
  ] as const) {
    await enter(page, label, text);
  }
}

const single = async () =>
  (await callFromPage(page, 'boats.list', {})).find(({ boat }) => boat.boatClass === 'C1')!;

beforeAll(async () => {
  program = await startProgram();
  page = await program.openBrowser({ viewport: { width: 1280, height: 800 } });
  await callFromPage(page, 'demo.install', {});
});
afterAll(() => program.dispose());

storyOf('a float check, through its own screen', ({ step }) => {
  step(
    'finds how much fuller a boat is than its offsets, from freeboards to the millimetre, and is dated',
    async () => {
      const { id, boat } = await single();
      await goTo(page, `#/boats/${id}/lines`);
      await page.getByRole('button', { name: 'Correct the hull' }).waitFor();
      await readAfloat(boat);
      await page.getByRole('button', { name: 'Correct the hull' }).click();
      expect(await textOf(page.locator('.float-check').getByRole('status'))).toMatch(/\d\.\d % fuller/);
      await page.getByRole('button', { name: 'Save with the boat' }).click();
      await soon(async () => (await single()).boat.floatCheck?.takenOn).toBe(today());
      const { correction } = (await single()).boat;
      // Readings are rounded to a millimetre; a millimetre of freeboard is about 1 % of this hull's volume.
      expect(Math.abs(correction!.fullness - FULLER)).toBeLessThan(0.015);
    },
  );

  step('stays among the earlier ones when another replaces it', async () => {
    await page.getByLabel('Checked on').fill('2026-08-01');
    await page.getByRole('button', { name: 'Correct the hull' }).click();
    await page.getByRole('button', { name: 'Save with the boat' }).click();
    await soon(async () => (await single()).boat.floatCheck?.takenOn).toBe('2026-08-01');
    const { id } = await single();
    await goTo(page, `#/boats/${id}`);
    await page.getByText(/^Checked 1 Aug 2026; off by at most/).waitFor();
    await page.getByText('1 earlier check').click();
    await page.getByText(/with 60\.0\skg; missed by at most/).waitFor();
    expect(await barriersInBothThemes(page)).toEqual([]);
  });

  step('says so when the hull was measured anew since', async () => {
    const { id, boat } = await single();
    await callFromPage(page, 'boats.save', { boat: { ...boat, id, correction: null } });
    await goTo(page, '#/boats');
    await goTo(page, `#/boats/${id}`);
    await page.getByText(/before the hull changed; not used\./).waitFor();
  });

  step('is printed with the curves of form whole, all nine columns on an upright page', async () => {
    const { id } = await single();
    await goTo(page, `#/boats/${id}/lines`);
    await page.locator('.table-scroll td').first().waitFor();
    await page.setViewportSize({ width: A4_WIDE, height: 1000 });
    await page.emulateMedia({ media: 'print' });
    const table = page.locator('.table-scroll');
    expect(await table.locator('thead th').count()).toBe(9);
    expect(await table.evaluate((box) => box.scrollWidth - box.clientWidth)).toBe(0);
    expect(await table.evaluate((box) => box.getBoundingClientRect().right)).toBeLessThanOrEqual(A4_WIDE);
  });
});
