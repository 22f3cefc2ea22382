import type { Hull } from './hull.ts';

/** What distances to a hull's face need of it. Metres, boat frame. */
export type HullFace = Pick<Hull, 'aftX' | 'foreX' | 'loft' | 'scratch'>;

/**
 * The face of a hull with both sides farther out by so many metres at every height, negative for a narrower hull; no side passes the
 * centreline. Heights and stations stay. A box 50 cm wide becomes 52 cm wide by 0.01.
 */
export function broaderFace({ aftX, foreX, loft, scratch }: HullFace, by: number): HullFace {
  return { aftX, foreX, scratch, loft: { ...loft, y: loft.y.map((y) => Math.max(0, y + by)) } };
}
