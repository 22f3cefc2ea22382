/** A circle of a view: the outline of a ball seen from anywhere. Any unit, as long as it is the same throughout. */
export interface Disc {
  readonly x: number;
  readonly y: number;
  readonly radius: number;
}

/** Directions in which an outline is felt out: a round of 60 mm radius departs from the true one by 0.06 mm. */
const DIRECTIONS = 72;

/**
 * The tight outline around some discs (one disc: a circle; two: a tapered capsule) as a closed ring, counter-clockwise
 * with y up. Found by support: in each direction the farthest point of any disc. Point k always belongs to direction
 * k, so two outlines of the same limb can be blended point by point. Unit of the discs.
 */
export function discHull(discs: readonly Disc[]): (readonly [x: number, y: number])[] {
  return Array.from({ length: DIRECTIONS }, (_, k) => {
    const turn = (2 * Math.PI * k) / DIRECTIONS;
    const [dx, dy] = [Math.cos(turn), Math.sin(turn)];
    let best = discs[0]!;
    let reach = Number.NEGATIVE_INFINITY;
    for (const disc of discs) {
      const far = disc.x * dx + disc.y * dy + disc.radius;
      if (far > reach) {
        reach = far;
        best = disc;
      }
    }
    return [best.x + best.radius * dx, best.y + best.radius * dy] as const;
  });
}
