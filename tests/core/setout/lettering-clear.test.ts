import { describe, expect, it } from 'vitest';
import { cautionSentence } from '../../../core/setout/caution-sentences.ts';
import { dimensionLines } from '../../../core/setout/dimension-lines.ts';
import { boundsOf } from '../../../core/setout/drawing-bounds.ts';
import type { TemplateShape } from '../../../core/setout/template-drawing.ts';
import { templatesOf } from '../../../core/setout/templates.ts';
import { english, plainSpaces } from '../../english.ts';
import { notEmpty } from '../../not-empty.ts';
import { inventedSetOut, ON_A_WEDGE, ROWS_OF_HOLES } from './invented-set-out.ts';
import { linesOn, type ReadLine } from './read-shapes.ts';

/** Whether a straight line fore and aft or upright passes through a box; other lines are not asked about here. */
function crosses({ points }: ReadLine, box: ReturnType<typeof boundsOf>): boolean {
  const [a, b] = [points[0]!, points.at(-1)!];
  const within = (value: number, low: number, high: number) => value > low && value < high;
  const overlaps = (from: number, to: number, low: number, high: number) =>
    Math.min(from, to) < high && Math.max(from, to) > low;
  if (a[1] === b[1]) return within(a[1], box.minY, box.maxY) && overlaps(a[0], b[0], box.minX, box.maxX);
  if (a[0] === b[0]) return within(a[0], box.minX, box.maxX) && overlaps(a[1], b[1], box.minY, box.maxY);
  return false;
}

/** Figures and names may not be struck through by an axis (ISO 129-1: figures stand clear of every line). */
describe('lettering of the templates', () => {
  it.each(['left', 'right'] as const)('is clear of every axis, knee on the %s', (side) => {
    const out = inventedSetOut({ side, seat: { frontFoot: ON_A_WEDGE }, hardware: ROWS_OF_HOLES });
    for (const { id, shapes } of notEmpty(templatesOf(out))) {
      if (id === 'floorboard') continue;
      const plain = shapes.flatMap((shape): TemplateShape[] =>
        shape.kind === 'dimension' ? dimensionLines(shape, 1) : [shape],
      );
      const axes = linesOn(plain, 'axis');
      for (const shape of plain) {
        if (shape.kind !== 'text' || shape.turnDeg % 90 !== 0) continue;
        // Figures and capitals do not reach below their baseline.
        const { minX, maxX, minY, maxY } = boundsOf([shape]);
        const under = 0.4 * shape.height;
        const box = { minX: minX + under, maxX: maxX - under, minY: minY + under, maxY: maxY - under };
        const struck = axes.some((axis) => crosses(axis, box));
        expect(struck, `${id}: ${shape.text}`).toBe(false);
      }
    }
  });
});

describe('a caution about rails', () => {
  it.each(['mm', 'in'] as const)(
    'names the holes as drills are sold, to a tenth of a millimetre, in %s',
    (units) => {
      const caution = {
        code: 'on-rails',
        fitting: 'kneePad',
        apartMm: 100,
        heightMm: 12,
        holeMm: 6.5,
      } as const;
      expect(plainSpaces(cautionSentence(caution, english, units))).toContain('6.5 mm');
    },
  );
});
