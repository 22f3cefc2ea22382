import { boundsOf } from './drawing-bounds.ts';
import { packedViews } from './pack-views.ts';
import { type PageSize, type PaperName, pageOf } from './paper.ts';
import { type FullSizeDrawing, shifted, type TemplateShape } from './template-drawing.ts';
import { type Tiling, tilingOf, windowOf } from './tiling.ts';

/** A drawing, or some views of it, as it lies on its pages. */
export interface LaidDrawing {
  readonly drawing: FullSizeDrawing;
  readonly tiling: Tiling;
}

/** Whole views are worth so many pages more. */
const SEAMLESS_PAGES = 1;

type View = readonly TemplateShape[];

/**
 * A drawing on pages of a paper. Views that have room on one page share it, whole; one that is greater than a page has pages of
 * its own. So no seam runs through a view that could do without, and no name of a view is torn off it. Where that takes more than
 * one page more than the drawing laid out as one, it is laid out so.
 */
export function pagesOf(drawing: FullSizeDrawing, paper: PaperName): LaidDrawing[] {
  const asOne = { drawing, tiling: tilingOf(drawing, paper) };
  if (!drawing.views || asOne.tiling.tiles.length === 1) return [asOne];
  const laid: LaidDrawing[] = [];
  let left = [...drawing.views];
  while (left.length > 0) {
    const [taken, shapes] = onOnePage(left, paper);
    const part = { ...drawing, shapes };
    laid.push({ drawing: part, tiling: tilingOf(part, paper) });
    left = left.filter((view) => !taken.includes(view));
  }
  return countOf(laid) <= asOne.tiling.tiles.length + SEAMLESS_PAGES ? laid : [asOne];
}

/** How many pages drawings take on a paper. */
export function pageCount(drawings: readonly FullSizeDrawing[], paper: PaperName): number {
  return countOf(drawings.flatMap((drawing) => pagesOf(drawing, paper)));
}

function countOf(laid: readonly LaidDrawing[]): number {
  return laid.reduce((sum, { tiling }) => sum + tiling.tiles.length, 0);
}

/** The first view with as many others as find room on its page, and all their shapes as they lie there. */
function onOnePage(views: readonly View[], paper: PaperName): [taken: readonly View[], shapes: View] {
  const [first, ...others] = views;
  const together = subsetsOf(others)
    .filter(({ length }) => length > 0)
    .sort((a, b) => b.length - a.length)
    .map((some) => [first!, ...some]);
  const pages = [false, true].map((landscape) => pageOf(paper, { landscape }));
  for (const taken of together) {
    for (const page of pages) {
      const shapes = packed(taken, page);
      if (shapes) return [taken, shapes];
    }
  }
  return [[first!], first!];
}

/** Views moved to their places on one page; null where it has no room for them. */
function packed(views: readonly View[], page: PageSize): TemplateShape[] | null {
  const boxes = views.map((view) => boundsOf(view));
  const places = packedViews(
    boxes.map(({ minX, maxX, minY, maxY }) => ({ width: maxX - minX, height: maxY - minY })),
    windowOf(page).room,
  );
  return (
    places &&
    views.flatMap((view, k) => {
      const [right, down] = places[k]!;
      return shifted(view, [right - boxes[k]!.minX, -down - boxes[k]!.maxY]);
    })
  );
}

/** Every choice of some of a few things, in their order. */
function subsetsOf<T>(given: readonly T[]): T[][] {
  const [first, ...others] = given;
  if (first === undefined) return [[]];
  const without = subsetsOf(others);
  return [...without, ...without.map((set) => [first, ...set])];
}
