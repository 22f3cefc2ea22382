import { type Lines, pointsOf } from '../graphics/shape.ts';
import { dimensionLines } from './dimension-lines.ts';
import { boundsOf, type DrawingBounds } from './drawing-bounds.ts';
import { type PageSize, type PaperName, pageOf } from './paper.ts';
import type {
  FullSizeDrawing,
  MillimetrePoint,
  PlainShape,
  TemplateLayer,
  TemplateShape,
} from './template-drawing.ts';

/** Printers leave this much of a page's edge white, millimetres (office printers: 4 to 6.4). */
export const PAGE_MARGIN_MM = 8;
/** Strip under the drawing for title, page map and level check bar, millimetres. */
export const FOOT_STRIP_MM = 28;
/** Strip beside the drawing for the upright check bar, millimetres. */
export const SIDE_STRIP_MM = 9;
/** Neighbouring tiles show the same stretch of drawing over this width, millimetres. */
export const OVERLAP_MM = 12;
/** White around the drawing inside its tiles, millimetres. */
const AROUND_MM = 3;

/** One page of a template that is too big for one. */
export interface Tile {
  /** Rows are lettered from the top, columns numbered from the left: A1, A2, B1 … */
  readonly name: string;
  /** Counted from 0. */
  readonly column: number;
  /** From the top. */
  readonly row: number;
  /** The part of the drawing in the tile's window, millimetres of the drawing. */
  readonly shows: DrawingBounds;
}

/** A drawing laid out on pages at full size. */
export interface Tiling {
  /** The paper that it is printed on. */
  readonly page: PageSize;
  /** The window that the drawing shows through, millimetres from the page's top left corner. */
  readonly window: {
    readonly left: number;
    readonly top: number;
    readonly width: number;
    readonly height: number;
  };
  /** So many pages wide and high. */
  readonly columns: number;
  /** One below the other. */
  readonly rows: number;
  /** Pages that show something, row by row. */
  readonly tiles: readonly Tile[];
  /** Crosses to lay neighbouring tiles over one another by, in the drawing's millimetres. */
  readonly registration: readonly MillimetrePoint[];
}

/** Where in the room that its pages leave a drawing is tried, along and across: in the middle first. */
const ACROSS = [0, -0.25, 0.25, -0.5, 0.5, -0.75, 0.75, -1, 1] as const;
const PLACES = [0, -0.5, 0.5, -1, 1].flatMap((x) => ACROSS.map((y) => [x, y] as const));

/**
 * Lays a drawing out on a paper, landscape or portrait, whichever needs fewer pages (portrait when equal). Always full size;
 * pages that would show nothing of their own are left out. Where its pages leave room it lies so that there are fewest of them, and that their
 * edges cut the fewest words.
 */
export function tilingOf(drawing: FullSizeDrawing, paper: PaperName): Tiling {
  const parts = partsOf(drawing.shapes);
  const bounds = boundsOf(drawing.shapes);
  const on = (orientation: { landscape: boolean }) =>
    placedBest(laidOut(pageOf(paper, orientation), bounds), { bounds, parts });
  const portrait = on({ landscape: false });
  const landscape = on({ landscape: true });
  return landscape.tiles.length < portrait.tiles.length ? landscape : portrait;
}

/** A piece of a drawing with the box round it. */
interface DrawnPart {
  readonly shape: PlainShape;
  readonly box: DrawingBounds;
}

/** All shapes, dimensions as the lines and figures that they are drawn by. */
function partsOf(shapes: readonly TemplateShape[]): DrawnPart[] {
  return shapes
    .flatMap((shape) => (shape.kind === 'dimension' ? dimensionLines(shape, 1) : [shape]))
    .map((shape) => ({ shape, box: boundsOf([shape]) }));
}

/** A tiling moved within the room that it leaves: fewest pages, then fewest words that lie whole on none of them. */
function placedBest(
  tiling: Tiling,
  { bounds, parts }: { bounds: DrawingBounds; parts: readonly DrawnPart[] },
): Tiling {
  if (tiling.tiles.length === 1) return tiling;
  const { minX, maxY } = tiling.tiles[0]!.shows;
  const [roomX, roomY] = [bounds.minX - AROUND_MM - minX, maxY - bounds.maxY - AROUND_MM];
  const words = parts.filter(({ shape }) => shape.kind === 'text').map(({ box }) => box);
  const tried = PLACES.map(([x, y]) => {
    const moved = movedTiling(tiling, [x * Math.max(0, roomX), y * Math.max(0, roomY)]);
    const tiles = needed(moved, parts);
    const cut = words.filter((box) => !tiles.some(({ shows }) => holds(shows, box))).length;
    return { tiling: { ...moved, tiles }, cost: tiles.length * (words.length + 1) + cut };
  });
  return tried.reduce((best, each) => (each.cost < best.cost ? each : best)).tiling;
}

/** The pages that show something no other page shows; of two that show the same in their overlap one is kept. */
function needed(tiling: Tiling, parts: readonly DrawnPart[]): Tile[] {
  let kept = [...tiling.tiles];
  for (const tile of tiling.tiles) {
    const own = ownOf(tile, kept);
    if (!parts.some((part) => partShows(part, own))) kept = kept.filter((other) => other !== tile);
  }
  return kept;
}

