import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { convexRing } from '../../../core/graphics/convex-ring.ts';
import type { MillimetrePoint } from '../../../core/setout/template-drawing.ts';
import { areaOf } from '../setout/read-shapes.ts';

const SEED = 20260505;
const whole = fc.integer({ min: -50, max: 50 });
const points = fc
  .array(fc.tuple(whole, whole), { minLength: 3, maxLength: 40 })
  .map((made): MillimetrePoint[] => made);

const cross = (a: MillimetrePoint, b: MillimetrePoint, c: MillimetrePoint) =>
  (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);

/** The ring by brute force: pairs with every other point on their left are its edges. */
function edgesByForce(all: readonly MillimetrePoint[]): Set<string> {
  const edges = new Set<string>();
  for (const a of all) {
    for (const b of all) {
      if (a[0] === b[0] && a[1] === b[1]) continue;
      if (all.every((c) => cross(a, b, c) >= 0)) edges.add([...a, ...b].join(' '));
    }
  }
  return edges;
}

describe('the ring around points', () => {
  it('of a square with points inside and on its edges is its four corners, counter-clockwise', () => {
    const ring = convexRing([
      [0, 0],
      [10, 0],
      [5, 0],
      [10, 10],
      [4, 6],
      [0, 10],
      [0, 5],
    ]);
    expect(ring).toEqual([
      [0, 0],
      [10, 0],
      [10, 10],
      [0, 10],
    ]);
    expect(areaOf(ring)).toBe(100);
  });

  it('turns left at every corner and leaves no point outside', () => {
    fc.assert(
      fc.property(points, (all) => {
        const ring = convexRing(all);
        fc.pre(ring.length > 2);
        ring.forEach((corner, k) => {
          const next = ring[(k + 1) % ring.length]!;
          const after = ring[(k + 2) % ring.length]!;
          expect(cross(corner, next, after)).toBeGreaterThan(0);
          for (const point of all) expect(cross(corner, next, point)).toBeGreaterThanOrEqual(0);
        });
      }),
      { seed: SEED },
    );
  });

  it('has only edges that brute force has', () => {
    fc.assert(
      fc.property(points, (all) => {
        const ring = convexRing(all);
        fc.pre(ring.length > 2);
        const edges = edgesByForce(all);
        ring.forEach((corner, k) => {
          expect(edges.has([...corner, ...ring[(k + 1) % ring.length]!].join(' '))).toBe(true);
        });
      }),
      { seed: SEED, numRuns: 60 },
    );
  });
});
