import { describe, expect, it } from 'vitest';
import { halfWidthAt } from '../../../core/setout/knee-recess.ts';
import { smallestRadius } from '../../../core/setout/recess-floor.ts';
import { inventedSetOut } from './invented-set-out.ts';

/** Radius of the circle through three points (any textbook: product of the sides over four times the area). */
function radiusThrough(points: readonly (readonly [number, number])[]): number {
  const [a, b, c] = points as [
    readonly [number, number],
    readonly [number, number],
    readonly [number, number],
  ];
  const side = (p: readonly [number, number], q: readonly [number, number]) =>
    Math.hypot(p[0] - q[0], p[1] - q[1]);
  const area = Math.abs((b[0] - a[0]) * (c[1] - a[1]) - (c[0] - a[0]) * (b[1] - a[1])) / 2;
  return (side(a, b) * side(b, c) * side(c, a)) / (4 * area);
}

describe('the smallest radius of a recess', () => {
  it.each([0, 10])('is no greater than that of any section of it, with %i mm of foam', (foam) => {
    const { recess } = inventedSetOut().fittings.pad;
    const stated = smallestRadius(recess, foam);
    const found: number[] = [];
    for (let x = recess.aftEnd; x <= 0; x += 13) {
      const at = (level: number) => [halfWidthAt(recess, x, { level, foam }) ?? Number.NaN, level] as const;
      for (let level = -foam; level < recess.depth; level += 1.5) {
        const radius = radiusThrough([at(level), at(level + 0.4), at(level + 0.8)]);
        if (Number.isFinite(radius)) found.push(radius);
      }
    }
    expect(found.length).toBeGreaterThan(50);
    expect(Math.min(...found)).toBeGreaterThanOrEqual(stated - 0.5);
    expect(stated).toBeGreaterThan(10);
  });
});
