import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { discHull } from '../../../core/figure/disc-hull.ts';

const SEED = 90210;
const disc = fc.record({
  x: fc.double({ min: -2, max: 2, noNaN: true }),
  y: fc.double({ min: -2, max: 2, noNaN: true }),
  radius: fc.double({ min: 0.01, max: 0.3, noNaN: true }),
});

describe('the outline around discs', () => {
  it('of one disc is that circle', () => {
    for (const [x, y] of discHull([{ x: 1, y: 2, radius: 0.5 }])) {
      expect(Math.hypot(x - 1, y - 2)).toBeCloseTo(0.5, 12);
    }
  });

  it('touches the farthest disc in each direction and leaves none outside', () => {
    fc.assert(
      fc.property(fc.array(disc, { minLength: 1, maxLength: 5 }), (discs) => {
        const ring = discHull(discs);
        ring.forEach(([x, y], k) => {
          const turn = (2 * Math.PI * k) / ring.length;
          const reach = x * Math.cos(turn) + y * Math.sin(turn);
          const farthest = Math.max(
            ...discs.map((d) => d.x * Math.cos(turn) + d.y * Math.sin(turn) + d.radius),
          );
          expect(reach).toBeCloseTo(farthest, 9);
        });
      }),
      { seed: SEED, numRuns: 100 },
    );
  });

  it('turns one way', () => {
    const ring = discHull([
      { x: 0, y: 0, radius: 0.2 },
      { x: 1, y: 0.3, radius: 0.05 },
    ]);
    const area = ring.reduce((sum, [x, y], k) => {
      const [nx, ny] = ring[(k + 1) % ring.length]!;
      return sum + (x * ny - nx * y) / 2;
    }, 0);
    expect(area).toBeGreaterThan(0);
  });
});
