import type { ViewPoint } from './view.ts';

/** A closed or open line as x, y, x, y …: metres to the right and up in a view. */
export type Line = readonly number[];

/** What a shape is, for its colour: a painter has one for each. `…Far` is the same thing farther from the eye. */
export const ROLES = [
  'skin',
  'skinFar',
  'top',
  'topFar',
  'shorts',
  'shortsFar',
  'hair',
  'figureLine',
  'shaft',
  'blade',
  'paddleLine',
  'water',
  'waterLine',
  'hull',
  'hullLine',
  'board',
  'wood',
  'recess',
  'woodLine',
  'strap',
] as const;
/** What something on a drawing is: each painter knows how it looks. */
export type Role = (typeof ROLES)[number];

/** How heavy a line is: a contour, or what lies inside it. Painters give the width; it does not grow with the picture. */
export type Weight = 'contour' | 'detail';

/** Several closed rings of one colour, counter-clockwise. They may overlap: together they are one area. */
export interface Fill<R extends string = Role> {
  readonly role: R;
  readonly rings: readonly Line[];
}

/** Areas that share one outline round their union (null: none). */
export interface Area<R extends string = Role> {
  readonly kind: 'area';
  /** What thing it belongs to. */
  readonly of: string;
  readonly fills: readonly Fill<R>[];
  /** Drawn round the union, never between the fills. */
  readonly outline: { readonly role: R; readonly weight: Weight } | null;
}

/** Lines, open unless they are said to close. */
export interface Lines<R extends string = Role> {
  readonly kind: 'line';
  readonly of: string;
  readonly role: R;
  readonly weight: Weight;
  readonly lines: readonly Line[];
  readonly closed?: boolean;
}

/** A round mark or hole by its middle and radius: a line, or a filled dot. */
export interface Disc<R extends string = Role> {
  readonly kind: 'disc';
  readonly of: string;
  readonly role: R;
  /** Middle, in metres of the view or millimetres of the template. */
  readonly at: ViewPoint;
  /** In the same unit. */
  readonly radius: number;
  readonly filled?: boolean;
}

/** Lettering on a baseline. Its height is on the paper whatever the scale; the turn is counter-clockwise, degrees. */
export interface Text<R extends string = Role> {
  readonly kind: 'text';
  readonly of: string;
  readonly role: R;
  /** Left end, middle or right end of the baseline, as `anchor` says. */
  readonly at: ViewPoint;
  /** Height of capitals, millimetres on the paper. */
  readonly height: number;
  readonly text: string;
  readonly anchor: 'start' | 'middle' | 'end';
  /** 0 reads from left to right. */
  readonly turnDeg: number;
  readonly strong?: boolean;
  /** Its ground stands clear behind it, so that no line runs through it. */
  readonly clear?: boolean;
}

/**
 * One thing to paint. A list of shapes is painted in its order, from the far to the near, on a canvas, as SVG, PDF or DXF. Figure,
 * boat and fittings are in metres with the roles above; sheets and templates in millimetres with roles of their own.
 */
export type Shape<R extends string = Role> = Area<R> | Lines<R> | Disc<R> | Text<R>;

/** The points of a line. */
export function pointsOf(line: Line): ViewPoint[] {
  return Array.from({ length: line.length / 2 }, (_, k) => [line[2 * k]!, line[2 * k + 1]!] as const);
}

/** A line through points. */
export function lineThrough(points: readonly (readonly number[])[]): Line {
  const line = new Array<number>(2 * points.length);
  for (let k = 0; k < points.length; k++) {
    line[2 * k] = points[k]![0]!;
    line[2 * k + 1] = points[k]![1]!;
  }
  return line;
}

/** A closed ring through points, counter-clockwise. */
export function ringThrough(points: readonly (readonly number[])[]): Line {
  const ring = lineThrough(points);
  return signedArea(ring) < 0 ? lineThrough(points.toReversed()) : ring;
}

/** Area of a closed ring, square metres: positive where it turns counter-clockwise. */
export function signedArea(ring: Line): number {
  let sum = 0;
  for (let k = 0; k < ring.length; k += 2) {
    const next = (k + 2) % ring.length;
    sum += ring[k]! * ring[next + 1]! - ring[next]! * ring[k + 1]!;
  }
  return sum / 2;
}

/** Whether a point lies inside a closed ring, however it turns (even–odd rule). */
export function isInRing(ring: Line, point: ViewPoint): boolean {
  return isInside(ring, point[0], point[1]);
}

/** The same for a point by its coordinates, metres. */
export function isInside(ring: Line, x: number, y: number): boolean {
  let inside = false;
  const { length } = ring;
  let ax = ring[length - 2]!;
  let ay = ring[length - 1]!;
  for (let k = 0; k < length; k += 2) {
    const bx = ring[k]!;
    const by = ring[k + 1]!;
    if (ay > y !== by > y && x < ax + ((y - ay) / (by - ay)) * (bx - ax)) inside = !inside;
    ax = bx;
    ay = by;
  }
  return inside;
}

/** All closed rings of some shapes. */
export function ringsOf<R extends string>(shapes: readonly Shape<R>[]): Line[] {
  return shapes.flatMap((shape) => (shape.kind === 'area' ? shape.fills.flatMap(({ rings }) => rings) : []));
}

/** A shape's role: an area's is that of its outline, or of its first fill. */
export function roleOf<R extends string>(shape: Shape<R>): R {
  return shape.kind === 'area' ? (shape.outline ?? shape.fills[0]!).role : shape.role;
}

/** A closed area of one role with a line round it, or without. */
export function areaOf<R extends string = Role>(
  of: string,
  { role, outline }: { role: R; outline: R | null },
  rings: readonly Line[],
): Area<R> {
  return {
    kind: 'area',
    of,
    fills: [{ role, rings }],
    outline: outline && { role: outline, weight: 'contour' },
  };
}

/** The same shape with every point put elsewhere, and radii grown by `scale`. */
export function placedShape<R extends string>(
  shape: Shape<R>,
  point: (at: ViewPoint) => ViewPoint,
  scale = 1,
): Shape<R> {
  const line = (one: Line) => lineThrough(pointsOf(one).map(point));
  switch (shape.kind) {
    case 'area':
      return { ...shape, fills: shape.fills.map((fill) => ({ ...fill, rings: fill.rings.map(line) })) };
    case 'line':
      return { ...shape, lines: shape.lines.map(line) };
    case 'disc':
      return { ...shape, at: point(shape.at), radius: shape.radius * scale };
    case 'text':
      return { ...shape, at: point(shape.at) };
  }
}
