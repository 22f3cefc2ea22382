import { describe, expect, it } from 'vitest';
import { boundsOf } from '../../../core/setout/drawing-bounds.ts';
import { showsIn } from '../../../core/setout/drawn-parts.ts';
import { PAPER_NAMES, PAPERS } from '../../../core/setout/paper.ts';
import { circle, line, ring, type TemplateDrawing, textAt } from '../../../core/setout/template-drawing.ts';
import { templatesOf } from '../../../core/setout/templates.ts';
import { OVERLAP_MM, PAGE_MARGIN_MM, tilingOf } from '../../../core/setout/tiling.ts';
import { notEmpty } from '../../not-empty.ts';
import { inventedSetOut, ON_A_WEDGE, ROWS_OF_HOLES } from './invented-set-out.ts';
import { allLines } from './read-shapes.ts';

const drawing = (...shapes: TemplateDrawing['shapes'][number][]): TemplateDrawing => ({
  id: 'pad-recess',
  title: 'A drawing',
  seen: 'from above',
  shapes,
});
const plate = (width: number, height: number) =>
  drawing(
    ring('outline', [
      [0, 0],
      [width, 0],
      [width, height],
      [0, height],
    ]),
  );
const templates = templatesOf(inventedSetOut({ hardware: ROWS_OF_HOLES, seat: { frontFoot: ON_A_WEDGE } }));

describe('a drawing on pages', () => {
  it('that has room on one is on one, portrait or landscape as it needs', () => {
    expect(tilingOf(plate(100, 200), 'A4').tiles.map(({ name }) => name)).toEqual(['A1']);
    expect(tilingOf(plate(100, 200), 'A4').page.landscape).toBe(false);
    expect(tilingOf(plate(250, 150), 'A4').page.landscape).toBe(true);
    expect(tilingOf(plate(250, 150), 'A4').tiles).toHaveLength(1);
  });

  it('takes as many as its size over a page’s, less what overlaps', () => {
    // A standing A4 page shows 185 × 253; each further one adds 173 × 241.
    const { tiles, columns, rows } = tilingOf(plate(520, 240), 'A4');
    expect([columns, rows]).toEqual([3, 1]);
    expect(tiles).toHaveLength(3);
  });

  it('overlaps by enough to glue: ten millimetres and more', () => {
    const [left, right] = tilingOf(plate(300, 240), 'A4').tiles;
    expect(left!.shows.maxX - right!.shows.minX).toBeGreaterThanOrEqual(10);
  });

  it('letters its rows from the top and numbers its columns from the left', () => {
    const { tiles, columns, rows } = tilingOf(plate(500, 450), 'A4');
    expect(rows).toBeGreaterThan(1);
    expect(tiles[0]!.name).toBe('A1');
    expect(tiles.at(-1)!.name).toBe(`${String.fromCharCode(64 + rows)}${columns}`);
    for (const { row, column, shows } of tiles) {
      const right = tiles.find((tile) => tile.row === row && tile.column === column + 1);
      const under = tiles.find((tile) => tile.row === row + 1 && tile.column === column);
      if (right) expect(right.shows.minX).toBeGreaterThan(shows.minX);
      if (under) expect(under.shows.maxY).toBeLessThan(shows.maxY);
    }
  });

  it('leaves out pages that would be white', () => {
    const corner = drawing(line('outline', [0, 0], [700, 0]), line('outline', [0, 0], [0, 700]));
    const { tiles, columns, rows } = tilingOf(corner, 'A4');
    expect(tiles.length).toBeLessThan(columns * rows);
    for (const { shows } of tiles) expect(corner.shapes.some((shape) => showsIn(shape, shows))).toBe(true);
  });
});

