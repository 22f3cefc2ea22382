import type { DrawingBounds } from '../../core/setout/drawing-bounds.ts';
import { showsIn } from '../../core/setout/drawn-parts.ts';
import type { PaperName } from '../../core/setout/paper.ts';
import { onPage, onPaper, type Placement } from '../../core/setout/paper-marks.ts';
import { type SheetStamp, stampLine } from '../../core/setout/sheet-stamp.ts';
import type { FullSizeDrawing, MillimetrePoint } from '../../core/setout/template-drawing.ts';
import { pagesOf } from '../../core/setout/template-pages.ts';
import {
  FOOT_STRIP_MM,
  OVERLAP_MM,
  PAGE_MARGIN_MM,
  SIDE_STRIP_MM,
  type Tile,
  type Tiling,
} from '../../core/setout/tiling.ts';
import type { SheetUnits } from '../../core/text/sheet-length.ts';
import type { Words } from '../../core/text/words.ts';
import { CHECK_BAR_MM } from './check-bars.ts';
import { drawPaper } from './pdf/draw-shapes.ts';
import { fittedText } from './pdf/fitted-text.ts';
import { createSheetPdf, type SheetPdf, type Type } from './pdf/sheet-pdf.ts';

const INK = '#1f2a33';
const SOFT = '#5c6a72';
const RULE = '#b9b4a6';
const MARK = '#b3261e';
/** Arms and ring of a registration mark, millimetres. */
const CROSS_ARM_MM = 4.5;
const CROSS_RING_MM = 2;
/** Greatest width and height of the page map, millimetres. */
const PAGE_MAP_MM = 34;
const PAGE_MAP_TALL_MM = 20;

/** A finished file and the scripts of letters in it that no font had. */
export interface PrintedPdf {
  readonly bytes: Uint8Array;
  readonly missing: ReadonlySet<string>;
}

/**
 * Templates at full size on as many pages as they need, one page a step. Every page carries two check bars of 100 mm, a
 * page map, paper, scale and the units of its figures; neighbouring pages overlap and share registration marks.
 */
export function* templatePdf(
  drawings: readonly FullSizeDrawing[],
  given: { paper: PaperName; stamp: SheetStamp; words: Words; units?: SheetUnits },
): Generator<void, PrintedPdf> {
  const { paper, stamp, words, units = 'mm' } = given;
  const pdf = createSheetPdf({
    title: words.say('paper.templates.title', { athlete: stamp.athleteName, boat: stamp.boatName }),
    subject: words.say('paper.templates.subject'),
    keptAt: stamp.keptAt,
    lang: words.language,
  });
  const laid = drawings.flatMap((drawing) => pagesOf(drawing, paper));
  const pages = laid.reduce((sum, { tiling }) => sum + tiling.tiles.length, 0);
  let page = 0;
  for (const { drawing, tiling } of laid) {
    for (const tile of tiling.tiles) {
      page += 1;
      pdf.addPage(tiling.page);
      pdf.figure(words.say('setout.templates.picture', { title: drawing.title }), () =>
        drawTile(pdf, { drawing, tiling, tile, words }),
      );
      const count = words.say('work-title.count', { page, pages });
      drawFoot(pdf, { drawing, tiling, tile, stamp, count, words, units });
      yield;
    }
  }
  return { bytes: pdf.bytes(), missing: pdf.missing };
}

interface TilePage {
  readonly drawing: FullSizeDrawing;
  readonly tiling: Tiling;
  readonly tile: Tile;
}

function placementOf({ tiling: { window }, tile }: TilePage): Placement {
  return { scale: 1, origin: [window.left - tile.shows.minX, window.top + tile.shows.maxY] };
}

function drawTile(pdf: SheetPdf, given: TilePage & { words: Words }): void {
  const { drawing, tiling, tile, words } = given;
  const placement = placementOf(given);
  pdf.within(tiling.window, () => {
    const shown = drawing.shapes.filter((shape) => showsIn(shape, tile.shows));
    drawPaper(pdf, onPaper(shown, placement));
    drawSeams(pdf, given, { placement, words });
    for (const mark of tiling.registration) {
      if (inside(mark, tile.shows)) registrationMark(pdf, onPage(mark, placement));
    }
  });
  pdf.rect(tiling.window, { stroke: RULE, width: 0.15 });
}

function inside([x, y]: MillimetrePoint, { minX, minY, maxX, maxY }: DrawingBounds): boolean {
  return x >= minX && x <= maxX && y >= minY && y <= maxY;
}

function registrationMark(pdf: SheetPdf, [x, y]: MillimetrePoint): void {
  const ink = { stroke: MARK, width: 0.15 };
  pdf.path(
    [
      [x - CROSS_ARM_MM, y],
      [x + CROSS_ARM_MM, y],
    ],
    ink,
  );
  pdf.path(
    [
      [x, y - CROSS_ARM_MM],
      [x, y + CROSS_ARM_MM],
    ],
    ink,
  );
  pdf.circle([x, y], CROSS_RING_MM, ink);
}

