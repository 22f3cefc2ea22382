import { describe, expect, it } from 'vitest';
import { immersedProperties } from '../../core/hydrostatics/immersed-properties.ts';
import { toRadians } from '../../core/units/angle.ts';
import { cosinePlaces, ellipsoid, wigley } from './hydro-shapes.ts';

/**
 * Far over, the waterline ends between stations and the deck goes under in places: what the ends are integrated by
 * decides there. Errors are relative.
 */
const off = (value: number, expected: number) => Math.abs(value / expected - 1);

describe('ellipsoid at heel 60°: the plane cuts it in an ellipse (closed form)', () => {
  const [a, b, c] = [2.5, 0.25, 0.15];
  const hull = ellipsoid(cosinePlaces(a, 81), 301);
  const heel = toRadians(60);
  // n·x = d with q = |diag(a, b, c)·n|, t = d/q: half-axes a·√(1 − t²) along the boat and (bc/q)·√(1 − t²) across.
  const q = Math.hypot(b * Math.sin(heel), c * Math.cos(heel));

  it.each([-0.12, -0.05, 0, 0.05, 0.12])('plane %f m from the centre', (d) => {
    const t = d / q;
    const area = ((Math.PI * a * b * c) / q) * (1 - t * t);
    const p = immersedProperties(hull, { draft: d / Math.cos(heel), trim: 0, heel });
    expect(off(p.waterplane.area, area)).toBeLessThan(5e-4);
    expect(off(p.waterplane.longitudinalBm * p.volume, (area * a * a * (1 - t * t)) / 4)).toBeLessThan(2e-3);
  });
});

describe('Wigley form of 21 stations against the same of 801', () => {
  const size = { L: 5.2, B: 0.42, T: 0.25 };
  const coarse = wigley(size, { stations: 21, points: 41 });
  const fine = wigley(size, { stations: 801, points: 41 });
  const cases = [0, 20, 60].flatMap((degrees) =>
    [0.03, 0.07, 0.11, 0.15, 0.19].flatMap((draft) =>
      [-0.02, 0, 0.015].map((trim) => ({ degrees, draft, trim })),
    ),
  );

  it.each(cases)('heel $degrees°, draft $draft m, trim $trim rad', ({ degrees, draft, trim }) => {
    const at = { draft, trim, heel: toRadians(degrees) };
    const [ours, theirs] = [immersedProperties(coarse, at), immersedProperties(fine, at)];
    expect(off(ours.waterplane.area, theirs.waterplane.area)).toBeLessThan(1e-4);
    expect(off(ours.waterplane.longitudinalBm, theirs.waterplane.longitudinalBm)).toBeLessThan(2e-4);
    expect(off(ours.waterplane.transverseBm, theirs.waterplane.transverseBm)).toBeLessThan(4e-4);
    expect(off(ours.volume, theirs.volume)).toBeLessThan(5e-5);
  });
});