/** What a page shows and none beside, over or under it: its window without the strips of those that are kept. */
function ownOf(
  { column, row, shows: { minX, maxX, minY, maxY } }: Tile,
  kept: readonly Tile[],
): DrawingBounds {
  const strip = (columns: number, rows: number) =>
    kept.some((other) => other.column === column + columns && other.row === row + rows) ? OVERLAP_MM : 0;
  return {
    minX: minX + strip(-1, 0),
    maxX: maxX - strip(1, 0),
    minY: minY + strip(0, 1),
    maxY: maxY - strip(0, -1),
  };
}

function holds(shows: DrawingBounds, box: DrawingBounds): boolean {
  return box.minX >= shows.minX && box.maxX <= shows.maxX && box.minY >= shows.minY && box.maxY <= shows.maxY;
}

/** The same pages over another part of the drawing. */
function movedTiling(tiling: Tiling, [dx, dy]: MillimetrePoint): Tiling {
  const tiles = tiling.tiles.map((tile) => {
    const { minX, maxX, minY, maxY } = tile.shows;
    return { ...tile, shows: { minX: minX + dx, maxX: maxX + dx, minY: minY + dy, maxY: maxY + dy } };
  });
  const registration = tiling.registration.map(([x, y]): MillimetrePoint => [x + dx, y + dy]);
  return { ...tiling, tiles, registration };
}

/** Whether any of a shape may show in a part of a drawing; false only where none of it does. */
export function showsIn(shape: TemplateShape, shows: DrawingBounds): boolean {
  return partsOf([shape]).some((part) => partShows(part, shows));
}

/** Whether anything of a part is seen in a window. */
function partShows({ shape, box }: DrawnPart, shows: DrawingBounds): boolean {
  const apart =
    box.minX > shows.maxX || box.maxX < shows.minX || box.minY > shows.maxY || box.maxY < shows.minY;
  if (apart) return false;
  return shape.kind !== 'line' || holds(shows, box) || crossesBox(shape, shows);
}

/** Whether any stretch of a line, or a lone point of it, lies in a box: a ring round a page leaves that page blank. */
function crossesBox({ lines, closed }: Lines<TemplateLayer>, box: DrawingBounds): boolean {
  return lines.map(pointsOf).some((points) => {
    const ends = closed ? [...points, points[0]!] : points;
    return ends.some((point, k) => segmentInBox(ends[k - 1] ?? point, point, box));
  });
}

/** Whether a straight stretch passes through a box (Liang and Barsky's clipping, 1984). */
function segmentInBox(a: MillimetrePoint, b: MillimetrePoint, box: DrawingBounds): boolean {
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  let [from, to] = [0, 1];
  const sides = [
    [-dx, a[0] - box.minX],
    [dx, box.maxX - a[0]],
    [-dy, a[1] - box.minY],
    [dy, box.maxY - a[1]],
  ] as const;
  for (const [into, room] of sides) {
    if (into === 0 && room < 0) return false;
    if (into < 0) from = Math.max(from, room / into);
    if (into > 0) to = Math.min(to, room / into);
  }
  return from <= to;
}

/** Pages of a drawing that lies in the middle of them. */
function laidOut(page: PageSize, { minX, minY, maxX, maxY }: DrawingBounds): Tiling {
  const size = { width: maxX - minX + 2 * AROUND_MM, height: maxY - minY + 2 * AROUND_MM };
  const [midX, midY] = [(minX + maxX) / 2, (minY + maxY) / 2];
  const window = {
    left: PAGE_MARGIN_MM + SIDE_STRIP_MM,
    top: PAGE_MARGIN_MM,
    width: page.width - 2 * PAGE_MARGIN_MM - SIDE_STRIP_MM,
    height: page.height - 2 * PAGE_MARGIN_MM - FOOT_STRIP_MM,
  };
  const stepX = window.width - OVERLAP_MM;
  const stepY = window.height - OVERLAP_MM;
  const columns = Math.max(1, Math.ceil((size.width - OVERLAP_MM) / stepX));
  const rows = Math.max(1, Math.ceil((size.height - OVERLAP_MM) / stepY));
  const left = midX - (columns * stepX + OVERLAP_MM) / 2;
  const top = midY + (rows * stepY + OVERLAP_MM) / 2;
  const tiles: Tile[] = [];
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      const minX = left + column * stepX;
      const maxY = top - row * stepY;
      tiles.push({
        name: `${String.fromCharCode(65 + row)}${column + 1}`,
        column,
        row,
        shows: { minX, maxX: minX + window.width, minY: maxY - window.height, maxY },
      });
    }
  }
  return {
    page,
    window,
    columns,
    rows,
    tiles,
    registration: crossings({ columns, rows, left, top, stepX, stepY }),
  };
}

/** Middles of the overlaps, and points level with them at the outer tiles' edges: at least two on every seam. */
function crossings(grid: {
  columns: number;
  rows: number;
  left: number;
  top: number;
  stepX: number;
  stepY: number;
}): MillimetrePoint[] {
  const { columns, rows, left, top, stepX, stepY } = grid;
  const marks: MillimetrePoint[] = [];
  for (let row = 0; row <= rows; row++) {
    for (let column = 0; column <= columns; column++) {
      const onSeam = (column > 0 && column < columns) || (row > 0 && row < rows);
      if (!onSeam) continue;
      marks.push([left + column * stepX + OVERLAP_MM / 2, top - row * stepY - OVERLAP_MM / 2]);
    }
  }
  return marks;
}
