import type { Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { formatFor } from '../../app/language/format.ts';
import { createEvaluator } from '../../core/evaluation/evaluator.ts';
import { cases } from '../cases.ts';
import { exampleFit, exampleSeat } from '../core/example/example-fit.ts';
import { findingTitle } from '../english.ts';
import { DrawnBench, fittings, PAD_AFT } from './drawn-bench.ts';
import { handlePlace, nextFrame } from './hand.ts';
import { type RunningProgram, startProgram } from './harness.ts';
import { shown, textOf } from './screens.ts';

/** Enough moves of the pointer that one step of undo for each would be seen at once. */
const MOVES = cases(30, 200);

let program: RunningProgram;
let page: Page;
let bench: DrawnBench;

beforeAll(async () => {
  program = await startProgram();
  page = await program.openBrowser({ reducedMotion: 'reduce', clock: true });
  bench = new DrawnBench(page);
});
afterAll(() => program?.dispose());

describe('the pointer', () => {
  beforeEach(() => bench.put(exampleFit()));

  it(`${MOVES} moves are one step of undo`, async () => {
    await bench.pull('kneePad/plan', { x: -24, y: -3 }, MOVES);
    await page.mouse.up();
    expect(await shown(page, PAD_AFT)).toBeGreaterThan(20);
    await bench.undo();
    expect(await shown(page, PAD_AFT)).toBe(17.5);
    await bench.nothingToUndo();
    expect(fittings(await bench.kept())).toEqual(fittings(exampleFit()));
  });

  it('Escape puts everything back exactly, and leaves nothing to undo', async () => {
    for (const [grip, by] of [
      ['kneePad/plan', { x: -30, y: 8 }],
      ['rearRest/profile', { x: 20, y: -20 }],
      ['toeOut/plan', { x: 0, y: 25 }],
      ['lowerHand/profile', { x: 0, y: 30 }],
    ] as const) {
      await bench.pull(grip, by);
      await page.keyboard.press('Escape');
      await nextFrame(page);
      await page.mouse.move(400, 400);
      await page.mouse.up();
      expect(await bench.undoIsOff(), grip).toBe(true);
    }
    expect(fittings(await bench.kept())).toEqual(fittings(exampleFit()));
  });

  it('the same pull in plan and in profile is the same move', async () => {
    await bench.pull('kneePad/plan', { x: -22, y: 0 });
    await page.mouse.up();
    const fromAbove = fittings(await bench.kept());
    await bench.undo();
    await bench.pull('kneePad/profile', { x: -22, y: 0 });
    await page.mouse.up();
    expect(fittings(await bench.kept())).toEqual(fromAbove);
    expect(fromAbove.kneePad.aftM).toBeGreaterThan(0.2);
  });

  it('a handle keeps to its neighbour views: height moves it in profile and from behind alike', async () => {
    const apart = async () => {
      const [side, behind] = [
        await handlePlace(page, 'kneePad/profile'),
        await handlePlace(page, 'kneePad/section'),
      ];
      return Math.abs(side.y - behind.y);
    };
    expect(await apart()).toBeLessThan(0.02);
    await bench.pull('kneePad/section', { x: 6, y: -12 });
    await page.mouse.up();
    expect(await apart()).toBeLessThan(0.02);
    const above = await handlePlace(page, 'kneePad/plan');
    expect(Math.abs(above.x - (await handlePlace(page, 'kneePad/profile')).x)).toBeLessThan(0.02);
  });

  it('what the screen says while the hand moves is what the evaluator says', async () => {
    await bench.pull('kneePad/plan', { x: -14, y: -4 });
    const during = await titles();
    const aft = await shown(page, PAD_AFT);
    await page.mouse.up();
    const fit = await bench.kept();
    expect(fit.seats[0]!.kneePad.aftM * 100).toBeCloseTo(aft, 6);
    const format = formatFor({ length: 'cm', mass: 'kg', decimal: 'point' });
    for (const finding of createEvaluator().evaluate(fit).findings) {
      const said = findingTitle(finding, format.quantity(finding.quantity));
      // Spreads are held while the hand moves, so that part of the title may differ by its last digit until it rests.
      const value = (text: string) => text.split('±')[0]!.trim();
      expect(value(during.get(finding.id) ?? ''), finding.id).toBe(value(said));
    }
  });

  it('pulled across the whole range never shows a number that is none, and never complains', async () => {
    const seen: string[] = [];
    for (const [grip, way] of [
      ['kneePad/plan', { x: 1, y: 0 }],
      ['kneePad/profile', { x: 0, y: 1 }],
      ['rearRest/plan', { x: 1, y: 0 }],
      ['rearRest/section', { x: 0.5, y: 1 }],
      ['frontFoot/plan', { x: 1, y: 0 }],
      ['lowerHand/section', { x: 0, y: 1 }],
      ['restTurn/plan', { x: 1, y: 1 }],
    ] as const) {
      const { x, y } = await handlePlace(page, grip);
      await page.mouse.move(x, y);
      await page.mouse.down();
      for (let k = -400; k <= 400; k += cases(160, 40)) {
        await page.mouse.move(x + way.x * k, y + way.y * k);
        await nextFrame(page);
        const text = (await page.locator('body').textContent()) ?? '';
        if (/NaN|Infinity|undefined/.test(text)) seen.push(`${grip} at ${k}`);
      }
      await page.keyboard.press('Escape');
      await page.mouse.up();
    }
    expect(seen).toEqual([]);
    expect(bench.complaints).toEqual([]);
  });

  it('a locked fitting stays where it is', async () => {
    await bench.put(exampleFit([exampleSeat({ locks: ['kneePad'] })]));
    await bench.pull('kneePad/plan', { x: -30, y: 0 });
    await page.mouse.up();
    expect(await shown(page, PAD_AFT)).toBe(17.5);
    const handle = page.locator('[data-grip="kneePad/plan"]');
    expect(await handle.getAttribute('aria-label')).toContain('locked');
    await handle.press('ArrowLeft');
    expect(await shown(page, PAD_AFT)).toBe(17.5);
  });

  it('snaps to the holes of the hardware, and leaves them with Alt', async () => {
    const fit = exampleFit();
    const hardware = { ...fit.boat.hardware, padHolePitchM: 0.025 };
    await bench.put({ ...fit, boat: { ...fit.boat, hardware } });
    await bench.pull('kneePad/plan', { x: -12, y: 0 });
    const onHole = await shown(page, PAD_AFT);
    expect(onHole / 2.5).toBeCloseTo(Math.round(onHole / 2.5), 6);
    await page.keyboard.down('Alt');
    await nextFrame(page);
    const between = await shown(page, PAD_AFT);
    await page.keyboard.up('Alt');
    await page.mouse.up();
    expect(Math.abs(between / 2.5 - Math.round(between / 2.5))).toBeGreaterThan(0.01);
  });
});

/** Titles of the margin's notes by finding, narrow spaces written plain. */
async function titles(): Promise<Map<string, string>> {
  const notes = await page.locator('.note[data-finding]').all();
  const read = notes.map(
    async (note) =>
      [
        (await note.getAttribute('data-finding'))!,
        await textOf(note.locator('[data-text="title"]')),
      ] as const,
  );
  return new Map(await Promise.all(read));
}
