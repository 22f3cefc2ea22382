import { roleOf } from '../graphics/shape.ts';
import { boundsOf, type DrawingBounds } from './drawing-bounds.ts';
import { type DrawnPart, drawnParts, holds, partShows } from './drawn-parts.ts';
import { type PageSize, type PaperName, pageOf } from './paper.ts';
import type { FullSizeDrawing, MillimetrePoint, PlainShape, TemplateLayer } from './template-drawing.ts';

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
const SHARES = [0, -0.25, 0.25, -0.5, 0.5, -0.75, 0.75, -1, 1] as const;
const PLACES = SHARES.flatMap((x) => SHARES.map((y): MillimetrePoint => [x, y]));
/** Where none of them is free of cuts, finer ones are tried along and across the best. */
const FINE = Array.from({ length: 33 }, (_, k) => (k - 16) / 16);

/**
 * Lays a drawing out on a paper, landscape or portrait, whichever needs fewer pages (portrait when equal). Always full size;
 * pages that would show nothing of their own are left out. Where its pages leave room it lies so that there are fewest of them, that their
 * edges cut the fewest words, and that the seams run through the fewest words and marks of points.
 */
export function tilingOf(drawing: FullSizeDrawing, paper: PaperName): Tiling {
  const parts = drawnParts(drawing.shapes);
  const bounds = boundsOf(drawing.shapes);
  const on = (orientation: { landscape: boolean }) =>
    placedBest(laidOut(pageOf(paper, orientation), bounds), { bounds, parts, aside: drawing.aside ?? [] });
  const portrait = on({ landscape: false });
  const landscape = on({ landscape: true });
  return landscape.tiles.length < portrait.tiles.length ? landscape : portrait;
}

/**
 * A tiling moved within the room that it leaves: fewest pages, then fewest words that lie whole on none of them, then fewest words
 * and marks of points that a seam runs through.
 */
function placedBest(
  tiling: Tiling,
  {
    bounds,
    parts,
    aside,
  }: { bounds: DrawingBounds; parts: readonly DrawnPart[]; aside: readonly TemplateLayer[] },
): Tiling {
  if (tiling.tiles.length === 1) return tiling;
  const { minX, maxY } = tiling.tiles[0]!.shows;
  const [roomX, roomY] = [bounds.minX - AROUND_MM - minX, maxY - bounds.maxY - AROUND_MM];
  const words = boxesOf(parts, ({ kind }) => kind === 'text');
  const points = boxesOf(parts, (shape) => POINT_LAYERS.has(roleOf(shape))).filter(isSmall);
  const kept = [...words, ...points];
  const placed = ([x, y]: MillimetrePoint) => {
    const moved = movedTiling(tiling, [x * Math.max(0, roomX), y * Math.max(0, roomY)]);
    const tiles = needed(moved, parts, aside);
    const cut = words.filter((box) => !tiles.some(({ shows }) => holds(shows, box))).length;
    const crossed = kept.filter((box) => onSeam(box, tiles)).length;
    const step = kept.length + 1;
    return {
      place: [x, y] as const,
      tiling: { ...moved, tiles },
      faults: cut + crossed,
      cost: (tiles.length * step + cut) * step + crossed,
    };
  };
  const bestOf = (places: readonly MillimetrePoint[]) =>
    places.map(placed).reduce((best, each) => (each.cost < best.cost ? each : best));
  const coarse = bestOf(PLACES);
  if (coarse.faults === 0) return coarse.tiling;
  const along = bestOf([coarse.place, ...FINE.map((x): MillimetrePoint => [x, coarse.place[1]])]);
  return bestOf([along.place, ...FINE.map((y): MillimetrePoint => [along.place[0], y])]).tiling;
}

/** What marks a point that is worked at. */
const POINT_LAYERS: ReadonlySet<string> = new Set(['centreMark', 'drillNow'] satisfies TemplateLayer[]);
/** Marks of points are smaller than this, millimetres; a longer line runs over seams as it must. */
const POINT_MM = 30;

