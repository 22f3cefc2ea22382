import { describe, expect, it } from 'vitest';
import { hullOfBoat } from '../../core/hull/hull-of-boat.ts';
import { dimensionLines } from '../../core/setout/dimension-lines.ts';
import { LAYER_LINES } from '../../core/setout/layer-lines.ts';
import { PAPERS } from '../../core/setout/paper.ts';
import { scaleFor, sheetDrawing } from '../../core/setout/sheet-drawing.ts';
import { textAt } from '../../core/setout/template-drawing.ts';
import { bareLength } from '../../core/text/sheet-length.ts';
import { inventedSetOut, ROWS_OF_HOLES } from '../core/setout/invented-set-out.ts';
import { lettersOf } from '../core/setout/read-shapes.ts';

/** Figures of standards that paper, drawing and drill go by, as published; recalled ones are said to be. */

const INCH_MM = 25.4;

describe('papers (ISO 216:2007, A series; ANSI/ASME Y14.1, size A)', () => {
  it('A4 and A3 are A0 halved four and three times: 1 m² and sides as 1 to √2, cut to whole millimetres', () => {
    // ISO 216: A0 has 1 m² and sides in the proportion 1 : √2; each size is the one before it halved across its long side.
    const long = 1000 * 2 ** 0.25;
    const short = 1000 / 2 ** 0.25;
    const sizes = [{ short: Math.floor(short + 0.2), long: Math.floor(long + 0.2) }];
    for (let k = 0; k < 4; k++) {
      const before = sizes.at(-1)!;
      sizes.push({ short: Math.floor(before.long / 2), long: before.short });
    }
    expect(sizes[0]).toEqual({ short: 841, long: 1189 });
    expect(PAPERS.A3).toEqual(sizes[3]);
    expect(PAPERS.A4).toEqual(sizes[4]);
  });

  it('Letter is 8½ by 11 inches of 25.4 mm', () => {
    expect(PAPERS.Letter.short).toBeCloseTo(8.5 * INCH_MM, 9);
    expect(PAPERS.Letter.long).toBeCloseTo(11 * INCH_MM, 9);
  });
});

describe('scales of reduction (ISO 5455:1979, table 1)', () => {
  it('are 1:2, 1:5, 1:10, 1:20 and 1:50, whatever room there is', () => {
    const out = inventedSetOut();
    const drawing = sheetDrawing(out, hullOfBoat(out.work.boat));
    const published = [1 / 2, 1 / 5, 1 / 10, 1 / 20, 1 / 50];
    for (let width = 20; width < 2000; width += 37) {
      expect(published).toContain(scaleFor(drawing, { width, height: width * 0.7 }));
    }
  });
});

describe('lettering and lines (ISO 3098-1, nominal sizes; ISO 128-2, line widths)', () => {
  const NOMINAL_MM = [1.8, 2.5, 3.5, 5, 7, 10];

  it('plain lettering has a nominal height', () => {
    expect(NOMINAL_MM).toContain(textAt('K', [0, 0]).height);
  });

  it('figures on reduced drawings have the next size that is legible', () => {
    const shapes = dimensionLines(
      { kind: 'dimension', from: [0, 0], to: [500, 0], offset: 8, text: '500' },
      0.1,
    );
    expect(NOMINAL_MM).toContain(lettersOf(shapes)[0]!.height);
  });

  it('outlines are thick (0.5) and dimensions thin: half of it or less', () => {
    expect(LAYER_LINES.outline.width).toBe(0.5);
    expect(LAYER_LINES.dimension.width).toBeLessThanOrEqual(0.25);
  });

  it('the centreline is a chain line: long dash, gap, short dash, gap (ISO 128, type 04)', () => {
    const [long, gap, short, gapAgain] = LAYER_LINES.centreline.dash;
    expect(long!).toBeGreaterThan(4 * short!);
    expect(gap).toBe(gapAgain);
  });
});

describe('clearance holes for bolts (ISO 273:1979; values recalled)', () => {
  /** Fine and medium series: M5 5.3 and 5.5, M6 6.4 and 6.6, M8 8.4 and 9.0. Millimetres. */
  const PUBLISHED = [
    [5, 5.3, 5.5],
    [6, 6.4, 6.6],
    [8, 8.4, 9],
  ] as const;

  it.each(PUBLISHED)('M%i lies between fine %f and medium %f', (bolt, fine, medium) => {
    const [pad] = inventedSetOut({ hardware: ROWS_OF_HOLES, options: { boltM: bolt / 1000 } }).holes;
    expect(pad!.diameterMm).toBeGreaterThanOrEqual(fine);
    expect(pad!.diameterMm).toBeLessThanOrEqual(medium);
  });
});

describe('inches (the international inch of 1959, 25.4 mm exactly)', () => {
  /** Conversions as printed in workshop tables. */
  const TABLE = [
    ['1/32', 0.79375],
    ['1/16', 1.5875],
    ['1/8', 3.175],
    ['3/16', 4.7625],
    ['1/4', 6.35],
    ['3/8', 9.525],
    ['1/2', 12.7],
    ['5/8', 15.875],
    ['3/4', 19.05],
    ['7/8', 22.225],
    ['15/16', 23.8125],
    ['31/32', 24.60625],
    ['1', 25.4],
    ['6', 152.4],
    ['12', 304.8],
    ['39 3/8', 1000],
  ] as const;

  it.each(TABLE)('%s in is %f mm', (text, mm) => {
    expect(bareLength(mm, 'in')).toBe(text);
  });
});
