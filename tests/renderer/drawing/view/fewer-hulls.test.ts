import { describe, expect, it } from 'vitest';
import { type Ball, figureSolids } from '../../../../core/figure/figure-solids.ts';
import { fewerHulls } from '../../../../renderer/drawing/view/fewer-hulls.ts';
import { isInsideRing, roundHull } from '../../../../renderer/drawing/view/round-hull.ts';
import { onto, type Scene } from '../../../../renderer/drawing/view/scene.ts';
import { exampleFit } from '../../../core/example/example-fit.ts';
import { valuesOf } from '../../../core/example/values-of.ts';

const at = (x: number, radius = 0.1): Ball => ({ at: { x, y: 0, z: 0 }, radius });
const chain = (balls: readonly Ball[]) => balls.slice(1).map((ball, k) => [balls[k]!, ball]);

const PIXELS_PER_METRE = 240;
const windows = { left: 0, top: 0, width: 800, height: 800 };
const scene = {
  geometry: {
    windows: { plan: windows, profile: windows, section: windows },
    camera: { pixelsPerMetre: PIXELS_PER_METRE, at: { x: 0, y: 0, z: 0.6 } },
  },
} as unknown as Pick<Scene, 'geometry'>;

describe('a chain of hulls with fewer levels', () => {
  it('leaves out what lies on the straight way, and nothing else', () => {
    expect(fewerHulls(chain([at(0), at(1), at(2), at(3)]), 1e-6)).toEqual([[at(0), at(3)]]);
    const bulged = [at(0), at(1, 0.15), at(2)];
    expect(fewerHulls(chain(bulged), 0.01)).toEqual(chain(bulged));
    expect(fewerHulls(chain(bulged), 0.06)).toEqual([[at(0), at(2)]]);
  });

  it('leaves alone hulls that are no chain', () => {
    const odd = [[at(0), at(1), at(2)], [at(5)]];
    expect(fewerHulls(odd, 1)).toEqual(odd);
  });

  it('moves no outline of the figure by more than the tolerance says, in any view', () => {
    const fit = exampleFit();
    const report = valuesOf(fit);
    const { stances, body } = report.seats[0]!;
    const tolerancePx = 0.4;
    const solids = figureSolids(stances.ready, body);
    for (const view of ['plan', 'profile', 'section'] as const) {
      const to = onto(scene, view);
      const rings = (hulls: readonly (readonly Ball[])[], grown: number) =>
        hulls.map((balls) =>
          roundHull(balls.map((b) => ({ ...to(b.at), radius: b.radius * PIXELS_PER_METRE + grown }))),
        );
      for (const { hulls } of solids) {
        const fewer = fewerHulls(hulls, tolerancePx / PIXELS_PER_METRE);
        // The chords of a ring sag by a tenth of a pixel of their own.
        const wide = rings(fewer, tolerancePx + 0.15);
        for (const point of rings(hulls, 0).flat()) {
          expect(wide.some((ring) => isInsideRing(ring, point))).toBe(true);
        }
      }
    }
    const count = (all: readonly (readonly unknown[])[][]) => all.flat().length;
    const before = solids.map(({ hulls }) => [...hulls]);
    const after = solids.map(({ hulls }) => [...fewerHulls(hulls, tolerancePx / PIXELS_PER_METRE)]);
    expect(count(after)).toBeLessThan(0.75 * count(before));
  });
});
