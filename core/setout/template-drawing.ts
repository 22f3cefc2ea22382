import type { TemplateId } from './template-ids.ts';

/** A point of a drawing, millimetres at full size: x to the right, y up. Each drawing says what its x and y are. */
export type MillimetrePoint = readonly [x: number, y: number];

/**
 * Layers by the words of the trade. `drillNow` are the holes of the present setting, `drill` all others; `edge` is an
 * edge that lies on another level than the outline; `fitting` the outline of something that stands there; `person` is
 * where knee, shank and feet come.
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
  'checkBar',
  'dimension',
  'lettering',
] as const;
/** A layer's name; its line stands in `layer-lines.ts`, its name in CAD files with the files. */
export type TemplateLayer = (typeof TEMPLATE_LAYERS)[number];

/** An open line or a closed ring. */
export interface Polyline {
  readonly kind: 'polyline';
  readonly layer: TemplateLayer;
  readonly points: readonly MillimetrePoint[];
  readonly closed: boolean;
}

/** A round hole or mark: centre and radius, millimetres at full size. */
export interface Circle {
  readonly kind: 'circle';
  readonly layer: TemplateLayer;
  readonly centre: MillimetrePoint;
  readonly radius: number;
}

/** Words on a drawing. Their place is at full size, their height on the paper; the turn is counter-clockwise, degrees. */
export interface Lettering {
  readonly kind: 'text';
  readonly layer: TemplateLayer;
  /** On the baseline, at the anchor. */
  readonly at: MillimetrePoint;
  /** Height of capitals, millimetres on the paper whatever the scale. */
  readonly height: number;
  readonly text: string;
  readonly anchor: 'start' | 'middle' | 'end';
  readonly turnDeg: number;
}

/** A dimension between two points of the drawing (millimetres at full size) with the figure that is written on it. */
export interface Dimension {
  readonly kind: 'dimension';
  readonly from: MillimetrePoint;
  readonly to: MillimetrePoint;
  /** How far to the left of from→to its line stands, millimetres on the paper; negative to the right. */
  readonly offset: number;
  readonly text: string;
  /** Where along from→to the figure stands, 0 to 1; left out, in the middle. Aside where an axis crosses the middle. */
  readonly figureAt?: number;
}

/** What a dimension is drawn with, and everything else. */
export type PlainShape = Polyline | Circle | Lettering;
/** Anything a drawing may hold. */
export type TemplateShape = PlainShape | Dimension;

/** A drawing at full size. */
export interface TemplateDrawing {
  readonly id: TemplateId;
  readonly title: string;
  /** What x and y are, and from where the drawing is seen. */
  readonly seen: string;
  /** Which knee, which face is up, where bow and port lie; left out until it goes on paper. */
  readonly facing?: string;
  readonly shapes: readonly TemplateShape[];
}

/** An open line through points, millimetres. */
export function line(layer: TemplateLayer, ...points: MillimetrePoint[]): Polyline {
  return { kind: 'polyline', layer, points, closed: false };
}

/** A closed ring through points, millimetres. */
export function ring(layer: TemplateLayer, points: readonly MillimetrePoint[]): Polyline {
  return { kind: 'polyline', layer, points, closed: true };
}

/** A circle by centre and radius, millimetres. */
export function circle(layer: TemplateLayer, centre: MillimetrePoint, radius: number): Circle {
  return { kind: 'circle', layer, centre, radius };
}

/** Words at a point; capitals 3.5 mm high (a nominal size of ISO 3098) unless said otherwise. */
export function words(
  text: string,
  at: MillimetrePoint,
  more: Partial<Pick<Lettering, 'layer' | 'height' | 'anchor' | 'turnDeg'>> = {},
): Lettering {
  return { kind: 'text', layer: 'lettering', at, height: 3.5, text, anchor: 'start', turnDeg: 0, ...more };
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
export function cross(layer: TemplateLayer, [x, y]: MillimetrePoint, arm: number): Polyline[] {
  return [line(layer, [x - arm, y], [x + arm, y]), line(layer, [x, y - arm], [x, y + arm])];
}

/** The same shapes moved by dx and dy, millimetres. */
export function shifted(shapes: readonly TemplateShape[], by: MillimetrePoint): TemplateShape[] {
  return shapes.map((shape) => movedBy(shape, by));
}

function movedBy(shape: TemplateShape, [dx, dy]: MillimetrePoint): TemplateShape {
  const move = ([x, y]: MillimetrePoint): MillimetrePoint => [x + dx, y + dy];
  switch (shape.kind) {
    case 'polyline':
      return { ...shape, points: shape.points.map(move) };
    case 'circle':
      return { ...shape, centre: move(shape.centre) };
    case 'text':
      return { ...shape, at: move(shape.at) };
    case 'dimension':
      return { ...shape, from: move(shape.from), to: move(shape.to) };
  }
}
