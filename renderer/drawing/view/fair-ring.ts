import type { ScreenPoint } from './screen-point.ts';

/** A fair curve through a rough closed ring: Chaikin's corner cutting, twice. */
export function fairRing(ring: readonly ScreenPoint[]): ScreenPoint[] {
  let now = [...ring];
  for (let pass = 0; pass < 2; pass++) {
    now = now.flatMap((p, k) => {
      const q = now[(k + 1) % now.length]!;
      return [
        { x: p.x * 0.75 + q.x * 0.25, y: p.y * 0.75 + q.y * 0.25 },
        { x: p.x * 0.25 + q.x * 0.75, y: p.y * 0.25 + q.y * 0.75 },
      ];
    });
  }
  return now;
}
