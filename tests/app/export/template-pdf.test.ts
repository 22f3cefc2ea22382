import { describe, expect, it } from 'vitest';
import { templatePdf } from '../../../app/export/template-pdf.ts';
import { PAPER_NAMES, PAPERS, type PaperName } from '../../../core/setout/paper.ts';
import type { MillimetrePoint, TemplateDrawing } from '../../../core/setout/template-drawing.ts';
import { pageCount } from '../../../core/setout/template-pages.ts';
import { templatesOf } from '../../../core/setout/templates.ts';
import { tilingOf } from '../../../core/setout/tiling.ts';
import { inventedSetOut, ON_A_WEDGE, ROWS_OF_HOLES } from '../../core/setout/invented-set-out.ts';
import { allLines, linesOn } from '../../core/setout/read-shapes.ts';
import { english } from '../../english.ts';
import { notEmpty } from '../../not-empty.ts';
import { finished, inventedStamp } from './invented-stamp.ts';
import { type ReadPage, readPdf, wordsOf } from './read-pdf.ts';

/** What the issue asks of every file: distances true to 0.05 mm. */
const SCALE_TOLERANCE_MM = 0.05;
const CHECK_BAR_MM = 100;

const templates = templatesOf(
  inventedSetOut({ hardware: ROWS_OF_HOLES, seat: { frontFoot: ON_A_WEDGE }, floorWidthM: 0.24 }),
);

function printed(paper: PaperName, drawings = templates) {
  const { made } = finished(templatePdf(drawings, { paper, stamp: inventedStamp(), words: english }));
  return readPdf(made.bytes);
}

const distance = (a: readonly number[], b: readonly number[]) => Math.hypot(a[0]! - b[0]!, a[1]! - b[1]!);

/** Where the points of a line lie from its first one, which no moving on a page can change; a mirror image has others. */
const fromFirst = (points: readonly (readonly number[])[]) =>
  points.map((point) => [point[0]! - points[0]![0]!, point[1]! - points[0]![1]!]);

function sameShape(a: readonly (readonly number[])[], b: readonly (readonly number[])[]): boolean {
  if (a.length !== b.length) return false;
  const [mine, theirs] = [fromFirst(a), fromFirst(b)];
  return mine.every((point, k) => distance(point, theirs[k]!) <= SCALE_TOLERANCE_MM);
}

/** Every line of a drawing as points; rings come back to their first point, as a closed path does. */
function linesOf(drawing: TemplateDrawing): (readonly MillimetrePoint[])[] {
  return allLines(drawing.shapes).map(({ closed, points }) => (closed ? [...points, points[0]!] : points));
}

/** Crosses of two equal lines, 9 mm long, with their middles: the registration marks. */
function crossesOn(page: ReadPage): [number, number][] {
  const level = page.paths.filter(({ points: [a, b], ...path }) => {
    return (
      path.painted === 'stroke' && b && Math.abs(a![1] - b[1]) < 1e-6 && Math.abs(distance(a!, b) - 9) < 1e-3
    );
  });
  return level.map(({ points: [a, b] }) => [(a![0] + b![0]) / 2, a![1]]);
}

describe.each(PAPER_NAMES)('templates on %s', (paper) => {
  const file = printed(paper);
  const { short, long } = PAPERS[paper];

  it('has pages of exactly that paper, portrait or landscape', () => {
    expect(file.pages).toHaveLength(pageCount(templates, paper));
    for (const { width, height } of file.pages) {
      const [low, high] = [Math.min(width, height), Math.max(width, height)];
      expect(Math.abs(low - short)).toBeLessThan(SCALE_TOLERANCE_MM);
      expect(Math.abs(high - long)).toBeLessThan(SCALE_TOLERANCE_MM);
    }
  });

  it('draws every line of every template at full size', () => {
    let page = 0;
    for (const drawing of notEmpty(templates)) {
      const count = pageCount([drawing], paper);
      const paths = file.pages.slice(page, page + count).flatMap((each) => each.paths);
      page += count;
      for (const points of notEmpty(linesOf(drawing))) {
        expect(
          paths.some((path) => sameShape(path.points, points)),
          `${drawing.id}: a line of ${points.length} points from ${points[0]}`,
        ).toBe(true);
      }
    }
  });

  it('carries a level and an upright check bar of 100 mm on every page', () => {
    for (const { paths } of notEmpty(file.pages)) {
      const bars = paths.filter(({ points, painted }) => {
        return (
          painted === 'stroke' &&
          points.length === 2 &&
          Math.abs(distance(points[0]!, points[1]!) - CHECK_BAR_MM) < 0.01
        );
      });
      const level = bars.filter(({ points: [a, b] }) => Math.abs(a![1] - b![1]) < 1e-6);
      const upright = bars.filter(({ points: [a, b] }) => Math.abs(a![0] - b![0]) < 1e-6);
      expect(level.length).toBeGreaterThan(0);
      expect(upright.length).toBeGreaterThan(0);
    }
  });

  it('prints paper, scale, units and how to print on every page', () => {
    notEmpty(file.pages).forEach((page, index) => {
      const words = wordsOf(page);
      expect(words).toContain(paper);
      expect(words).toContain('1:1');
      expect(words).toContain('millimetres');
      expect(words).toContain('Print at 100 %');
      expect(words).toContain(`${index + 1} of ${file.pages.length}`);
    });
  });

  it('keeps the check bars outside the printer’s margin', () => {
    for (const { paths, width, height } of notEmpty(file.pages)) {
      const bars = paths.filter(
        ({ points }) =>
          points.length === 2 && Math.abs(distance(points[0]!, points[1]!) - CHECK_BAR_MM) < 0.01,
      );
      for (const [x, y] of notEmpty(bars).flatMap(({ points }) => points)) {
        expect(Math.min(x, y, width - x, height - y)).toBeGreaterThan(6);
      }
    }
  });
});

