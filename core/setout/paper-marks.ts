import { areaOf, placedShape, type Shape, type Text } from '../graphics/shape.ts';
import { dimensionLines } from './dimension-lines.ts';
import type { SheetRole } from './layer-lines.ts';
import { CAPITALS_OVER_SIZE } from './sheet-inks.ts';
import {
  type MillimetrePoint,
  type PlainShape,
  type TemplateLayer,
  type TemplateShape,
  textAt,
} from './template-drawing.ts';

/**
 * What is put on paper, in millimetres from the page's top left corner, y down. Page and screen both draw these, so that
 * they cannot differ.
 */
export type PaperShape = Shape<SheetRole>;

/** Where a drawing comes to lie on a page. */
export interface Placement {
  /** Paper over full size: 1 for templates, 0.1 for 1:10. */
  readonly scale: number;
  /** The drawing's origin, millimetres from the page's top left corner. */
  readonly origin: MillimetrePoint;
  /** Fills of closed shapes by layer; without one a shape is a line. */
  readonly fills?: Partial<Readonly<Record<TemplateLayer, SheetRole>>>;
}

/** A point of a drawing (x right, y up, full size) on the page (x right, y down), millimetres. */
export function onPage([x, y]: MillimetrePoint, { scale, origin }: Placement): MillimetrePoint {
  return [origin[0] + x * scale, origin[1] - y * scale];
}

/** Words on the paper by the size of their type, millimetres: in ink, from their anchor to the right unless said otherwise. */
export function paperWords(
  text: string,
  at: MillimetrePoint,
  {
    size,
    ...more
  }: Partial<Pick<Text<SheetRole>, 'role' | 'anchor' | 'strong' | 'clear'>> & { size: number },
): PaperShape {
  return textAt<SheetRole>(text, at, { role: 'ink', ...more, height: size * CAPITALS_OVER_SIZE });
}

/** Shapes on the paper. Lettering, arrows and gaps keep their size at every scale. */
export function onPaper(shapes: readonly TemplateShape[], placement: Placement): PaperShape[] {
  return shapes.flatMap((shape) => {
    const parts = shape.kind === 'dimension' ? dimensionLines(shape, placement.scale) : [shape];
    return parts.flatMap((part) => placedOn(part, placement));
  });
}

/** A shape where it comes to lie, over its fill if its layer has one. */
function placedOn(shape: PlainShape, placement: Placement): PaperShape[] {
  const placed = placedShape(shape, (at) => onPage(at, placement), placement.scale);
  if (placed.kind !== 'line' || !placed.closed) return [placed];
  const fill = placement.fills?.[placed.role];
  return fill ? [areaOf(placed.of, { role: fill, outline: null }, placed.lines), placed] : [placed];
}
