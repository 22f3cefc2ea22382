import { describe, expect, it } from 'vitest';
import { shellCentre } from '../../../core/hull/shell-centre.ts';
import { SAMPLE_HULLS, sampleHull, sampleStations } from '../../reference/hydro-sample-hulls.ts';
import { box, cylinder } from '../../reference/hydro-shapes.ts';
import { madeHull } from './made-hull.ts';

describe('shellCentre', () => {
  it('an open box: by hand', () => {
    const [L, B, D] = [5, 0.5, 0.4];
    const sides = 2 * L * D + 2 * B * D;
    const centre = shellCentre(box(L, B, D));
    expect(centre.x).toBeCloseTo(0, 12);
    expect(centre.z).toBeCloseTo((sides * D) / 2 / (sides + L * B), 12);
    expect(centre.z).toBeCloseTo(0.128, 3);
  });

  it('a drum (closed cylinder): at its axis', () => {
    expect(shellCentre(cylinder(4, 0.3, 181)).z).toBeCloseTo(0.3, 5);
  });

  it.each(SAMPLE_HULLS)('%s: near midships and under half the depth; moves with the hull', (name) => {
    const hull = sampleHull(name);
    const centre = shellCentre(hull);
    expect(Math.abs(centre.x)).toBeLessThan(0.03 * hull.length);
    expect(centre.z).toBeGreaterThan(0.2 * hull.highestZ);
    expect(centre.z).toBeLessThan(0.5 * hull.highestZ);
    const moved = madeHull({
      name,
      stations: sampleStations(name).map(({ x, section }) => ({
        x: x + 0.7,
        section: section.map(([y, z]) => [y, z - 0.1] as const),
      })),
    });
    expect(shellCentre(moved).x).toBeCloseTo(centre.x + 0.7, 10);
    expect(shellCentre(moved).z).toBeCloseTo(centre.z - 0.1, 10);
  });
});
