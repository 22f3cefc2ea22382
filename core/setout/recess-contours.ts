import { pointsOf } from '../graphics/shape.ts';
import { bareLength, type SheetUnits } from '../text/sheet-length.ts';
import { recessOutline } from './knee-recess.ts';
import type { PadBlock } from './pad-block.ts';
import { type MillimetrePoint, ring, type TemplateShape, textAt } from './template-drawing.ts';

/** Depth lines are drawn at every so many millimetres below the top of the block. */
export const DEPTH_STEP_MM = 5;
/** A hollow that is open aft runs out past the block's end by so much, so that its contour closes off the wood. */
const RUN_OUT_MM = 5;
/** Height of the figures on depth lines, millimetres. */
const FIGURE_MM = 2;

/** Layers of the hollow: its edge and its depth lines, finished over the foam and as cut in the wood. */
type HollowLayer = 'recess' | 'depthLine' | 'foamCut' | 'woodLine';

/**
 * The hollow at a level as one closed contour; none where it does not reach. Where the hollow is open aft the contour closes
 * outside the block, so that it never lies on the block's own outline.
 */
export function hollowAt(
  layer: HollowLayer,
  { recess }: Pick<PadBlock, 'recess'>,
  at: { level: number; foam: number },
): TemplateShape[] {
  const outline = recessOutline(recess, at);
  if (!outline) return [];
  if (!outline.open) return [ring(layer, outline.points)];
  const past = recessOutline({ ...recess, aftEnd: recess.aftEnd - RUN_OUT_MM }, at) ?? outline;
  return [ring(layer, past.points)];
}

/** Depths of the lines under the top, millimetres, for a hollow so deep. */
function depthsOf(deepest: number): number[] {
  const count = Math.ceil(deepest / DEPTH_STEP_MM) - 1;
  return Array.from({ length: Math.max(0, count) }, (_, k) => DEPTH_STEP_MM * (k + 1));
}

/** Depth lines of the finished surface every 5 mm below the block's top, each with its depth in it at its fore end. */
export function finishedLines(pad: PadBlock, units: SheetUnits): TemplateShape[] {
  return depthsOf(pad.recess.depth).flatMap((depth) =>
    withDepth('depthLine', pad, { depth, foam: 0, units, place: 'fore' }),
  );
}

/** Depth lines of the wood's surface under the foam, each with its depth on its right. */
export function woodLines(pad: PadBlock, foam: number, units: SheetUnits): TemplateShape[] {
  if (foam <= 0) return [];
  return depthsOf(pad.recess.depth + foam).flatMap((depth) =>
    withDepth('woodLine', pad, { depth, foam, units, place: 'right' }),
  );
}

/** A line of equal depth with its depth written in it, on the side asked for. */
function withDepth(
  layer: HollowLayer,
  pad: PadBlock,
  given: { depth: number; foam: number; units: SheetUnits; place: 'fore' | 'right' },
): TemplateShape[] {
  const { depth, foam, units, place } = given;
  const lines = hollowAt(layer, pad, { level: pad.recess.depth - depth, foam });
  return lines.flatMap((shape) => {
    if (shape.kind !== 'line') return [];
    const [x, y] = outermost(shape.lines.flatMap(pointsOf), place);
    // The line stands open where its figure is, as on a chart.
    const how = { height: FIGURE_MM, anchor: 'middle', clear: true } as const;
    return [shape, textAt(bareLength(depth, units), [x, y - FIGURE_MM / 2], how)];
  });
}

/** The same shapes with all figures after the lines, so that no line is drawn over a figure. */
export function figuresLast(shapes: readonly TemplateShape[]): TemplateShape[] {
  return shapes.toSorted((a, b) => Number(a.kind === 'text') - Number(b.kind === 'text'));
}

/** Figures at a line's fore end stand this far to port of the axis, of the line's half-breadth: clear of the axis. */
const OFF_AXIS = 0.35;

/** Where a figure stands in a line: at its fore end to port of the axis, or at its broadest place on the right. */
function outermost(points: readonly MillimetrePoint[], place: 'fore' | 'right'): MillimetrePoint {
  const most = (of: (point: MillimetrePoint) => number) =>
    points.reduce((best, point) => (of(point) > of(best) ? point : best));
  if (place === 'fore') {
    const [, broadest] = most(([, across]) => across);
    return most(([along, across]) => (across >= OFF_AXIS * broadest ? along : -Infinity));
  }
  return most(([, across]) => -across);
}
