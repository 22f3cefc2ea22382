import type { Hull } from './hull.ts';
import { halfBreadth } from './section-at.ts';

/**
 * Half-breadth of the hull's inner face at a place and height: the outer face less the skin's thickness, metres. Null
 * below the keel or above the sheer.
 */
export function innerHalfBreadth(hull: Hull, at: { x: number; z: number }, skin: number): number | null {
  const outer = halfBreadth(hull, at.x, at.z);
  return outer === null ? null : Math.max(0, outer - skin);
}
