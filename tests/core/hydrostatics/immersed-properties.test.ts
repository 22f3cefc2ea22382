import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { immersedSums } from '../../../core/hull/immersed-sums.ts';
import { SUM } from '../../../core/hull/section-rows.ts';
import type { ImmersedProperties } from '../../../core/hydrostatics/afloat.ts';
import { immersedProperties } from '../../../core/hydrostatics/immersed-properties.ts';
import { heightAboveWater } from '../../../core/hydrostatics/water-plane.ts';
import { toRadians } from '../../../core/units/angle.ts';
import { cases } from '../../cases.ts';
import { SAMPLE_HULLS, sampleHull } from '../../reference/hydro-sample-hulls.ts';
import { box, wigley } from '../../reference/hydro-shapes.ts';
import { numbersIn } from './float-cases.ts';

const SEED = 77;

const attitude = fc.record({
  draft: fc.double({ min: -0.05, max: 0.4, noNaN: true }),
  trim: fc.double({ min: -0.1, max: 0.1, noNaN: true }),
  heel: fc.double({ min: -1.2, max: 1.2, noNaN: true }),
});

const hulls = Object.fromEntries(SAMPLE_HULLS.map((name) => [name, sampleHull(name)]));
const anyHull = fc.constantFrom(...SAMPLE_HULLS);

describe('immersedProperties', () => {
  it(`every number is finite at any attitude, and the coefficients are shares, seed ${SEED}`, () => {
    fc.assert(
      fc.property(anyHull, attitude, (name, at) => {
        const hull = hulls[name]!;
        const p = immersedProperties(hull, at);
        expect(numbersIn(p).every(Number.isFinite)).toBe(true);
        expect(p.volume).toBeGreaterThanOrEqual(0);
        expect(p.waterplane.aftEnd).toBeGreaterThanOrEqual(hull.aftX);
        expect(p.waterplane.foreEnd).toBeLessThanOrEqual(hull.foreX);
        for (const share of [p.blockCoefficient, p.prismaticCoefficient, p.waterplaneCoefficient]) {
          expect(share).toBeGreaterThanOrEqual(0);
        }
      }),
      { seed: SEED, numRuns: cases(100, 500) },
    );
  });

  it(`heel to the other side mirrors exactly, seed ${SEED}`, () => {
    fc.assert(
      fc.property(anyHull, attitude, (name, at) => {
        const hull = hulls[name]!;
        const here = immersedProperties(hull, at);
        const there = immersedProperties(hull, { ...at, heel: -at.heel });
        expect(there.centroid.y + here.centroid.y).toBe(0);
        expect({ ...there, centroid: { ...there.centroid, y: 0 } }).toEqual({
          ...here,
          centroid: { ...here.centroid, y: 0 },
        });
      }),
      { seed: SEED, numRuns: cases(40, 200) },
    );
  });

  it(`volume grows with draft and never jumps, seed ${SEED}`, () => {
    fc.assert(
      fc.property(anyHull, attitude, (name, at) => {
        const hull = hulls[name]!;
        const step = 1e-7;
        const here = immersedProperties(hull, at);
        const deeper = immersedProperties(hull, { ...at, draft: at.draft + step });
        const most = hull.length * 1.2 * step;
        expect(deeper.volume).toBeGreaterThanOrEqual(here.volume - 1e-14);
        expect(deeper.volume - here.volume).toBeLessThan(most);
      }),
      { seed: SEED, numRuns: cases(80, 400) },
    );
  });

  it('heel, trim and draft do what their signs say', () => {
    const hull = sampleHull('single');
    const level = { draft: 0.1, trim: 0, heel: 0 };
    expect(immersedProperties(hull, { ...level, trim: 0.005 }).centroid.x).toBeLessThan(
      immersedProperties(hull, level).centroid.x,
    );
    expect(immersedProperties(hull, { ...level, heel: 0.1 }).centroid.y).toBeLessThan(0);
    expect(immersedProperties(hull, { ...level, draft: 0.12 }).volume).toBeGreaterThan(
      immersedProperties(hull, level).volume,
    );
  });

  it('clear of the water everything is nothing', () => {
    const p = immersedProperties(sampleHull('single'), { draft: -0.1, trim: 0, heel: 0 });
    expect(p.volume).toBe(0);
    expect(p.centroid).toEqual({ x: 0, y: 0, z: 0 });
    expect(p.waterplane).toEqual({
      area: 0,
      lcf: 0,
      transverseBm: 0,
      longitudinalBm: 0,
      length: 0,
      beam: 0,
      aftEnd: 0,
      foreEnd: 0,
    });
    expect(p.wettedSurface).toBe(0);
    expect(p.leastFreeboard.value).toBeGreaterThan(0.3);
  });

  it('wholly under it is a closed body: no waterplane, negative freeboard, its whole volume', () => {
    const p = immersedProperties(box(), { draft: 9, trim: 0, heel: 0 });
    expect(p.volume).toBeCloseTo(1, 12);
    expect(p.waterplane.area).toBe(0);
    expect(p.leastFreeboard.value).toBeCloseTo(-8.6, 12);
  });

  it('refuses an attitude that is none', () => {
    const hull = box();
    for (const at of [
      { draft: Number.NaN, trim: 0, heel: 0 },
      { draft: 0.1, trim: Number.NaN, heel: 0 },
      { draft: 0.1, trim: 0, heel: toRadians(86) },
      { draft: 0.1, trim: toRadians(-90), heel: 0 },
    ]) {
      expect(() => immersedProperties(hull, at)).toThrow(RangeError);
    }
  });

  it('least freeboard: a heeled box by hand, at its low side, plumb', () => {
    const phi = toRadians(10);
    const p = immersedProperties(box(5, 0.5, 0.4), { draft: 0.15, trim: 0, heel: phi });
    expect(p.leastFreeboard.value).toBeCloseTo((0.25 - 0.25 * Math.tan(phi)) * Math.cos(phi), 12);
    const q = immersedProperties(box(5, 0.5, 0.4), { draft: 0.15, trim: Math.atan(0.02), heel: 0 });
    expect(q.leastFreeboard).toEqual({ value: expect.closeTo(0.2 / Math.hypot(1, 0.02), 12), x: -2.5 });
  });
});

