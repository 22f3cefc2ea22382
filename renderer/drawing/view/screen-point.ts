declare const frame: unique symbol;

/** A point of the drawing in CSS pixels: origin at its top left corner, x to the right, y down. Never a `BoatPoint`. */
export interface ScreenPoint {
  readonly x: number;
  readonly y: number;
  readonly [frame]?: 'screen';
}

/** A rectangle of the drawing, CSS pixels. */
export interface ScreenRect {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** The middle of a rectangle. */
export function middleOf(rect: ScreenRect): ScreenPoint {
  return { x: rect.left + rect.width / 2, y: rect.top + rect.height / 2 };
}

/** Whether a point lies in a rectangle or on its edge. */
export function isWithin(point: ScreenPoint, { left, top, width, height }: ScreenRect): boolean {
  return point.x >= left && point.x <= left + width && point.y >= top && point.y <= top + height;
}

/** Distance between two points of the drawing. */
export function screenDistance(a: ScreenPoint, b: ScreenPoint): number {
  return Math.hypot(a.x - b.x, a.y - b.y);
}
