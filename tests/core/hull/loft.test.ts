import { describe, expect, it } from 'vitest';
import type { SectionPoint } from '../../../core/hull/hull.ts';
import {
  halfBreadth,
  keelHeight,
  sectionAt,
  sheerHalfBreadth,
  sheerHeight,
} from '../../../core/hull/section-at.ts';
import { notEmpty } from '../../not-empty.ts';
import { SAMPLE_HULLS, sampleHull } from '../../reference/hydro-sample-hulls.ts';
import { cosinePlaces, ellipsoid, evenPlaces, wigley } from '../../reference/hydro-shapes.ts';
import { madeHull } from './made-hull.ts';

const places = (from: number, to: number, count: number) =>
  Array.from({ length: count }, (_, i) => from + ((to - from) * i) / (count - 1));

describe('lofted sections', () => {
  it('a station keeps every point it was given, in order, others only between them', () => {
    const hull = sampleHull('single');
    for (const { x, section } of notEmpty(hull.stations)) {
      let from = 0;
      const points = sectionAt(hull, x);
      for (const [y, z] of section) {
        from = points.findIndex((p, j) => j >= from && Math.hypot(p.y - y, p.z - z) < 1e-12);
        expect(from).toBeGreaterThanOrEqual(0);
      }
      expect(from).toBe(points.length - 1);
      expect(points.every((p) => p.x === x)).toBe(true);
    }
  });

  it('a parabolic plan (Wigley) is followed exactly between uneven stations', () => {
    const xs = [-2.6, -2.1, -1.9, -1, -0.2, 0.4, 1.7, 2.2, 2.6];
    const section = (x: number): SectionPoint[] => [
      [0, 0],
      [0.2 * (1 - (x / 2.6) ** 2), 0.3 + 0.01 * x * x],
    ];
    const hull = madeHull({ name: 'parabola', stations: xs.map((x) => ({ x, section: section(x) })) });
    for (const x of places(-2.6, 2.6, 53)) {
      expect(sheerHalfBreadth(hull, x)).toBeCloseTo(section(x)[1]![0], 12);
      expect(sheerHeight(hull, x)).toBeCloseTo(section(x)[1]![1], 12);
    }
  });

  it('the blunt end of an ellipsoid is followed to a few thousandths of its breadth', () => {
    const [a, b] = [2.5, 0.25];
    const hull = ellipsoid(evenPlaces(a, 41), 41);
    for (const x of places(-a, a, 401)) {
      const exact = b * Math.sqrt(Math.max(0, 1 - (x / a) ** 2));
      expect(Math.abs((halfBreadth(hull, x, 0) ?? 0) - exact)).toBeLessThan(0.0025);
    }
    const fine = ellipsoid(cosinePlaces(a, 41), 41);
    const exact = b * Math.sqrt(1 - (2.49 / a) ** 2);
    expect(Math.abs((halfBreadth(fine, 2.49, 0) ?? 0) - exact)).toBeLessThan(2e-4);
  });

  it('a stem that rises from a straight keel does not make the keel dip before it', () => {
    const keel = [0, 0, 0, 0, 0, 0.2];
    const hull = madeHull({
      name: 'plumb',
      stations: keel.map((z, i) => ({
        x: i,
        section: [
          [0, z],
          [i === 5 ? 0 : 0.2, 0.4],
        ],
      })),
    });
    for (const x of places(0, 5, 101)) expect(keelHeight(hull, x)).toBeGreaterThanOrEqual(0);
    expect(keelHeight(hull, 5)).toBeCloseTo(0.2, 12);
  });

  it('half-breadths never fall below 0 between ragged stations', () => {
    const beams = [0, 0.3, 0.001, 0.3, 0];
    const hull = madeHull({
      name: 'ragged',
      stations: beams.map((y, i) => ({
        x: i,
        section: [
          [0, 0],
          [y, 0.3],
        ],
      })),
    });
    for (const x of places(0, 4, 201)) expect(sheerHalfBreadth(hull, x)).toBeGreaterThanOrEqual(0);
  });

  it('is held at the ends, where nothing lies beyond', () => {
    const hull = sampleHull('pair');
    expect(sheerHeight(hull, 99)).toBe(sheerHeight(hull, hull.foreX));
    expect(keelHeight(hull, -99)).toBe(keelHeight(hull, hull.aftX));
    expect(halfBreadth(hull, 99, 0.1)).toBeNull();
  });

  it('halfBreadth is null under the keel and over the sheer', () => {
    const hull = wigley({ L: 5.2, B: 0.42, T: 0.25 }, { stations: 41, points: 61 });
    expect(halfBreadth(hull, 0, -0.01)).toBeNull();
    expect(halfBreadth(hull, 0, 0.26)).toBeNull();
    expect(halfBreadth(hull, 0, 0.125)).toBeCloseTo(0.21 * 0.75, 4);
  });

  it.each(SAMPLE_HULLS)('%s: every line stays fair between its stations', (name) => {
    const hull = sampleHull(name);
    for (const x of places(hull.aftX, hull.foreX, 163)) {
      const points = sectionAt(hull, x);
      expect(points[0]!.y).toBe(0);
      points.forEach((p, j) => {
        if (j > 0) expect(p.z).toBeGreaterThanOrEqual(points[j - 1]!.z - 1e-9);
      });
    }
  });
});
