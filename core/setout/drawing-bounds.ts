import { pointsOf, ringsOf, type Shape, type Text } from '../graphics/shape.ts';
import { dimensionLines, leftNormal } from './dimension-lines.ts';
import { lettersWidth } from './letter-widths.ts';
import type { Dimension, MillimetrePoint } from './template-drawing.ts';

/** Least and greatest x and y, millimetres at full size. */
export interface DrawingBounds {
  /** Least and greatest of each axis, millimetres. */
  readonly minX: number;
  /** As `minX`, for y. */
  readonly minY: number;
  /** As `minX`, at the other end. */
  readonly maxX: number;
  /** As `maxX`, for y. */
  readonly maxY: number;
}

/** How far letters reach below their baseline, in heights of capitals. */
const DESCENT = 0.4;

/**
 * Bounds of shapes as drawn at a scale (paper over full size; 1 for templates): lettering by the widths of its letters,
 * dimensions with their lines. Millimetres at full size. Throws a RangeError for no shapes: there is nothing to draw.
 */
export function boundsOf(shapes: readonly (Shape<string> | Dimension)[], scale = 1): DrawingBounds {
  const plain = shapes.flatMap((shape) =>
    shape.kind === 'dimension' ? dimensionLines(shape, scale) : [shape],
  );
  const points = plain.flatMap((shape) => extremes(shape, scale));
  if (points.length === 0) throw new RangeError('a drawing without shapes has no bounds');
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  return { minX: Math.min(...xs), minY: Math.min(...ys), maxX: Math.max(...xs), maxY: Math.max(...ys) };
}

/** Points that a shape lies between. */
function extremes<R extends string>(shape: Shape<R>, scale: number): readonly MillimetrePoint[] {
  if (shape.kind === 'line') return shape.lines.flatMap(pointsOf);
  if (shape.kind === 'area') return ringsOf([shape]).flatMap(pointsOf);
  if (shape.kind === 'text') return textCorners(shape, scale);
  const [x, y] = shape.at;
  const { radius } = shape;
  return [
    [x - radius, y - radius],
    [x + radius, y + radius],
  ];
}

/** Corners of the box around some words, millimetres at full size. */
function textCorners({ at, anchor, turnDeg, height, text }: Text<string>, scale: number): MillimetrePoint[] {
  const tall = height / scale;
  const width = tall * lettersWidth(text);
  const start = anchor === 'start' ? 0 : anchor === 'middle' ? -width / 2 : -width;
  const turn = (turnDeg * Math.PI) / 180;
  const ahead: MillimetrePoint = [Math.cos(turn), Math.sin(turn)];
  const up = leftNormal([0, 0], ahead);
  return [
    [start, -DESCENT * tall],
    [start + width, -DESCENT * tall],
    [start + width, tall],
    [start, tall],
  ].map(([along, over]) => [
    at[0] + along! * ahead[0] + over! * up[0],
    at[1] + along! * ahead[1] + over! * up[1],
  ]);
}
