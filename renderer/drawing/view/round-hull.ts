import type { ScreenPoint } from './screen-point.ts';

/** A circle on the drawing, pixels: the outline of a ball of flesh or wood seen from anywhere. */
export interface Disc {
  readonly x: number;
  readonly y: number;
  readonly radius: number;
}

/**
 * Directions in which an outline is felt out. With 40, a round of 20 px radius departs from the true one by
 * 20·(1 − cos 4.5°) = 0.06 px, which nobody sees; larger rounds are felt out twice as finely.
 */
const DIRECTIONS = 80;
const COARSE_UP_TO_PX = 20;
const COS = Float64Array.from({ length: DIRECTIONS }, (_, k) => Math.cos((2 * Math.PI * k) / DIRECTIONS));
const SIN = Float64Array.from({ length: DIRECTIONS }, (_, k) => Math.sin((2 * Math.PI * k) / DIRECTIONS));

/**
 * The tight outline around some discs (one disc: a circle; two: a tapered capsule), as a closed ring of points. It is
 * found by support: in each direction the farthest point of any disc. Whatever the discs do, the ring turns one way
 * and never crosses itself, so a limb cannot flip.
 */
export function roundHull(discs: readonly Disc[]): ScreenPoint[] {
  const ring: ScreenPoint[] = [];
  const step = discs.every(({ radius }) => radius <= COARSE_UP_TO_PX) ? 2 : 1;
  for (let k = 0; k < DIRECTIONS; k += step) {
    const { x, y, radius } = farthest(discs, COS[k]!, SIN[k]!);
    ring.push({ x: x + radius * COS[k]!, y: y + radius * SIN[k]! });
  }
  return ring;
}

function farthest(discs: readonly Disc[], dx: number, dy: number): Disc {
  let best = discs[0]!;
  let reach = Number.NEGATIVE_INFINITY;
  for (const disc of discs) {
    const at = disc.x * dx + disc.y * dy + disc.radius;
    if (at > reach) {
      reach = at;
      best = disc;
    }
  }
  return best;
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
