import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Disc, isInsideRing, roundHull } from '../../../../renderer/drawing/view/round-hull.ts';
import type { ScreenPoint } from '../../../../renderer/drawing/view/screen-point.ts';

const SEED = 2718;
const coordinate = fc.double({ min: -300, max: 300, noNaN: true });
const disc = fc.record({
  x: coordinate,
  y: coordinate,
  radius: fc.double({ min: 0.5, max: 60, noNaN: true }),
});

/** Twice-signed area: positive when the ring turns the way the screen's y runs down, clockwise to the eye. */
function area(ring: readonly ScreenPoint[]): number {
  return ring.reduce((sum, a, k) => {
    const b = ring[(k + 1) % ring.length]!;
    return sum + (a.x * b.y - b.x * a.y) / 2;
  }, 0);
}

describe('the tight outline around discs', () => {
  it('has the area of a stadium around two equal discs', () => {
    const discs: Disc[] = [
      { x: 0, y: 0, radius: 10 },
      { x: 40, y: 0, radius: 10 },
    ];
    expect(Math.abs(area(roundHull(discs)) / (Math.PI * 100 + 800) - 1)).toBeLessThan(0.008);
  });

  it('has the area of a tapered capsule: two tangents, two arcs', () => {
    const [r1, r2, d] = [30, 12, 80];
    const half = Math.acos((r1 - r2) / d);
    const tangent = Math.sqrt(d * d - (r1 - r2) ** 2);
    const exact = tangent * (r1 + r2) + (Math.PI - half) * r1 * r1 + half * r2 * r2;
    const ring = roundHull([
      { x: 5, y: 7, radius: r1 },
      { x: 5, y: 7 + d, radius: r2 },
    ]);
    expect(Math.abs(area(ring) / exact - 1)).toBeLessThan(0.004);
  });

  it('turns one way, is convex and never a number that is none, whatever the discs do', () => {
    fc.assert(
      fc.property(fc.array(disc, { minLength: 1, maxLength: 6 }), (discs) => {
        const ring = roundHull(discs);
        expect(area(ring)).toBeGreaterThan(0);
        ring.forEach((a, k) => {
          const b = ring[(k + 1) % ring.length]!;
          const c = ring[(k + 2) % ring.length]!;
          expect(Number.isFinite(a.x) && Number.isFinite(a.y)).toBe(true);
          expect((b.x - a.x) * (c.y - b.y) - (b.y - a.y) * (c.x - b.x)).toBeGreaterThan(-1e-6);
        });
      }),
      { seed: SEED },
    );
  });

  it('holds every disc, to the sag of its chords', () => {
    fc.assert(
      fc.property(fc.array(disc, { minLength: 1, maxLength: 6 }), (discs) => {
        const ring = roundHull(discs);
        for (const { x, y, radius } of discs) {
          for (let turn = 0; turn < 6; turn += 0.7) {
            const inner = radius * 0.98;
            const rim = { x: x + inner * Math.cos(turn), y: y + inner * Math.sin(turn) };
            expect(isInsideRing(ring, rim)).toBe(true);
          }
        }
      }),
      { seed: SEED },
    );
  });

  it('a disc inside another leaves no trace', () => {
    const outer = { x: 0, y: 0, radius: 30 };
    expect(roundHull([outer, { x: 4, y: 4, radius: 5 }])).toEqual(roundHull([outer]));
  });
});
