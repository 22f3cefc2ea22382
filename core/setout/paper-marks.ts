import { dimensionLines } from './dimension-lines.ts';
import { LAYER_LINES, type LayerLine } from './layer-lines.ts';
import { CAPITALS_OVER_SIZE, type SheetInk } from './sheet-inks.ts';
import type { MillimetrePoint, PlainShape, TemplateLayer, TemplateShape } from './template-drawing.ts';

/** A line of points on the paper, open or closed; `line` null for a bare fill. */
export interface PathMark {
  readonly kind: 'path';
  readonly points: readonly MillimetrePoint[];
  readonly closed: boolean;
  readonly line: LayerLine | null;
  readonly fill: SheetInk | null;
}

/** A circle on the paper by centre and radius, millimetres; `fill` without a line is a dot. */
export interface CircleMark {
  readonly kind: 'circle';
  readonly centre: MillimetrePoint;
  readonly radius: number;
  readonly line: LayerLine | null;
  readonly fill: SheetInk | null;
}

/** Words on a baseline. `size` is millimetres of type; the turn is counter-clockwise about the anchor. */
export interface WordsMark {
  readonly kind: 'words';
  readonly text: string;
  readonly at: MillimetrePoint;
  readonly size: number;
  readonly strong: boolean;
  readonly ink: SheetInk;
  readonly anchor: 'start' | 'middle' | 'end';
  readonly turnDeg: number;
}

/**
 * What is put on paper, in millimetres from the page's top left corner, y down. Page and screen both draw these, so that
 * they cannot differ.
 */
export type PaperMark = PathMark | CircleMark | WordsMark;

/** Where a drawing comes to lie on a page. */
export interface Placement {
  /** Paper over full size: 1 for templates, 0.1 for 1:10. */
  readonly scale: number;
  /** The drawing's origin, millimetres from the page's top left corner. */
  readonly origin: MillimetrePoint;
  /** Fills of closed shapes by layer; without one a shape is a line. */
  readonly fills?: Partial<Readonly<Record<TemplateLayer, SheetInk>>>;
}

/** A point of a drawing (x right, y up, full size) on the page (x right, y down), millimetres. */
export function onPage([x, y]: MillimetrePoint, { scale, origin }: Placement): MillimetrePoint {
  return [origin[0] + x * scale, origin[1] - y * scale];
}

/** A path on the paper, millimetres. */
export function pathMark(
  points: readonly MillimetrePoint[],
  more: Partial<Pick<PathMark, 'closed' | 'line' | 'fill'>>,
): PathMark {
  return { kind: 'path', points, closed: false, line: null, fill: null, ...more };
}

/** Words on the paper: plain, in ink, from their anchor to the right unless said otherwise. */
export function wordsMark(
  text: string,
  at: MillimetrePoint,
  more: Partial<Omit<WordsMark, 'kind' | 'text' | 'at'>> & { size: number },
): WordsMark {
  return { kind: 'words', text, at, strong: false, ink: 'ink', anchor: 'start', turnDeg: 0, ...more };
}

/** Shapes in their layers' lines. Lettering, arrows and gaps keep their size on the paper at every scale. */
export function marksOfShapes(shapes: readonly TemplateShape[], placement: Placement): PaperMark[] {
  return shapes.flatMap((shape) => {
    const parts = shape.kind === 'dimension' ? dimensionLines(shape, placement.scale) : [shape];
    return parts.map((part) => markOf(part, placement));
  });
}

function markOf(shape: PlainShape, placement: Placement): PaperMark {
  const line = LAYER_LINES[shape.layer];
  switch (shape.kind) {
    case 'polyline': {
      const fill = shape.closed ? (placement.fills?.[shape.layer] ?? null) : null;
      const points = shape.points.map((point) => onPage(point, placement));
      return { kind: 'path', points, closed: shape.closed, line, fill };
    }
    case 'circle': {
      const radius = shape.radius * placement.scale;
      return { kind: 'circle', centre: onPage(shape.centre, placement), radius, line, fill: null };
    }
    case 'text':
      return wordsMark(shape.text, onPage(shape.at, placement), {
        size: shape.height / CAPITALS_OVER_SIZE,
        ink: line.ink,
        anchor: shape.anchor,
        turnDeg: shape.turnDeg,
      });
  }
}
