import { type Disc, type Lines, lineThrough, placedShape, type Shape, type Text } from '../graphics/shape.ts';
import type { TemplateId } from './template-ids.ts';

/** A point of a drawing, millimetres at full size: x to the right, y up. Each drawing says what its x and y are. */
export type MillimetrePoint = readonly [x: number, y: number];

/**
 * Layers by the words of the trade. `drillNow` are the holes of the present setting, `drill` all others; `edge` is an
 * edge that lies on another level than the outline; `fitting` the outline of something that stands there; `person` is
 * where knee, shank and feet come; `paddlerA` to `paddlerF` the rings and letters of those who share a board.
 */
export const TEMPLATE_LAYERS = [
  'outline',
  'edge',
  'recess',
  'depthLine',
  'foamCut',
  'woodLine',
  'drill',
  'drillNow',
  'centreline',
  'centreMark',
  'axis',
  'toeLine',
  'fitting',
  'hull',
  'person',
  'paddlerA',
  'paddlerB',
  'paddlerC',
  'paddlerD',
  'paddlerE',
  'paddlerF',
  'checkBar',
  'dimension',
  'lettering',
] as const;
/** A layer's name; its line stands in `layer-lines.ts`, its name in CAD files with the files. */
export type TemplateLayer = (typeof TEMPLATE_LAYERS)[number];

/** What on a board is for laying the template on and looking, not for drilling: a page with nothing else is left out. */
export const BOARD_ASIDE = [
  'outline',
  'centreline',
  'centreMark',
  'fitting',
  'edge',
] as const satisfies readonly TemplateLayer[];

/** A dimension between two points of the drawing (millimetres at full size) with the figure that is written on it. */
export interface Dimension {
  readonly kind: 'dimension';
  /** What is measured, end to end, millimetres of the drawing. */
  readonly from: MillimetrePoint;
  readonly to: MillimetrePoint;
  /** How far to the left of from→to its line stands, millimetres on the paper; negative to the right. */
  readonly offset: number;
  /** The figure as written. */
  readonly text: string;
  /** Where along from→to the figure stands, 0 to 1; left out, in the middle. Aside where an axis crosses the middle. */
  readonly figureAt?: number;
}

/** What a dimension is drawn with, and everything else: shapes in millimetres at full size, a layer as role. */
export type PlainShape = Shape<TemplateLayer>;
/** Anything a drawing may hold. */
export type TemplateShape = PlainShape | Dimension;

/** A drawing at full size. */
export interface FullSizeDrawing {
  /** What it is a template of. */
  readonly title: string;
  /** What x and y are, and from where the drawing is seen. */
  readonly seen: string;
  /** Which knee, which face is up, where bow and port lie; left out until it goes on paper. */
  readonly facing?: string;
  /** All that is drawn, full size. */
  readonly shapes: readonly TemplateShape[];
  /** Layers that are worth no page by themselves; left out, each is. */
  readonly aside?: readonly TemplateLayer[];
  /** What is drawn by views that may lie apart on paper; left out where it is one view. */
  readonly views?: readonly (readonly TemplateShape[])[];
}

/** One of a seat's templates. */
export interface TemplateDrawing extends FullSizeDrawing {
  /** Names its file. */
  readonly id: TemplateId;
}

/** An open line through points, millimetres. */
export function line<R extends string = TemplateLayer>(
  role: R,
  ...points: readonly MillimetrePoint[]
): Lines<R> {
  return { kind: 'line', of: role, role, weight: 'contour', lines: [lineThrough(points)] };
}

/** A closed ring through points, millimetres. */
export function ring<R extends string = TemplateLayer>(
  role: R,
  points: readonly MillimetrePoint[],
): Lines<R> {
  return { ...line(role, ...points), closed: true };
}

/** A circle by centre and radius, millimetres. */
export function circle(role: TemplateLayer, at: MillimetrePoint, radius: number): Disc<TemplateLayer> {
  return { kind: 'disc', of: role, role, at, radius };
}

/** Words at a point; capitals 3.5 mm high (a nominal size of ISO 3098) unless said otherwise. */
export function textAt<R extends string = TemplateLayer>(
  text: string,
  at: MillimetrePoint,
  more: Partial<Pick<Text<R>, 'role' | 'height' | 'anchor' | 'turnDeg' | 'strong' | 'clear'>> = {},
): Text<R | 'lettering'> {
  return {
    kind: 'text',
    of: more.role ?? 'lettering',
    role: 'lettering',
    at,
    height: 3.5,
    text,
    anchor: 'start',
    turnDeg: 0,
    ...more,
  };
}

/** A dimension between two points, its line `offset` millimetres to the left of from→to (negative: to the right). */
export function dimension(
  from: MillimetrePoint,
  to: MillimetrePoint,
  more: Pick<Dimension, 'offset' | 'text' | 'figureAt'>,
): Dimension {
  return { kind: 'dimension', from, to, ...more };
}

/** A small cross of two lines through a point, arms of `arm` millimetres. */
export function crossLines(
  layer: TemplateLayer,
  [x, y]: MillimetrePoint,
  arm: number,
): Lines<TemplateLayer>[] {
  return [line(layer, [x - arm, y], [x + arm, y]), line(layer, [x, y - arm], [x, y + arm])];
}

/** Views as they stand together in one drawing. */
export function inViews(
  ...views: readonly (readonly TemplateShape[])[]
): Required<Pick<FullSizeDrawing, 'shapes' | 'views'>> {
  return { shapes: views.flat(), views };
}

/** The same shapes moved by dx and dy, millimetres. */
export function shifted(shapes: readonly TemplateShape[], by: MillimetrePoint): TemplateShape[] {
  return shapes.map((shape) => movedBy(shape, by));
}

/** A shape shifted, dimensions with their ends. */
function movedBy(shape: TemplateShape, [dx, dy]: MillimetrePoint): TemplateShape {
  const move = ([x, y]: MillimetrePoint): MillimetrePoint => [x + dx, y + dy];
  if (shape.kind !== 'dimension') return placedShape(shape, move);
  return { ...shape, from: move(shape.from), to: move(shape.to) };
}