describe('the sums under it', () => {
  const hull = wigley({ L: 5.2, B: 0.42, T: 0.2 }, { stations: 41, points: 61 });
  const plane = { draft: 0.12, alongSlope: 0.004, acrossSlope: 0.12 };
  const sum = (name: keyof typeof SUM, of: Partial<typeof plane> = {}) =>
    immersedSums(hull, { ...plane, ...of })[SUM[name]]!;
  const slope = (name: keyof typeof SUM, by: keyof typeof plane) => {
    const h = 1e-6;
    return (sum(name, { [by]: plane[by] + h }) - sum(name, { [by]: plane[by] - h })) / (2 * h);
  };

  it('the waterplane’s area and moments are the exact derivatives of volume and moment', () => {
    expect(slope('volume', 'draft')).toBeCloseTo(sum('plane'), 7);
    expect(slope('volume', 'alongSlope')).toBeCloseTo(-sum('planeX'), 7);
    expect(slope('volume', 'acrossSlope')).toBeCloseTo(-sum('planeY'), 7);
    expect(slope('momentX', 'draft')).toBeCloseTo(sum('planeX'), 7);
    expect(slope('momentX', 'alongSlope')).toBeCloseTo(-sum('planeXx'), 6);
    expect(slope('momentY', 'acrossSlope')).toBeCloseTo(-sum('planeYy'), 7);
    const planeZ =
      plane.draft * sum('plane') - plane.alongSlope * sum('planeX') - plane.acrossSlope * sum('planeY');
    expect(slope('momentZ', 'draft')).toBeCloseTo(planeZ, 7);
  });

  it('heights over the water are plumb to it', () => {
    const at = { draft: 0.1, trim: Math.atan(0.03), heel: Math.atan(0.4) };
    expect(heightAboveWater({ x: 0, y: 0, z: 0.1 }, at)).toBe(0);
    expect(heightAboveWater({ x: 1, y: 0, z: 0.1 }, at)).toBeCloseTo(0.03 / Math.hypot(1, 0.03, 0.4), 14);
    expect(heightAboveWater({ x: 0, y: -0.2, z: 0.1 }, at)).toBeCloseTo(-0.08 / Math.hypot(1, 0.03, 0.4), 14);
  });
});

it('the keel out of the water at an end: the waterline ends where the keel meets the water', () => {
  const hull = sampleHull('single');
  const lies = { draft: 0.02, trim: 0, heel: 0 };
  const p: ImmersedProperties = immersedProperties(hull, lies);
  // Rocker 30 mm · ξ⁴ crosses 20 mm at ξ = (2/3)^¼; the table is rounded to a tenth of a millimetre.
  const end = 2.6 * (2 / 3) ** 0.25;
  expect(p.waterplane.foreEnd).toBeCloseTo(end, 2);
  expect(p.waterplane.aftEnd).toBeCloseTo(-end, 2);
  expect(p.waterplane.length).toBeCloseTo(2 * end, 2);
});