function isSmall({ minX, maxX, minY, maxY }: DrawingBounds): boolean {
  return Math.max(maxX - minX, maxY - minY) < POINT_MM;
}

/** Boxes round the parts of a kind. */
function boxesOf(parts: readonly DrawnPart[], isWanted: (shape: PlainShape) => boolean): DrawingBounds[] {
  return parts.filter(({ shape }) => isWanted(shape)).map(({ box }) => box);
}

/** Whether the line that is cut along between two pages runs through a box. */
function onSeam(box: DrawingBounds, tiles: readonly Tile[]): boolean {
  return tiles.some(({ column, row, shows }) => {
    const next = (columns: number, rows: number) =>
      tiles.some((other) => other.column === column + columns && other.row === row + rows);
    const [x, y] = [shows.maxX - OVERLAP_MM / 2, shows.minY + OVERLAP_MM / 2];
    const [tall, wide] = [
      box.maxY > shows.minY && box.minY < shows.maxY,
      box.maxX > shows.minX && box.minX < shows.maxX,
    ];
    return (
      (tall && box.minX < x && box.maxX > x && next(1, 0)) ||
      (wide && box.minY < y && box.maxY > y && next(0, 1))
    );
  });
}

/**
 * The pages that show something no other page shows; of two that show the same in their overlap one is kept. One that shows only
 * what is worth no page by itself is kept where the others would fall apart without it.
 */
function needed(tiling: Tiling, parts: readonly DrawnPart[], aside: readonly TemplateLayer[]): Tile[] {
  let kept = [...tiling.tiles];
  for (const tile of tiling.tiles) {
    const own = ownOf(tile, kept);
    const others = kept.filter((other) => other !== tile);
    const seen = parts.filter((part) => partShows(part, own));
    const telling = seen.some(
      ({ shape }) => shape.kind === 'text' || !aside.some((layer) => layer === shape.of),
    );
    if (seen.length === 0 || (!telling && others.length > 0 && hangTogether(others))) kept = others;
  }
  return kept;
}

/** Whether pages can be glued to one sheet: each is reached from the first over common edges. */
function hangTogether(tiles: readonly Tile[]): boolean {
  const reached = [tiles[0]!];
  for (const { column, row } of reached) {
    for (const tile of tiles) {
      const beside = Math.abs(tile.column - column) + Math.abs(tile.row - row) === 1;
      if (beside && !reached.includes(tile)) reached.push(tile);
    }
  }
  return reached.length === tiles.length;
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

/** The same pages over another part of the drawing. */
function movedTiling(tiling: Tiling, [dx, dy]: MillimetrePoint): Tiling {
  const tiles = tiling.tiles.map((tile) => {
    const { minX, maxX, minY, maxY } = tile.shows;
    return { ...tile, shows: { minX: minX + dx, maxX: maxX + dx, minY: minY + dy, maxY: maxY + dy } };
  });
  const registration = tiling.registration.map(([x, y]): MillimetrePoint => [x + dx, y + dy]);
  return { ...tiling, tiles, registration };
}

/** The window of a page, from its top left corner, and the room in it for what has to lie on one page. Millimetres. */
export function windowOf({ width, height }: PageSize): Pick<Tiling, 'window'> & {
  readonly room: { readonly width: number; readonly height: number };
} {
  const window = {
    left: PAGE_MARGIN_MM + SIDE_STRIP_MM,
    top: PAGE_MARGIN_MM,
    width: width - 2 * PAGE_MARGIN_MM - SIDE_STRIP_MM,
    height: height - 2 * PAGE_MARGIN_MM - FOOT_STRIP_MM,
  };
  return {
    window,
    room: { width: window.width - 2 * AROUND_MM, height: window.height - 2 * AROUND_MM },
  };
}

/** Pages of a drawing that lies in the middle of them. */
function laidOut(page: PageSize, { minX, minY, maxX, maxY }: DrawingBounds): Tiling {
  const size = { width: maxX - minX + 2 * AROUND_MM, height: maxY - minY + 2 * AROUND_MM };
  const [midX, midY] = [(minX + maxX) / 2, (minY + maxY) / 2];
  const { window } = windowOf(page);
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
