import { describe, expect, it } from 'vitest';
import type { Text } from '../../../core/graphics/shape.ts';
import { dimensionLines } from '../../../core/setout/dimension-lines.ts';
import { boundsOf, type DrawingBounds } from '../../../core/setout/drawing-bounds.ts';
import { drawnParts, holds, partShows } from '../../../core/setout/drawn-parts.ts';
import { PAPER_NAMES } from '../../../core/setout/paper.ts';
import type { PlainShape, TemplateLayer, TemplateShape } from '../../../core/setout/template-drawing.ts';
import { pagesOf } from '../../../core/setout/template-pages.ts';
import { templatesOf } from '../../../core/setout/templates.ts';
import { OVERLAP_MM, type Tile } from '../../../core/setout/tiling.ts';
import { cases } from '../../cases.ts';
import { notEmpty } from '../../not-empty.ts';
import { inventedSetOut, ON_A_WEDGE, ROWS_OF_HOLES } from './invented-set-out.ts';

const { kneePad, rearRest } = inventedSetOut().work.seat;
/** Seats that differ in what is lettered: rows of holes or screws, a narrow board, ends cut to the hull, inches, a far rest. */
const SEATS = [
  {
    side: 'right',
    hardware: ROWS_OF_HOLES,
    seat: { frontFoot: ON_A_WEDGE, kneePad: { ...kneePad, outM: 0.11 } },
  },
  { side: 'left', hardware: ROWS_OF_HOLES, floorWidthM: 0.22 },
  { side: 'right', options: { units: 'in' }, seat: { rearRest: { ...rearRest, aftM: 0.8 } } },
] as const;
const templates = SEATS.slice(0, cases(1, 3)).flatMap((wanted) => templatesOf(inventedSetOut(wanted)));

const plainOf = (shapes: readonly TemplateShape[]): PlainShape[] =>
  shapes.flatMap((shape) => (shape.kind === 'dimension' ? dimensionLines(shape, 1) : [shape]));
const textsIn = (shapes: readonly PlainShape[]) =>
  shapes.filter((shape): shape is Text<TemplateLayer> => shape.kind === 'text');

/** The capitals' own box: figures and capitals do not reach below their baseline. */
function capitals(text: Text<TemplateLayer>): DrawingBounds {
  const { minX, maxX, minY, maxY } = boundsOf([text]);
  const under = 0.4 * text.height;
  if (text.turnDeg === 90) return { minX, maxX: maxX - under, minY, maxY };
  return { minX, maxX, minY: minY + under, maxY };
}

const meet = (a: DrawingBounds, b: DrawingBounds) =>
  a.minX < b.maxX && b.minX < a.maxX && a.minY < b.maxY && b.minY < a.maxY;

describe('lettering of every template', () => {
  it('covers no other lettering, and no line runs through it', () => {
    for (const { id, shapes } of notEmpty(templates)) {
      const texts = textsIn(plainOf(shapes));
      const drawn = drawnParts(shapes).filter(({ shape }) => shape.kind !== 'text');
      texts.forEach((text, k) => {
        const box = capitals(text);
        const over = texts.slice(k + 1).find((other) => meet(box, capitals(other)));
        expect(over?.text, `${id}: ${text.text}`).toBeUndefined();
        // Words that are cleared of what lies under them may lie over lines.
        if (text.clear) return;
        const within = {
          minX: box.minX + 0.2,
          maxX: box.maxX - 0.2,
          minY: box.minY + 0.2,
          maxY: box.maxY - 0.2,
        };
        const struck = drawn.some((part) => partShows(part, within));
        expect(struck, `${id}: ${text.text}`).toBe(false);
      });
    }
  });
});

/** Lines down the middle of the overlaps of a drawing's pages, as thin boxes. */
function seams(tiles: readonly Tile[]): DrawingBounds[] {
  const half = OVERLAP_MM / 2;
  return tiles.flatMap(({ column, row, shows }) => {
    const has = (columns: number, rows: number) =>
      tiles.some((other) => other.column === column + columns && other.row === row + rows);
    return [
      ...(has(1, 0) ? [{ ...shows, minX: shows.maxX - half, maxX: shows.maxX - half }] : []),
      ...(has(0, 1) ? [{ ...shows, minY: shows.minY + half, maxY: shows.minY + half }] : []),
    ];
  });
}

describe.each(PAPER_NAMES)('every template on %s', (paper) => {
  const pages = templates.map((template) => ({ template, laid: pagesOf(template, paper) }));

  it('has no name or figure over a seam, and each whole on a page', () => {
    for (const { template, laid } of notEmpty(pages)) {
      for (const { drawing, tiling } of laid) {
        const cuts = seams(tiling.tiles);
        for (const text of textsIn(plainOf(drawing.shapes))) {
          const box = boundsOf([text]);
          expect(
            cuts.some((cut) => meet(box, cut)),
            `${template.id}: ${text.text}`,
          ).toBe(false);
          const whole = tiling.tiles.some(({ shows }) => holds(shows, box));
          expect(whole, `${template.id}: ${text.text}`).toBe(true);
        }
      }
    }
  });

  it('has something to cut, drill or lay by on every page, besides a board’s edges and its middle', () => {
    for (const { template, laid } of notEmpty(pages)) {
      for (const { drawing, tiling } of laid) {
        const parts = drawnParts(drawing.shapes).filter(
          ({ shape }) => shape.kind === 'text' || !(template.id === 'floorboard' && BARE.has(shape.of)),
        );
        for (const { name, shows } of tiling.tiles) {
          const shown = parts.some((part) => partShows(part, shows));
          expect(shown, `${template.id} ${name} on ${paper}`).toBe(true);
        }
      }
    }
  });
});

/** A page of these alone is nearly blank. */
const BARE: ReadonlySet<string> = new Set(['outline', 'centreline']);
