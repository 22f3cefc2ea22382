import type { Area, Line, Lines, Role, Shape, Weight } from '../../../core/graphics/shape.ts';
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

/** Rings to be filled: a fill closes them by itself. */
function traceRings(on: Traceable, rings: readonly Line[], placed: Placed): void {
  for (const ring of rings) traceLine(on, ring, placed);
}

/** A counter-clockwise ring grown outward by so many pixels, to be filled. */
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
}

/** In how many steps a shape is painted: an area's outline first, if it has one, then each fill; lines in one. */
export function stepsOf(shape: Area | Lines): number {
  if (shape.kind === 'line') return 1;
  return shape.fills.length + (shape.outline ? 1 : 0);
}

/** Traces one step of a shape. */
export function traceStep(on: Traceable, shape: Area | Lines, at: { placed: Placed; step: number }): void {
  const { placed, step } = at;
  if (shape.kind === 'line') {
    for (const line of shape.lines) {
      traceLine(on, line, placed);
      if (shape.closed) on.closePath();
    }
    return;
  }
  const { fills, outline } = shape;
  if (!outline) traceRings(on, fills[step]!.rings, placed);
  else if (step > 0) traceRings(on, fills[step - 1]!.rings, placed);
  else {
    const by = placed.widths[outline.weight];
    for (const { rings } of fills) for (const ring of rings) traceGrown(on, ring, placed, by);
  }
}

/** What is painted in one step of an area. */
export function roleAt({ fills, outline }: Area, step: number): Role {
  if (!outline) return fills[step]!.role;
  return step === 0 ? outline.role : fills[step - 1]!.role;
}

/** The paths of one shape, step by step. */
type Paths = readonly Path2D[];

interface Kept {
  readonly placed: Placed;
  times: number;
  paths: readonly (Paths | null)[] | null;
}

/** Paths of lists of shapes that are painted again where they were. */
const kept = new WeakMap<readonly Shape[], Kept>();
/** What is being dragged is painted twice in a frame and never again. */
const BEFORE_KEPT = 2;

/**
 * The paths of shapes that were painted at the same place before, null for a shape without one; null as a whole the first two
 * times. While a hand moves one fitting, hull, board and the other paddlers stay where they are: tracing them again took a quarter
 * of a frame.
 */
export function keptPaths(shapes: readonly Shape[], placed: Placed): readonly (Paths | null)[] | null {
  const known = kept.get(shapes);
  if (!known || !samePlace(known.placed, placed)) {
    kept.set(shapes, { placed, times: 1, paths: null });
    return null;
  }
  if (known.times++ < BEFORE_KEPT) return null;
  known.paths ??= shapes.map((shape) =>
    shape.kind === 'area' || shape.kind === 'line' ? pathsOf(shape, placed) : null,
  );
  return known.paths;
}

function pathsOf(shape: Area | Lines, placed: Placed): Paths {
  return Array.from({ length: stepsOf(shape) }, (_, step) => {
    const path = new Path2D();
    traceStep(path, shape, { placed, step });
    return path;
  });
}

function samePlace(a: Placed, b: Placed): boolean {
  return a.x === b.x && a.y === b.y && a.scale === b.scale && a.widths === b.widths;
}
