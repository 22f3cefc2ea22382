import type { ScreenPoint } from './screen-point.ts';

/** A circle on the drawing, pixels. */
export interface ScreenDisc {
  readonly x: number;
  readonly y: number;
  readonly radius: number;
}

/** Whether a point lies inside a closed ring, however it turns (even–odd rule). */
export function isInsideRing(ring: readonly ScreenPoint[], { x, y }: ScreenPoint): boolean {
  let inside = false;
  for (let k = 0; k < ring.length; k++) {
    const a = ring[k]!;
    const b = ring[(k + 1) % ring.length]!;
    if (a.y > y !== b.y > y && x < a.x + ((y - a.y) / (b.y - a.y)) * (b.x - a.x)) inside = !inside;
  }
  return inside;
}