/** Lines down the middle of each overlap to cut along, with the name of the tile that joins there. */
function drawSeams(
  pdf: SheetPdf,
  { tiling, tile }: TilePage,
  { placement, words }: { placement: Placement; words: Words },
): void {
  const { minX, minY, maxX, maxY } = tile.shows;
  const ink = { stroke: SOFT, width: 0.12, dash: [1.5, 1.5] };
  const half = OVERLAP_MM / 2;
  const neighbour = (column: number, row: number) =>
    tiling.tiles.find((other) => other.column === column && other.row === row)?.name;
  const seam = (
    from: MillimetrePoint,
    to: MillimetrePoint,
    joins: string | undefined,
    label: { at: MillimetrePoint; turnDeg: number },
  ) => {
    if (!joins) return;
    pdf.path([onPage(from, placement), onPage(to, placement)], ink);
    pdf.text(words.say('paper.joins', { name: joins }), onPage(label.at, placement), {
      size: 2.6,
      colour: SOFT,
      anchor: 'middle',
      turnDeg: label.turnDeg,
    });
  };
  // A third of the way along, where axes seldom run.
  const [midX, midY] = [minX + (maxX - minX) / 3, minY + (maxY - minY) / 3];
  const { column, row } = tile;
  seam([maxX - half, minY], [maxX - half, maxY], neighbour(column + 1, row), {
    at: [maxX - 1.5, midY],
    turnDeg: 90,
  });
  seam([minX + half, minY], [minX + half, maxY], neighbour(column - 1, row), {
    at: [minX + 3.5, midY],
    turnDeg: 90,
  });
  seam([minX, maxY - half], [maxX, maxY - half], neighbour(column, row - 1), {
    at: [midX, maxY - 3.5],
    turnDeg: 0,
  });
  seam([minX, minY + half], [maxX, minY + half], neighbour(column, row + 1), {
    at: [midX, minY + 1.5],
    turnDeg: 0,
  });
}

/** Columns by rows, as far as there are pages: `3 × 1` where nothing lies on the second row. */
function gridText({ tiles }: Tiling): string {
  const columns = 1 + Math.max(...tiles.map(({ column }) => column));
  const rows = 1 + Math.max(...tiles.map(({ row }) => row));
  return `${columns} × ${rows}`;
}

/** Title, who for, how to print, page map, and the two check bars. */
function drawFoot(
  pdf: SheetPdf,
  given: TilePage & { stamp: SheetStamp; count: string; words: Words; units: SheetUnits },
): void {
  const { drawing, tiling, tile, stamp, count, words, units } = given;
  const { width, height, paper, landscape } = tiling.page;
  const left = PAGE_MARGIN_MM + SIDE_STRIP_MM;
  const right = width - PAGE_MARGIN_MM;
  const top = height - PAGE_MARGIN_MM - FOOT_STRIP_MM;
  const tileText =
    tiling.tiles.length === 1
      ? ''
      : words.say('work-title.count', { page: tile.name, pages: gridText(tiling) });
  const room = right - left - PAGE_MAP_MM - 4;
  const line = (text: string, down: number, type: Type) =>
    fittedText(pdf, text, { ...type, at: [left, top + down], width: room });
  line(words.beside([drawing.title, tileText]), 6, { size: 4.4, weight: 'strong', tag: 'H1' });
  line(stampLine(stamp, words), 10.6, { size: 3.1 });
  const how = words.beside([
    landscape ? words.say('paper.landscape', { paper }) : paper,
    '1:1',
    words.say('paper.full-size', { units, seen: drawing.seen }),
  ]);
  line(how, 14.6, { size: 2.8, colour: SOFT });
  if (drawing.facing) line(drawing.facing, 22.2, { size: 3.1, weight: 'strong' });
  pdf.text(words.say('paper.print-full'), [left, top + 18.4], {
    size: 2.8,
    weight: 'strong',
  });
  pdf.text(count, [right, top + FOOT_STRIP_MM - 1], { size: 2.8, colour: SOFT, anchor: 'end' });
  drawPageMap(pdf, tiling, { tile, right, top: top + 2.5 });
  drawBars(pdf, [left, height - PAGE_MARGIN_MM - 3]);
}

/** Both bars grow from one corner: the level one to the right, the upright one up beside the drawing. */
function drawBars(pdf: SheetPdf, [left, y]: MillimetrePoint): void {
  const ink = { stroke: INK, width: 0.2 };
  const x = left - SIDE_STRIP_MM / 2;
  pdf.path(
    [
      [x, y],
      [x + CHECK_BAR_MM, y],
    ],
    ink,
  );
  pdf.path(
    [
      [x, y],
      [x, y - CHECK_BAR_MM],
    ],
    ink,
  );
  // No tick at the corner: it would reach past the end of the other bar, and a ruler would measure that too.
  for (let at = 10; at <= CHECK_BAR_MM; at += 10) {
    const reach = at % 50 === 0 ? 2 : 1;
    pdf.path(
      [
        [x + at, y - reach],
        [x + at, y + reach],
      ],
      ink,
    );
    pdf.path(
      [
        [x - reach, y - at],
        [x + reach, y - at],
      ],
      ink,
    );
  }
  pdf.text('100 mm', [x + CHECK_BAR_MM + 2, y + 1], { size: 2.8 });
  pdf.text('100 mm', [x - 1.6, y - CHECK_BAR_MM + 14], { size: 2.8, turnDeg: 90 });
}

/** A small plan of all tiles with the present one filled. */
function drawPageMap(
  pdf: SheetPdf,
  tiling: Tiling,
  { tile, right, top }: { tile: Tile; right: number; top: number },
): void {
  const { columns, rows, window } = tiling;
  const cell = Math.min(8, PAGE_MAP_MM / columns, (PAGE_MAP_TALL_MM / rows) * (window.width / window.height));
  const tall = (cell * window.height) / window.width;
  for (const { column, row, name } of tiling.tiles) {
    const box = { left: right - (columns - column) * cell, top: top + row * tall, width: cell, height: tall };
    const now = name === tile.name;
    pdf.rect(box, { stroke: INK, width: 0.15, fill: now ? INK : '#ffffff' });
    if (tiling.tiles.length > 1 && cell >= 5) {
      pdf.text(name, [box.left + cell / 2, box.top + tall / 2 + 0.9], {
        size: 2.4,
        anchor: 'middle',
        colour: now ? '#ffffff' : INK,
      });
    }
  }
}
