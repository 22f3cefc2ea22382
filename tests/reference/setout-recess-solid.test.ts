import type { Manifold, ManifoldToplevel, Vec3 } from 'manifold-3d';
import { beforeAll, describe, expect, it } from 'vitest';
import { recessOutline } from '../../core/setout/knee-recess.ts';
import { cases, LONG } from '../cases.ts';
import { inventedSetOut, ON_A_WEDGE } from '../core/setout/invented-set-out.ts';
import { areaOf, boxOf } from '../core/setout/read-shapes.ts';
import { solidGeometry } from './hydro-solid.ts';

/**
 * The recess against an outside solid-geometry library (manifold): a knee (half an ellipsoid) and a shin (ellipses along
 * the shank) are lowered from above into a block of wood and taken out of it; the hole left is sliced at the levels of
 * the template's lines.
 */

/** Points round an ellipse and slices along the shin: chords lie up to r (π/POINTS)²/2, 0.02 mm, inside their curve. */
const POINTS = 128;
const SLICES = cases(16, 40);
/** Areas agree to this share (5 mm over the bottom those 0.02 mm are 0.4 % of it), extents to this many millimetres. */
const AREA_SHARE = 5e-3;
const EXTENT_MM = 0.3;
/** The leg is lowered from this far above, millimetres. */
const ABOVE_MM = 200;
const LEVELS = [5, 10, 15, 20];

/** Shares of the knee's section that are left at the ankle: breadth and depth (the drawing's own estimate of a shin). */
const ANKLE = { breadth: 0.62, depth: 0.7 };

let solids: ManifoldToplevel;
beforeAll(async () => {
  solids = await solidGeometry();
});

interface Leg {
  readonly kneeDepth: number;
  readonly halfBreadth: number;
  readonly shankRun: number;
  readonly shankRise: number;
}

/** Ellipse of the leg at x with what lies above it. */
function ring({ kneeDepth, halfBreadth, shankRun, shankRise }: Leg, x: number, foam: number): Vec3[] {
  const share = Math.min(1, Math.max(0, -x / shankRun));
  const across = halfBreadth * (1 + (ANKLE.breadth - 1) * share) + foam;
  const down = kneeDepth * (1 + (ANKLE.depth - 1) * share) + foam;
  const middle = kneeDepth + shankRise * share;
  const ahead = x > 0 ? Math.sqrt(Math.max(0, 1 - (x / (kneeDepth + foam)) ** 2)) : 1;
  return Array.from({ length: POINTS }, (_, k): Vec3[] => {
    const turn = (2 * Math.PI * k) / POINTS;
    const [y, z] = [across * ahead * Math.cos(turn), middle + down * ahead * Math.sin(turn)];
    return [
      [x, y, z],
      [x, y, z + ABOVE_MM],
    ];
  }).flat();
}

/** What a leg takes up on its way down, from `aft` to the front of the knee. */
function lowered(leg: Leg, { aft, foam }: { aft: number; foam: number }): Manifold {
  const front = leg.kneeDepth + foam;
  const behind = Array.from({ length: SLICES + 1 }, (_, k) => (aft * k) / SLICES);
  const before = Array.from({ length: SLICES + 1 }, (_, k) => front * Math.sin((Math.PI / 2) * (k / SLICES)));
  const pieces = [behind, before].flatMap((xs) =>
    xs.slice(1).map((x, k) => solids.Manifold.hull([...ring(leg, xs[k]!, foam), ...ring(leg, x, foam)])),
  );
  return solids.Manifold.union(pieces);
}

// The quick run takes the last of them, which is on the usual side; the long run all.
const WANTED: readonly (readonly [string, Parameters<typeof inventedSetOut>[0]])[] = [
  ['the usual pad', {}],
  ['the other side', { side: 'right' }],
  ['a wide knee', { options: { kneeBreadthM: 0.13 } }],
  ['a front foot raised', { seat: { frontFoot: ON_A_WEDGE } }],
];

describe.each(WANTED.slice(LONG ? 0 : -1))('the recess of %s', (_, wanted) => {
  const { pad } = inventedSetOut(wanted).fittings;
  const { recess } = pad;

  it.each(LONG ? [0, 10] : [10])(
    'with %i mm of foam is the hole that the leg leaves, level by level',
    (foam) => {
      const [length, width] = [recess.foreEnd - recess.aftEnd, 2 * pad.halfWidth];
      const wood = solids.Manifold.cube([length, width, pad.topHeight]).translate([
        recess.aftEnd,
        -pad.halfWidth,
        -pad.bearingHeight,
      ]);
      const hole = wood.intersect(lowered(recess, { aft: recess.aftEnd - 40, foam }));
      for (const level of LEVELS) {
        const outline = recessOutline(recess, { level, foam })!;
        // A hair under the level: the block's own top is no longer wood.
        const slice = hole.slice(level - 1e-3);
        expect(Math.abs(Math.abs(areaOf(outline.points)) / slice.area() - 1), `level ${level}`).toBeLessThan(
          AREA_SHARE,
        );
        const { left, right, low, high } = boxOf(outline.points);
        const { min, max } = slice.bounds();
        for (const [ours, theirs] of [
          [left, min[0]],
          [right, max[0]],
          [low, min[1]],
          [high, max[1]],
        ] as const) {
          expect(Math.abs(ours - theirs), `level ${level}`).toBeLessThan(EXTENT_MM);
        }
        slice.delete();
      }
      hole.delete();
      wood.delete();
    },
  );

  // The quick run slices this very leg above.
  if (LONG)
    it('touches the leg at its bottom alone: lower by a tenth of a millimetre there is wood', () => {
      const leg = lowered(recess, { aft: recess.aftEnd, foam: 0 });
      expect(leg.slice(0.1).isEmpty()).toBe(false);
      expect(leg.slice(-0.1).isEmpty()).toBe(true);
      leg.delete();
    });
});
