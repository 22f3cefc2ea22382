import { describe, expect, it } from 'vitest';
import { immersedProperties } from '../../core/hydrostatics/immersed-properties.ts';
import { toRadians } from '../../core/units/angle.ts';
import { cosinePlaces, ellipsoid, wedge, wigley } from './hydro-shapes.ts';

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

describe('a V-shaped prism, trimmed and heeled: the plane cuts it in a quadrilateral', () => {
  const [L, alpha] = [5, toRadians(40)];
  const hull = wedge(L, alpha, 0.6);
  const attitude = { draft: 0.2, trim: Math.atan(0.03), heel: toRadians(15) };
  // The plane is z = draft − a·x − b·y, the sides z = |y|·cot α.
  const [a, b, side] = [Math.tan(attitude.trim), Math.tan(attitude.heel), 1 / Math.tan(alpha)];
  const k = Math.hypot(1, a);
  /** Corners in the plane's own axes: along it as the boat lies, and square to that. */
  const corners = [-L / 2, L / 2]
    .flatMap((x, end) => {
      const over = attitude.draft - a * x;
      const ys = [over / (side + b), -over / (side - b)];
      return (end === 0 ? ys : ys.toReversed()).map((y) => ({ x, y, z: over - b * y }));
    })
    .map(({ x, y, z }) => ({
      along: (x - a * (z - attitude.draft)) / k,
      across: (Math.hypot(1, a, b) / k) * y,
    }));

  it('second moments are those of the polygon by its corners (any textbook of mechanics: sums of cross products)', () => {
    const sums = { area: 0, along: 0, across: 0, alongAlong: 0, acrossAcross: 0 };
    corners.forEach((p, i) => {
      const q = corners[(i + 1) % corners.length]!;
      const cross = p.along * q.across - q.along * p.across;
      sums.area += cross / 2;
      sums.along += (cross * (p.along + q.along)) / 6;
      sums.across += (cross * (p.across + q.across)) / 6;
      sums.alongAlong += (cross * (p.along ** 2 + p.along * q.along + q.along ** 2)) / 12;
      sums.acrossAcross += (cross * (p.across ** 2 + p.across * q.across + q.across ** 2)) / 12;
    });
    const about = (square: number, first: number) => Math.abs(square - first ** 2 / sums.area);
    const { volume, waterplane } = immersedProperties(hull, attitude);
    expect(off(waterplane.area, Math.abs(sums.area))).toBeLessThan(1e-9);
    expect(off(waterplane.longitudinalBm * volume, about(sums.alongAlong, sums.along))).toBeLessThan(1e-9);
    expect(off(waterplane.transverseBm * volume, about(sums.acrossAcross, sums.across))).toBeLessThan(1e-9);
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