describe.each(PAPER_NAMES)('every template on %s', (paper) => {
  const laid = templates.map((template) => ({ template, tiling: tilingOf(template, paper) }));

  it('has a window at full size that leaves the printer’s margin', () => {
    for (const { tiling } of notEmpty(laid)) {
      const { page, window } = tiling;
      expect([page.width, page.height].sort((a, b) => a - b)).toEqual([
        PAPERS[paper].short,
        PAPERS[paper].long,
      ]);
      expect(window.left).toBeGreaterThanOrEqual(PAGE_MARGIN_MM);
      expect(window.left + window.width).toBeLessThanOrEqual(page.width - PAGE_MARGIN_MM);
      expect(window.top + window.height).toBeLessThanOrEqual(page.height - PAGE_MARGIN_MM);
      for (const { shows } of tiling.tiles) {
        expect(shows.maxX - shows.minX).toBeCloseTo(window.width, 9);
        expect(shows.maxY - shows.minY).toBeCloseTo(window.height, 9);
      }
    }
  });

  it('shows every point of every line on some page', () => {
    for (const { template, tiling } of notEmpty(laid)) {
      const telling = template.shapes.filter(
        (shape) => shape.kind === 'dimension' || !template.aside?.some((layer) => layer === shape.of),
      );
      const points = allLines(telling).flatMap((line) => line.points);
      for (const [x, y] of points) {
        const shown = tiling.tiles.some(
          ({ shows }) => x >= shows.minX && x <= shows.maxX && y >= shows.minY && y <= shows.maxY,
        );
        expect(shown, `${template.id} ${x} ${y}`).toBe(true);
      }
    }
  });

  it('overlaps neighbours by the same stretch of drawing, and marks every seam twice on each page', () => {
    for (const { tiling } of notEmpty(laid)) {
      for (const tile of tiling.tiles) {
        const right = tiling.tiles.find(({ row, column }) => row === tile.row && column === tile.column + 1);
        if (!right) continue;
        expect(tile.shows.maxX - right.shows.minX).toBeCloseTo(OVERLAP_MM, 9);
        const onBoth = tiling.registration.filter(
          ([x, y]) =>
            x > right.shows.minX && x < tile.shows.maxX && y > tile.shows.minY && y < tile.shows.maxY,
        );
        expect(onBoth.length).toBeGreaterThanOrEqual(2);
      }
    }
  });

  it('lies wholly inside its pages', () => {
    for (const { template, tiling } of notEmpty(laid)) {
      const { minX, maxX } = boundsOf(template.shapes);
      const left = Math.min(...tiling.tiles.map(({ shows }) => shows.minX));
      const right = Math.max(...tiling.tiles.map(({ shows }) => shows.maxX));
      expect(minX - left).toBeGreaterThanOrEqual(0);
      expect(right - maxX).toBeGreaterThanOrEqual(0);
    }
  });
});

describe('a page that would show what its neighbour shows already', () => {
  it('is left out, and of two that share the same strip one is kept', () => {
    // A standing A4 page shows 253 mm; with the white around it this drawing takes 254, itself 248.
    const board = drawing(
      line('outline', [0, 0], [600, 0]),
      line('outline', [0, 246], [600, 246]),
      line('centreMark', [300, -1], [300, 247]),
    );
    const { tiles, rows } = tilingOf(board, 'A4');
    const seen = ([x, y]: readonly number[]) =>
      tiles.some(({ shows }) => x! >= shows.minX && x! <= shows.maxX && y! >= shows.minY && y! <= shows.maxY);
    expect(rows).toBe(2);
    expect(new Set(tiles.map(({ row }) => row)).size).toBe(1);
    for (const point of [
      [0, 0],
      [600, 0],
      [0, 246],
      [600, 246],
      [300, -1],
      [300, 247],
    ]) {
      expect(seen(point), String(point)).toBe(true);
    }
  });
});

describe('words that seams would cut', () => {
  const along = (length: number, at: number) =>
    drawing(line('outline', [0, 0], [length, 0]), textAt('A LONG NAME', [at, 5]));
  const box = ({ shapes }: TemplateDrawing) => boundsOf(shapes.slice(1));

  it('lie whole on some page where the pages leave room', () => {
    // In the middle of 300 mm on two pages the seam is at 150.
    const given = along(300, 140);
    const { tiles } = tilingOf(given, 'A4');
    expect(tiles).toHaveLength(2);
    const { minX, maxX } = box(given);
    expect(tiles.some(({ shows }) => shows.minX <= minX && shows.maxX >= maxX)).toBe(true);
  });

  it('ask for no page of their own', () => {
    expect(tilingOf(along(150, 20), 'A4').tiles).toHaveLength(1);
  });
});

describe('whether a shape shows in a part of a drawing', () => {
  const part = { minX: 0, minY: 0, maxX: 100, maxY: 100 };

  it('is so for any that reaches in, and not for one that lies outside', () => {
    expect(showsIn(line('outline', [-50, 50], [10, 50]), part)).toBe(true);
    expect(showsIn(circle('drill', [-4, 50], 5), part)).toBe(true);
    expect(showsIn(circle('drill', [-6, 50], 5), part)).toBe(false);
    expect(showsIn(line('outline', [101, 0], [200, 0]), part)).toBe(false);
  });
});

it('neighbouring pages share 12 mm to glue by', () => {
  const [one, two] = tilingOf(plate(350, 200), 'A4').tiles;
  expect(one!.shows.maxX - two!.shows.minX).toBeCloseTo(12, 9);
});
