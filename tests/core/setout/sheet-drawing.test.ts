import { describe, expect, it } from 'vitest';
import { hullOfBoat } from '../../../core/hull/hull-of-boat.ts';
import { PAPER_NAMES } from '../../../core/setout/paper.ts';
import { heightAt, scaleFor, scaleText, sheetDrawing } from '../../../core/setout/sheet-drawing.ts';
import { firstSheet } from '../../../core/setout/sheet-layout.ts';
import { inventedSetOut, ON_A_WEDGE } from './invented-set-out.ts';
import { linesOn } from './read-shapes.ts';

const out = inventedSetOut({ seat: { frontFoot: ON_A_WEDGE } });
const hull = hullOfBoat(out.work.boat);
const drawing = sheetDrawing(out, hull);

describe('the scale of a sheet', () => {
  it('is the largest of the standard ones that has room', () => {
    expect(scaleFor(drawing, { width: 5000, height: 5000 })).toBe(1 / 2);
    expect(scaleText(scaleFor(drawing, firstSheet('A4').drawing))).toBe('1:10');
    expect(scaleFor(drawing, { width: 10, height: 10 })).toBe(1 / 50);
  });

  it('never lets the drawing out of its box', () => {
    for (const paper of PAPER_NAMES) {
      const { drawing: box } = firstSheet(paper);
      expect(heightAt(drawing, scaleFor(drawing, box))).toBeLessThanOrEqual(box.height);
    }
  });

  it('is written as drawings write it', () => {
    expect([1 / 2, 0.1, 1 / 20].map(scaleText)).toEqual(['1:2', '1:10', '1:20']);
  });
});

describe('the views of a sheet', () => {
  it('know how far the boat reaches to each side, down to its keel and up to its sheer or the pad', () => {
    const sheer = Math.max(
      ...linesOn(drawing.profile, 'hull').flatMap(({ points }) => points.map(([, y]) => y)),
    );
    expect(drawing.halfBreadth).toBeGreaterThan(150);
    expect(drawing.halfBreadth).toBeLessThanOrEqual(220 + 1e-6);
    expect(drawing.low).toBeLessThanOrEqual(0 + 1e-6);
    expect(drawing.high).toBeGreaterThanOrEqual(sheer);
  });

  it('take more paper the larger the scale, by just the boat’s size', () => {
    const [small, large] = [heightAt(drawing, 0.1), heightAt(drawing, 0.2)];
    expect(large - small).toBeCloseTo((2 * drawing.halfBreadth + drawing.high - drawing.low) * 0.1, 9);
  });

  it('make room for a pad that is higher than the sheer', () => {
    const { seat } = out.work;
    const tall = inventedSetOut({ seat: { kneePad: { ...seat.kneePad, heightM: 0.4 } } });
    expect(sheetDrawing(tall, hull).high).toBeCloseTo(60 + 420, 6);
  });
});