describe('tiles', () => {
  const floorboard = templates.filter(({ id }) => id === 'floorboard');
  const file = printed('A4', floorboard);
  const tiling = tilingOf(floorboard[0]!, 'A4');

  it('are many enough to be worth testing', () => {
    expect(tiling.columns).toBeGreaterThan(2);
    expect(file.pages).toHaveLength(tiling.tiles.length);
  });

  it('meet: two neighbours laid over one another by their marks show the same lines', () => {
    for (let k = 0; k + 1 < tiling.columns; k++) {
      const [left, right] = [file.pages[k]!, file.pages[k + 1]!];
      const onLeft = crossesOn(left).filter(([x]) => x > left.width / 2);
      const onRight = crossesOn(right).filter(([x]) => x < right.width / 2);
      expect(onLeft.length).toBeGreaterThanOrEqual(2);
      expect(onRight.length).toBe(onLeft.length);
      const shifts = onLeft.map(([x, y], i) => [x - onRight[i]![0], y - onRight[i]![1]] as const);
      for (const shift of shifts) expect(distance(shift, shifts[0]!)).toBeLessThan(SCALE_TOLERANCE_MM);
      const [dx, dy] = shifts[0]!;
      const moved = right.paths.map(({ points }) => points.map(([x, y]) => [x + dx, y + dy] as const));
      const edges = left.paths.filter(
        ({ points: [a, b] }) => b && Math.abs(distance(a!, b) - lengthOfBoard()) < 0.1,
      );
      expect(edges.length).toBeGreaterThan(1);
      for (const { points } of edges) {
        expect(
          moved.some(
            (other) =>
              other.length === points.length &&
              other.every((p, i) => distance(p, points[i]!) < SCALE_TOLERANCE_MM),
          ),
        ).toBe(true);
      }
    }
  });

  it('overlap by at least 10 mm', () => {
    const [a, b] = tiling.tiles;
    expect(a!.shows.maxX - b!.shows.minX).toBeGreaterThanOrEqual(10);
  });

  it('say which neighbour joins where, and show a map of all pages', () => {
    const words = wordsOf(file.pages[0]!);
    expect(words).toContain('joins A2');
    for (const { name } of tiling.tiles.slice(0, 1)) expect(words).toContain(name);
    const cells = (page: ReadPage) => page.paths.filter(({ painted }) => painted === 'both');
    for (const page of file.pages) expect(cells(page)).toHaveLength(tiling.tiles.length);
  });

  function lengthOfBoard(): number {
    const [edge] = linesOn(floorboard[0]!.shapes, 'outline');
    return edge ? distance(edge.points[0]!, edge.points[1]!) : 0;
  }
});

describe('a template file', () => {
  it('is the same to the byte for equal input', () => {
    const make = () =>
      finished(templatePdf(templates, { paper: 'A4', stamp: inventedStamp(), words: english })).made.bytes;
    expect(Buffer.compare(make(), make())).toBe(0);
  });

  it('carries no other date than its revision’s', () => {
    const file = printed('A4');
    expect(file.info.CreationDate).toBe('D:20260504162000Z');
    expect(file.info.ModDate).toBe('D:20260504162000Z');
  });

  it('asks viewers not to fit it to the page, and embeds every font', () => {
    const file = printed('Letter');
    expect(file.catalogue).toContain('/PrintScaling /None');
    expect(file.fonts.length).toBeGreaterThan(0);
    for (const { embedded, name } of file.fonts) expect(embedded, name).toBe(true);
  });

  it('is made one page a step, so that it can be shown and stopped', () => {
    const { steps } = finished(
      templatePdf(templates, { paper: 'A3', stamp: inventedStamp(), words: english }),
    );
    expect(steps).toBe(pageCount(templates, 'A3'));
  });
});

describe('the foot of a page', () => {
  const pagesWith = (width: number, units: 'mm' | 'in', paper: PaperName) => {
    const out = inventedSetOut({ floorWidthM: width, options: { units } });
    const given = { paper, stamp: inventedStamp(), words: english, units };
    return readPdf(finished(templatePdf(templatesOf(out), given)).made.bytes).pages.map(({ texts }) =>
      texts.map(({ text }) => text),
    );
  };

  it('names the unit of the figures, and the least radius has it too', () => {
    for (const page of notEmpty(pagesWith(0.24, 'in', 'A3'))) {
      expect(page.join('|')).toContain('Full size, inches');
      expect(page.join('|')).not.toContain('millimetres');
    }
    expect(pagesWith(0.24, 'in', 'A3').flat().join('|')).toMatch(/least radius \d+( \d+\/\d+)? in/);
    expect(pagesWith(0.24, 'mm', 'A3').flat().join('|')).toMatch(
      /least radius \d+ mm.*Full size, millimetres/,
    );
  });

  it('counts rows and columns as far as there are pages: no second row is looked for in vain', () => {
    const labels = pagesWith(0.22, 'mm', 'Letter').flatMap((page) =>
      page.flatMap((text) => {
        const found = /^Floorboard.* ([A-Z])(\d+) of (\d+ × \d+)$/.exec(text);
        return found ? [{ row: found[1]!, column: Number(found[2]), grid: found[3]! }] : [];
      }),
    );
    for (const { grid } of notEmpty(labels)) {
      const same = labels.filter((label) => label.grid === grid);
      const rows = Math.max(...same.map(({ row }) => row.charCodeAt(0) - 64));
      const columns = Math.max(...same.map(({ column }) => column));
      expect(grid).toBe(`${columns} × ${rows}`);
    }
  });
});
