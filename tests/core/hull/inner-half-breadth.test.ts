import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { innerHalfBreadth } from '../../../core/hull/inner-half-breadth.ts';
import { halfBreadth, loftedSection } from '../../../core/hull/section-at.ts';
import { toRadians } from '../../../core/units/angle.ts';
import { sampleHull } from '../../reference/hydro-sample-hulls.ts';
import { box, wedge } from '../../reference/hydro-shapes.ts';

const SEED = 99;

describe('innerHalfBreadth', () => {
  it('a box: half its breadth less the skin, from the bottom’s skin up to the sheer', () => {
    const hull = box(5, 0.5, 0.4);
    expect(innerHalfBreadth(hull, { x: 0.3, z: 0.2 }, 0.01)).toBeCloseTo(0.24, 12);
    expect(innerHalfBreadth(hull, { x: 0.3, z: 0.4 }, 0.01)).toBeCloseTo(0.24, 12);
    expect(innerHalfBreadth(hull, { x: 0.3, z: 0.005 }, 0.01)).toBeNull();
    expect(innerHalfBreadth(hull, { x: 0.3, z: 0.011 }, 0.01)).toBeCloseTo(0.24, 12);
  });

  it('a V of half angle 40°: the skin is measured square to the side', () => {
    const alpha = toRadians(40);
    const hull = wedge(5, alpha, 0.6);
    const skin = 0.004;
    const inner = innerHalfBreadth(hull, { x: 0, z: 0.3 }, skin)!;
    expect(inner).toBeCloseTo(0.3 * Math.tan(alpha) - skin / Math.cos(alpha), 12);
  });

  it('null above the sheer, under the keel and beyond the ends', () => {
    const hull = box(5, 0.5, 0.4);
    for (const at of [
      { x: 0, z: 0.41 },
      { x: 0, z: -0.01 },
      { x: 2.6, z: 0.2 },
      { x: Number.NaN, z: 0.2 },
    ]) {
      expect(innerHalfBreadth(hull, at, 0.004)).toBeNull();
    }
  });

  it('a skin of nothing is the outer face', () => {
    const hull = sampleHull('single');
    for (const z of [0.02, 0.05, 0.1, 0.2]) {
      expect(innerHalfBreadth(hull, { x: 0.4, z }, 0)).toBeCloseTo(halfBreadth(hull, 0.4, z)!, 12);
    }
  });

  it(`every inner point is exactly a skin from the shell and nothing inside is nearer, seed ${SEED}`, () => {
    const hull = sampleHull('single');
    fc.assert(
      fc.property(
        fc.double({ min: -1.5, max: 1.5, noNaN: true }),
        fc.double({ min: 0.02, max: 0.26, noNaN: true }),
        fc.double({ min: 0.001, max: 0.015, noNaN: true }),
        (x, z, skin) => {
          const inner = innerHalfBreadth(hull, { x, z }, skin);
          if (inner === null) return;
          expect(distanceToShell(x, inner, z)).toBeCloseTo(skin, 10);
          for (const share of [0, 0.3, 0.7, 0.95]) {
            expect(distanceToShell(x, share * inner, z)).toBeGreaterThanOrEqual(skin - 1e-12);
          }
        },
      ),
      { seed: SEED, numRuns: 200 },
    );

    function distanceToShell(x: number, y: number, z: number): number {
      const section = loftedSection(hull, x);
      let least = Number.POSITIVE_INFINITY;
      for (let j = 1; j < section.y.length; j++) {
        const [y0, z0] = [section.y[j - 1]!, section.z[j - 1]!];
        const [dy, dz] = [section.y[j]! - y0, section.z[j]! - z0];
        const u = Math.min(1, Math.max(0, ((y - y0) * dy + (z - z0) * dz) / (dy * dy + dz * dz || 1)));
        least = Math.min(least, Math.hypot(y - y0 - u * dy, z - z0 - u * dz));
      }
      return least;
    }
  });
});
