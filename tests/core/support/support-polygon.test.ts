import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluateFit } from '../../../core/evaluation/evaluator.ts';
import type { Contact } from '../../../core/support/support.ts';
import { cornersOf, supportPatches } from '../../../core/support/support-patches.ts';
import {
  edgeDistance,
  nearestEdges,
  polygonArea,
  polygonMargin,
  shareRanges,
  supportPolygon,
} from '../../../core/support/support-polygon.ts';
import { exampleFit, exampleSeat } from '../example/example-fit.ts';

const corner = (contact: Contact, x: number, y: number) => ({ contact, corner: 0, x, y });

/** A square of 1 m with the knee's patch on the left side and one foot on each right corner. */
const square = [
  corner('knee', 0, 0),
  corner('knee', 0, 1),
  corner('rearFoot', 1, 0),
  corner('frontFoot', 1, 1),
  corner('knee', 0.4, 0.5),
];

describe('the support polygon, by hand', () => {
  const polygon = supportPolygon(square);

  it('has four edges, the nearest first: from (0.9, 0.3) the right one 0.1 m off, the lower 0.3, the upper 0.7', () => {
    const at = { x: 0.9, y: 0.3 };
    const three = nearestEdges(polygon, at, 3);
    expect(three.map((edge) => Number(edgeDistance(edge, at).toFixed(9)))).toEqual([0.1, 0.3, 0.7]);
    expect(edgeDistance(three[0]!, { x: 1.2, y: 0.3 })).toBeCloseTo(-0.2, 12);
  });

  it('is the hull of the patches: the corner inside it is none', () => {
    expect(polygon).toHaveLength(4);
    expect(polygonArea(polygon)).toBeCloseTo(1, 12);
  });

  it('has the margin to its nearest edge, with the edge named', () => {
    expect(polygonMargin(polygon, { x: 0.1, y: 0.5 })).toEqual({
      margin: 0.1,
      nearestEdge: ['knee', 'knee'],
      inside: true,
    });
    const feet = polygonMargin(polygon, { x: 1.2, y: 0.5 });
    expect(feet.margin).toBeCloseTo(-0.2, 12);
    expect(feet.nearestEdge.toSorted()).toEqual(['frontFoot', 'rearFoot']);
    // Past a corner the distance is that to the corner: 3-4-5.
    expect(polygonMargin(polygon, { x: 1.03, y: -0.04 }).margin).toBeCloseTo(-0.05, 12);
  });
});

describe('ranges of the shares, by statics', () => {
  it('a beam on a patch and a point: moments about the point give both ends', () => {
    // Knee anywhere from x = 0 to 0.1, feet at 1 on either side, weight at 0.3 on the middle line. About the feet's line
    // (x = 1): knee × (1 − x) = 0.7, so from 0.7 (knee at 0) to 0.7778 (knee at 0.1).
    const corners = [
      corner('knee', 0, 0),
      corner('knee', 0.1, 0),
      corner('rearFoot', 1, -0.5),
      corner('frontFoot', 1, 0.5),
    ];
    const { knee, rearFoot } = shareRanges(corners, { x: 0.3, y: 0 })!;
    expect(knee.least).toBeCloseTo(0.7, 12);
    expect(knee.most).toBeCloseTo(0.7 / 0.9, 12);
    expect(rearFoot.least).toBeCloseTo((1 - 0.7 / 0.9) / 2, 12);
    expect(rearFoot.most).toBeCloseTo(0.15, 12);
  });

  it('hold every choice of places in the patches that carries the weight, seed 71', () => {
    const unit = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(unit, unit, unit, unit, unit, unit, (a, b, c, p, q, r) => {
        const corners = [
          corner('knee', -0.2, 0),
          corner('knee', -0.12, 0.08),
          corner('rearFoot', -0.6, -0.14),
          corner('rearFoot', -0.6, -0.06),
          corner('frontFoot', 0.4, -0.06),
          corner('frontFoot', 0.6, -0.06),
        ];
        const sum = a + b + c;
        fc.pre(sum > 0.01);
        const shares = { knee: a / sum, rearFoot: b / sum, frontFoot: c / sum };
        const places = [
          { x: -0.2 + 0.08 * p, y: 0.08 * p },
          { x: -0.6, y: -0.14 + 0.08 * q },
          { x: 0.4 + 0.2 * r, y: -0.06 },
        ];
        const weights = Object.values(shares);
        const at = {
          x: places.reduce((s, { x }, i) => s + weights[i]! * x, 0),
          y: places.reduce((s, { y }, i) => s + weights[i]! * y, 0),
        };
        const ranges = shareRanges(corners, at)!;
        for (const contact of ['knee', 'rearFoot', 'frontFoot'] as const) {
          expect(shares[contact]).toBeGreaterThan(ranges[contact].least - 1e-6);
          expect(shares[contact]).toBeLessThan(ranges[contact].most + 1e-6);
        }
      }),
      { seed: 71 },
    );
  });

  it('are none where the weight is outside the polygon', () => {
    expect(shareRanges(square, { x: 1.2, y: 0.5 })).toBeNull();
  });
});

describe('the patches of a solved stance', () => {
  const fit = exampleFit();
  const { stances, support } = evaluateFit(fit).seats[0]!;
  const patches = supportPatches(stances.ready, exampleSeat());

  it('the knee is 7 to 10 cm across, the front foot reaches from heel to ball', () => {
    const across = patches.knee.map(({ x }) => x);
    expect(Math.max(...across) - Math.min(...across)).toBeGreaterThan(0.069);
    expect(Math.max(...across) - Math.min(...across)).toBeLessThan(0.101);
    const along = patches.frontFoot.map(({ x }) => x);
    const { frontHeel, frontBall } = stances.ready.points;
    expect(Math.max(...along) - Math.min(...along)).toBeCloseTo(frontBall.x - frontHeel.x, 9);
    expect(cornersOf(patches)).toHaveLength(14);
  });

  it('hold more than the three points do, and the nominal shares lie in their ranges', () => {
    expect(support.inside).toBe(true);
    expect(support.margin).toBeGreaterThan(0.01);
    for (const contact of ['knee', 'rearFoot', 'frontFoot'] as const) {
      const { least, most } = support.shareRanges[contact];
      expect(support.shares[contact]).toBeGreaterThanOrEqual(least - 1e-9);
      expect(support.shares[contact]).toBeLessThanOrEqual(most + 1e-9);
      expect(most).toBeGreaterThan(least);
    }
  });
});
