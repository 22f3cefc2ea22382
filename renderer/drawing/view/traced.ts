import type { Area, Line, Lines, Weight } from '../../../core/graphics/shape.ts';
import type { ScreenPoint } from './screen-point.ts';

/** Where a view's origin lies on the paper (pixels), pixels to the metre, and how wide its lines are drawn (pixels). */
export interface Placed extends ScreenPoint {
  readonly scale: number;
  readonly widths: Readonly<Record<Weight, number>>;
}

/** A canvas, or a path to be kept. */
type Traceable = Pick<CanvasPath, 'moveTo' | 'lineTo' | 'closePath'>;

/** An open line of a view. */
export function traceLine(on: Traceable, line: Line, { x, y, scale }: Placed): void {
  on.moveTo(x + line[0]! * scale, y - line[1]! * scale);
  for (let k = 2; k < line.length; k += 2) on.lineTo(x + line[k]! * scale, y - line[k + 1]! * scale);
}

function traceRings(on: Traceable, rings: readonly Line[], placed: Placed): void {
  for (const ring of rings) {
    traceLine(on, ring, placed);
    on.closePath();
  }
}

/** A counter-clockwise ring grown outward by so many pixels. */
function traceGrown(on: Traceable, ring: Line, { x, y, scale }: Placed, by: number): void {
  const length = ring.length;
  for (let k = 0; k < length; k += 2) {
    const next = k + 2 === length ? 0 : k + 2;
    const last = k === 0 ? length - 2 : k - 2;
    const dx = ring[next]! - ring[last]!;
    const dy = ring[next + 1]! - ring[last + 1]!;
    const grow = by / (Math.sqrt(dx * dx + dy * dy) || 1);
    const px = x + ring[k]! * scale + dy * grow;
    const py = y - ring[k + 1]! * scale + dx * grow;
    if (k === 0) on.moveTo(px, py);
    else on.lineTo(px, py);
  }
  on.closePath();
}

/** What a shape is painted by, one after the other: for an area its outline first, if it has one, then each fill. */
export type Step = (on: Traceable) => void;

/** The steps of an area with one line round its union, or of lines. */
export function stepsOf(shape: Area | Lines, placed: Placed): readonly Step[] {
  if (shape.kind === 'line') {
    const { lines, closed } = shape;
    return [
      (on) => {
        for (const line of lines) {
          traceLine(on, line, placed);
          if (closed) on.closePath();
        }
      },
    ];
  }
  const { fills, outline } = shape;
  const filled = fills.map(
    ({ rings }): Step =>
      (on) =>
        traceRings(on, rings, placed),
  );
  if (!outline) return filled;
  const by = placed.widths[outline.weight];
  const grown: Step = (on) => {
    for (const { rings } of fills) for (const ring of rings) traceGrown(on, ring, placed, by);
  };
  return [grown, ...filled];
}

interface Kept {
  readonly placed: Placed;
  paths: readonly Path2D[] | null;
}

/** Paths of shapes that are painted again where they were. */
const kept = new WeakMap<Area | Lines, Kept>();

/**
 * The paths of a shape that is painted a second time at the same place; null at the first. While a hand moves one fitting, hull,
 * board and the other paddlers stay where they are: tracing them anew took a quarter of a frame.
 */
export function keptPaths(shape: Area | Lines, placed: Placed): readonly Path2D[] | null {
  const known = kept.get(shape);
  if (!known || !samePlace(known.placed, placed)) {
    kept.set(shape, { placed, paths: null });
    return null;
  }
  known.paths ??= stepsOf(shape, placed).map((trace) => {
    const path = new Path2D();
    trace(path);
    return path;
  });
  return known.paths;
}

function samePlace(a: Placed, b: Placed): boolean {
  return a.x === b.x && a.y === b.y && a.scale === b.scale && a.widths === b.widths;
}
