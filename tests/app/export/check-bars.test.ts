import { describe, expect, it } from 'vitest';
import { CHECK_BAR_MM, checkBars } from '../../../app/export/check-bars.ts';
import { templatePdf } from '../../../app/export/template-pdf.ts';
import { templatesOf } from '../../../core/setout/templates.ts';
import { inventedSetOut } from '../../core/setout/invented-set-out.ts';
import { boxOf, linesOn } from '../../core/setout/read-shapes.ts';
import { english } from '../../english.ts';
import { finished, inventedStamp } from './invented-stamp.ts';
import { readPdf } from './read-pdf.ts';

/** Half of a tick's length, which is across a bar and not along it, millimetres. */
const TICK_MM = 2;

describe('check bars', () => {
  it('end at their ticks: nothing reaches past 0 or 100 along either', () => {
    const boxes = linesOn(checkBars([0, 0], english), 'checkBar').map(({ points }) => boxOf(points));
    // What lies near the level bar is measured along it, what lies near the upright one up it.
    const level = boxes.filter(({ low, high }) => low >= -TICK_MM && high <= TICK_MM);
    const upright = boxes.filter(({ left, right }) => left >= -TICK_MM && right <= TICK_MM);
    expect(Math.min(...level.map(({ left }) => left))).toBe(0);
    expect(Math.max(...level.map(({ right }) => right))).toBe(CHECK_BAR_MM);
    expect(Math.min(...upright.map(({ low }) => low))).toBe(0);
    expect(Math.max(...upright.map(({ high }) => high))).toBe(CHECK_BAR_MM);
  });

  it('are 100 mm end to end on the page, ticks and all', () => {
    const [drawing] = templatesOf(inventedSetOut(), ['pad-block']);
    const { made } = finished(
      templatePdf([drawing!], { paper: 'A4', stamp: inventedStamp(), words: english }),
    );
    const [page] = readPdf(made.bytes).pages;
    const lines = page!.paths.filter(({ points }) => points.length === 2).map(({ points }) => points);
    const [bar] = lines.filter(([a, b]) => a![1] === b![1] && Math.abs(b![0] - a![0] - CHECK_BAR_MM) < 0.01);
    const y = bar![0]![1];
    const along = lines
      .filter((points) => points.every((point) => Math.abs(point[1] - y) <= TICK_MM + 0.01))
      .flatMap((points) => points.map(([x]) => x));
    expect(Math.max(...along) - Math.min(...along)).toBeCloseTo(CHECK_BAR_MM, 2);
  });
});
