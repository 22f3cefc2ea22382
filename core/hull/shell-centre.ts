import type { Hull } from './hull.ts';

/**
 * Estimate of a bare hull's centre of mass: the centroid of its shell's area (skin of even thickness, no decks), on
 * the centreline. Metres, boat frame.
 */
export function shellCentre({ stations }: Hull): { x: number; z: number } {
  let area = 0;
  let momentX = 0;
  let momentZ = 0;
  for (let i = 0; i + 1 < stations.length; i++) {
    const a = stations[i]!;
    const b = stations[i + 1]!;
    for (const { x, y, z } of [a, b]) {
      for (let k = 0; k + 1 < z.length; k++) {
        const piece = Math.hypot(y[k + 1]! - y[k]!, z[k + 1]! - z[k]!) * (b.x - a.x);
        area += piece;
        momentX += piece * x;
        momentZ += (piece * (z[k]! + z[k + 1]!)) / 2;
      }
    }
  }
  return area > 0 ? { x: momentX / area, z: momentZ / area } : { x: 0, z: 0 };
}
