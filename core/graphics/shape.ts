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
export type Role = (typeof ROLES)[number];

/** How heavy a line is: a contour, or what lies inside it. Painters give the width; it does not grow with the picture. */
export type Weight = 'contour' | 'detail';

/** Several closed rings of one colour, counter-clockwise. They may overlap: together they are one area. */
export interface Fill {
  readonly role: Role;
  readonly rings: readonly Line[];
}

/** Areas that share one outline round their union (null: none). */
export interface Area {
  readonly kind: 'area';
  /** What thing it belongs to. */
  readonly of: string;
  readonly fills: readonly Fill[];
  readonly outline: { readonly role: Role; readonly weight: Weight } | null;
}

/** Open lines. */
export interface Lines {
  readonly kind: 'line';
  readonly of: string;
  readonly role: Role;
  readonly weight: Weight;
  readonly lines: readonly Line[];
}

/** One thing to paint. A list of shapes is painted in its order, from the far to the near. */
export type Shape = Area | Lines;

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
export function isInRing(ring: Line, [x, y]: ViewPoint): boolean {
  let inside = false;
  for (let k = 0; k < ring.length; k += 2) {
    const next = (k + 2) % ring.length;
    const [ax, ay, bx, by] = [ring[k]!, ring[k + 1]!, ring[next]!, ring[next + 1]!];
    if (ay > y !== by > y && x < ax + ((y - ay) / (by - ay)) * (bx - ax)) inside = !inside;
  }
  return inside;
}

/** All closed rings of some shapes. */
export function ringsOf(shapes: readonly Shape[]): Line[] {
  return shapes.flatMap((shape) => (shape.kind === 'area' ? shape.fills.flatMap(({ rings }) => rings) : []));
}

/** A closed area of one role with a line round it, or without. */
export function areaOf(
  of: string,
  { role, outline }: { role: Role; outline: Role | null },
  rings: readonly Line[],
): Area {
  return {
    kind: 'area',
    of,
    fills: [{ role, rings }],
    outline: outline && { role: outline, weight: 'contour' },
  };
}
