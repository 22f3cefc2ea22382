import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { chainRing, chainRings } from '../../../core/graphics/chain.ts';
import { type FlatOval, flatOval, hullRing, reachOf } from '../../../core/graphics/oval.ts';
import { isInRing, pointsOf, signedArea } from '../../../core/graphics/shape.ts';

const SEED = 7;
const round = (x: number, y: number, r: number): FlatOval => ({ x, y, xx: r * r, xy: 0, yy: r * r });
const disc = fc.record({
  x: fc.double({ min: -1, max: 1, noNaN: true }),
  y: fc.double({ min: -1, max: 1, noNaN: true }),
  r: fc.double({ min: 0.02, max: 0.4, noNaN: true }),
});
const some = fc
  .array(disc, { minLength: 1, maxLength: 6 })
  .map((all) => all.map(({ x, y, r }) => round(x, y, r)));

describe('the outline round ovals', () => {
  it('is a circle round one ball, and a capsule round two: areas by the textbook', () => {
    expect(signedArea(hullRing([round(0, 0, 1)], 96)) / Math.PI).toBeCloseTo(1, 2);
    expect(signedArea(hullRing([round(0, 0, 1), round(4, 0, 1)], 96)) / (Math.PI + 8)).toBeCloseTo(1, 2);
  });

  it('is the projection of an ellipsoid from anywhere: semi-axes 3, 2, 1', () => {
    const oval = {
      at: { x: 0, y: 0, z: 0 },
      axes: [
        { x: 3, y: 0, z: 0 },
        { x: 0, y: 2, z: 0 },
        { x: 0, y: 0, z: 1 },
      ],
    } as const;
    expect(reachOf(oval)).toEqual({ x: 3, y: 2, z: 1 });
    expect(signedArea(hullRing([flatOval(oval, 'plan')], 96)) / (6 * Math.PI)).toBeCloseTo(1, 2);
    expect(signedArea(hullRing([flatOval(oval, 'profile')], 96)) / (3 * Math.PI)).toBeCloseTo(1, 2);
    expect(signedArea(hullRing([flatOval(oval, 'section')], 96)) / (2 * Math.PI)).toBeCloseTo(1, 2);
  });

  it('is convex and holds every ball whole, to 2 % of its radius', () => {
    fc.assert(
      fc.property(some, (ovals) => {
        const ring = hullRing(ovals, 96);
        const points = pointsOf(ring);
        points.forEach(([x, y], k) => {
          const [bx, by] = points[(k + 1) % points.length]!;
          const [cx, cy] = points[(k + 2) % points.length]!;
          expect((bx - x) * (cy - by) - (by - y) * (cx - bx)).toBeGreaterThan(-1e-9);
        });
        for (const { x, y, xx } of ovals) {
          for (let turn = 0; turn < 6; turn += 0.7) {
            const r = Math.sqrt(xx) * 0.98;
            expect(isInRing(ring, [x + r * Math.cos(turn), y + r * Math.sin(turn)])).toBe(true);
          }
        }
      }),
      { seed: SEED },
    );
  });
});

describe('the outline round a chain', () => {
  const limb = [round(0, 0, 0.3), round(1, 0.1, 0.2), round(2, 0.1, 0.25), round(3, 0, 0.1)];

  it('is one ring that goes round counter-clockwise and holds every middle', () => {
    const ring = chainRing(limb, 24)!;
    expect(signedArea(ring)).toBeGreaterThan(0);
    for (const { x, y } of limb) expect(isInRing(ring, [x, y])).toBe(true);
  });

  it('lies within 4 % of the union of its neighbours’ hulls, by area', () => {
    // The hulls of three tapered pieces less the discs they share, counted on a fine grid.
    const hulls = limb.slice(1).map((oval, k) => hullRing([limb[k]!, oval], 96));
    const ring = chainRing(limb, 96)!;
    let both = 0;
    let either = 0;
    for (let x = -0.5; x < 3.5; x += 0.02) {
      for (let y = -0.5; y < 0.6; y += 0.02) {
        const [inUnion, inRing] = [hulls.some((hull) => isInRing(hull, [x, y])), isInRing(ring, [x, y])];
        both += inUnion && inRing ? 1 : 0;
        either += inUnion || inRing ? 1 : 0;
      }
    }
    expect(both / either).toBeGreaterThan(0.96);
  });

  it('gives up where it is seen end on, and the hulls take over', () => {
    const endOn = [round(0, 0, 0.3), round(0.02, 0, 0.1), round(0.04, 0, 0.35)];
    expect(chainRing(endOn, 24)).toBeNull();
    expect(chainRings(endOn, 24)).toHaveLength(2);
  });
});
