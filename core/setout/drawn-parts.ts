import { pointsOf } from '../graphics/shape.ts';
import { dimensionLines } from './dimension-lines.ts';
import { boundsOf, type DrawingBounds } from './drawing-bounds.ts';
import type { MillimetrePoint, PlainShape, TemplateShape } from './template-drawing.ts';

/** A piece of a drawing with the box round it, and the points of its lines, closed ones back at their first. */
export interface DrawnPart {
  readonly shape: PlainShape;
  readonly box: DrawingBounds;
  readonly lines: readonly (readonly MillimetrePoint[])[];
}

/** All shapes, dimensions as the lines and figures that they are drawn by. */
export function drawnParts(shapes: readonly TemplateShape[]): DrawnPart[] {
  return shapes
    .flatMap((shape) => (shape.kind === 'dimension' ? dimensionLines(shape, 1) : [shape]))
    .map((shape) => ({ shape, box: boundsOf([shape]), lines: linesOf(shape) }));
}

function linesOf(shape: PlainShape): readonly (readonly MillimetrePoint[])[] {
  if (shape.kind !== 'line') return [];
  const lines = shape.lines.map(pointsOf);
  return shape.closed ? lines.map((points) => [...points, points[0]!]) : lines;
}

/** Whether a box lies wholly inside another. */
export function holds(shows: DrawingBounds, box: DrawingBounds): boolean {
  return box.minX >= shows.minX && box.maxX <= shows.maxX && box.minY >= shows.minY && box.maxY <= shows.maxY;
}

/** Whether any of a shape may show in a part of a drawing; false only where none of it does. */
export function showsIn(shape: TemplateShape, shows: DrawingBounds): boolean {
  return drawnParts([shape]).some((part) => partShows(part, shows));
}

/** Whether anything of a part is seen in a window: a ring round a page leaves that page blank. */
export function partShows({ shape, box, lines }: DrawnPart, shows: DrawingBounds): boolean {
  const apart =
    box.minX > shows.maxX || box.maxX < shows.minX || box.minY > shows.maxY || box.maxY < shows.minY;
  if (apart) return false;
  if (shape.kind !== 'line' || holds(shows, box)) return true;
  return lines.some((points) =>
    points.some((point, k) => segmentInBox(points[k - 1] ?? point, point, shows)),
  );
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
