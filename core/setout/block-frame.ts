import type { MillimetrePoint } from './template-drawing.ts';

/**
 * Where a block's own frame (x along its axis, forward; y to port; origin at its bearing point) stands on the
 * floorboard: its origin as a floor point (millimetres) and how far it is turned, radians, counter-clockwise from above.
 */
export interface BlockFrame {
  /** On the floor, millimetres forward of the seat's mark and to port of the centreline. */
  readonly origin: MillimetrePoint;
  /** Counter-clockwise as seen from above, radians. */
  readonly turn: number;
}

/** A point of a block as a floor point, millimetres. */
export function toFloor({ origin, turn }: BlockFrame, [x, y]: MillimetrePoint): MillimetrePoint {
  const cos = Math.cos(turn);
  const sin = Math.sin(turn);
  return [origin[0] + x * cos - y * sin, origin[1] + x * sin + y * cos];
}

/** The inverse of `toFloor`: a floor point in the block's own frame, millimetres. */
export function toBlock({ origin, turn }: BlockFrame, [x, y]: MillimetrePoint): MillimetrePoint {
  const cos = Math.cos(turn);
  const sin = Math.sin(turn);
  const [dx, dy] = [x - origin[0], y - origin[1]];
  return [dx * cos + dy * sin, -dx * sin + dy * cos];
}

/** A floor direction (the bow's is [1, 0]) as seen in the block's own frame. */
export function bowInBlock({ turn }: BlockFrame): MillimetrePoint {
  return [Math.cos(turn), -Math.sin(turn)];
}
