/** A point of a solid, millimetres: x forward along the block's axis, y to port, z up from the base. */
export type SolidPoint = readonly [x: number, y: number, z: number];

/** A closed surface of triangles, counter-clockwise as seen from outside. Points in millimetres. */
export interface SolidMesh {
  /** Corners, millimetres. */
  readonly points: readonly SolidPoint[];
  /** Three corners each, counter-clockwise as seen from outside. */
  readonly triangles: readonly (readonly [number, number, number])[];
}

/**
 * The closed surface over rings of equally many points, one ring after another, each counter-clockwise as seen from the rings
 * that follow. Rings must be convex: both ends are closed by fans. Two rings of a square make a box of 12 triangles.
 */
export function loft(rings: readonly (readonly SolidPoint[])[]): SolidMesh {
  const count = rings[0]!.length;
  const triangles: [number, number, number][] = [];
  for (let r = 0; r + 1 < rings.length; r++) {
    for (let k = 0; k < count; k++) {
      const next = (k + 1) % count;
      const [a, b, c, d] = [r * count + k, r * count + next, (r + 1) * count + k, (r + 1) * count + next];
      triangles.push([a, b, d], [a, d, c]);
    }
  }
  const last = (rings.length - 1) * count;
  for (let k = 1; k + 1 < count; k++) {
    triangles.push([0, k + 1, k], [last, last + k, last + k + 1]);
  }
  return { points: rings.flat(), triangles };
}
