import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { SectionPoint } from '../../../core/hull/hull.ts';
import { floatAtRest, lazyFloatAtRest } from '../../../core/hydrostatics/float-at-rest.ts';
import { leastFreeboard, lowestSheer } from '../../../core/hydrostatics/freeboard.ts';
import { immersedProperties } from '../../../core/hydrostatics/immersed-properties.ts';
import { cases } from '../../cases.ts';
import { box, cosinePlaces, ellipsoid } from '../../reference/hydro-shapes.ts';
import { madeHull } from '../hull/made-hull.ts';
import { afloat, hulls, numbersIn, SEED, WATER } from './float-cases.ts';

it('takes the least freeboard at stations and midway between them, whatever was lofted last', () => {
  // The sheer is lowest between two rows, where the search for the end of the waterline lofts last.
  const stations = [-2, -1, 0, 1, 2].map((x) => {
    const sheer = 0.3 + 0.02 * (x - 0.625) ** 2;
    const keel = 0.05 * (x + 2);
    return {
      x,
      section: [
        [0.2, keel],
        [0.25, sheer],
      ] satisfies SectionPoint[],
    };
  });
  const hull = madeHull({ name: 'hollow sheer', stations, between: 'chords' });
  const plane = { draft: 0.15, alongSlope: 0, acrossSlope: 0 };
  const before = leastFreeboard(hull, plane);
  immersedProperties(hull, { draft: 0.05 * 2.25, trim: 0, heel: 0 });
  expect(leastFreeboard(hull, plane)).toEqual(before);
  expect([-2, -1.5, -1, -0.5, 0, 0.5, 1, 1.5, 2]).toContain(before.x);
  const aft = leastFreeboard(hull, { ...plane, alongSlope: 0.1 });
  expect(aft.x).toBe(-2);
});

describe('when it does not float', () => {
  const at = (mass: number, x = 0, z = 0.5) =>
    floatAtRest(hulls.single, { masses: [{ mass, x, y: 0, z }], waterDensity: WATER });

  it('overloaded: with what it could carry, which does float', () => {
    const over = at(400);
    if (over.kind !== 'overloaded') throw new Error(over.kind);
    expect(over.massKg).toBe(400);
    const level = hulls.single.levelVolumes.at(-1)! * WATER;
    expect(over.mostKg).toBeGreaterThan(200);
    expect(over.mostKg).toBeLessThan(level);
    // Loaded level, at the centre of buoyancy, nearly all of it is carried.
    const draft = lowestSheer(hulls.single);
    const { x } = immersedProperties(hulls.single, { draft, trim: 0, heel: 0 }).centroid;
    const carried = at(over.mostKg * 0.97, x, 0.2);
    expect(carried.kind).toBe('afloat');
    expect(at(over.mostKg * 1.001, x, 0.2).kind).toBe('overloaded');
  });

  it('swamped: where the sheer goes under', () => {
    const bow = at(160, 1);
    const stern = at(160, -1);
    if (bow.kind !== 'swamped' || stern.kind !== 'swamped') throw new Error(`${bow.kind} ${stern.kind}`);
    expect(bow.atX).toBeGreaterThan(1);
    expect(stern.atX).toBeLessThan(-1);
  });

  it.each([
    ['nothing aboard', [], WATER, 0, 'no-weight'],
    ['a mass that is no number', [{ mass: Number.NaN, x: 0, y: 0, z: 0 }], WATER, 0, 'no-number'],
    [
      'a place that is no number',
      [{ mass: 80, x: Number.POSITIVE_INFINITY, y: 0, z: 0 }],
      WATER,
      0,
      'no-number',
    ],
    ['no water', [{ mass: 80, x: 0, y: 0, z: 0 }], 0, 0, 'density'],
    ['on its side', [{ mass: 80, x: 0, y: 0, z: 0 }], WATER, 1.6, 'on-side'],
    ['ahead of the bow', [{ mass: 80, x: 4, y: 0, z: 0 }], WATER, 0, 'ahead-of-bow'],
    ['behind the stern', [{ mass: 80, x: -4, y: 0, z: 0 }], WATER, 0, 'behind-stern'],
    ['sky-high', [{ mass: 80, x: 0, y: 0, z: 60 }], WATER, 0, 'pitches-over'],
  ] as const)('%s', (_, masses, waterDensity, heel, reason) => {
    const result = floatAtRest(hulls.single, { masses, waterDensity, heel });
    if (result.kind !== 'no-equilibrium') throw new Error(result.kind);
    expect(result.reason).toBe(reason);
    expect(lazyFloatAtRest(hulls.single, { masses, waterDensity, heel })).toEqual(result);
  });

  it('told late it is told the same: as high as a weight may be before the boat pitches over, and higher', () => {
    const kinds = [0.2, 0.6, 2, 6, 12, 16, 20, 24, 28, 40].map((z) => {
      const load = { masses: [{ mass: 85, x: 0, y: 0.01, z }], waterDensity: WATER, heel: 0.05 };
      const [told, lying] = [floatAtRest(hulls.single, load), lazyFloatAtRest(hulls.single, load)];
      expect('plane' in lying ? lying.tell() : lying).toEqual(told);
      return told.kind;
    });
    expect(new Set(kinds)).toEqual(new Set(['afloat', 'no-equilibrium']));
  });

  it('a closed body is never swamped; over its whole volume it is overloaded', () => {
    const hull = ellipsoid(cosinePlaces(2.5, 41), 61);
    const low = (mass: number) =>
      floatAtRest(hull, { masses: [{ mass, x: 0.1, y: 0, z: -0.1 }], waterDensity: 1000 });
    expect(low(300).kind).toBe('afloat');
    const all = (4 / 3) * Math.PI * 2.5 * 0.25 * 0.15 * 1000;
    const over = low(all * 1.01);
    if (over.kind !== 'overloaded') throw new Error(over.kind);
    expect(Math.abs(over.mostKg / all - 1)).toBeLessThan(2e-3);
  });

  it('a box drawn no higher than its waterline floats with its sheer just awash', () => {
    const rest = floatAtRest(box(5, 0.5, 0.15), {
      masses: [{ mass: 374.99, x: 0, y: 0, z: 0.1 }],
      waterDensity: 1000,
    });
    expect(afloat(rest).leastFreeboard.value).toBeCloseTo(0.000004, 9);
  });
});

describe(`finite input never gives NaN, seed ${SEED}`, () => {
  const wild = fc.double({ min: -1e3, max: 1e3, noNaN: true });
  const finite = fc.oneof(
    fc.double({ min: -3, max: 3, noNaN: true }),
    wild,
    fc.double({ noNaN: true, noDefaultInfinity: true }),
  );
  const point = fc.tuple(
    fc.double({ min: 0, max: 0.6, noNaN: true }),
    fc.double({ min: 1e-4, max: 0.2, noNaN: true }),
  );
  const stations = fc
    .array(
      fc.tuple(
        fc.double({ min: 0.05, max: 2, noNaN: true }),
        fc.array(point, { minLength: 2, maxLength: 7 }),
      ),
      {
        minLength: 3,
        maxLength: 9,
      },
    )
    .map((steps) =>
      steps.map(([, points], i) => ({
        x: steps.slice(0, i + 1).reduce((sum, [gap]) => sum + gap, 0),
        section: points.map(
          ([y], j): SectionPoint => [y, points.slice(1, j + 1).reduce((z, [, dz]) => z + dz, 0)],
        ),
      })),
    );

  it('random hulls under random masses', () => {
    fc.assert(
      fc.property(
        stations,
        fc.array(fc.tuple(finite, finite, finite, finite), { maxLength: 3 }),
        finite,
        (table, list, heel) => {
          if (!table.some(({ section }) => section.some(([y]) => y > 0))) return;
          const hull = madeHull({ name: 'random', stations: table });
          const masses = list.map(([mass, x, y, z]) => ({ mass, x, y, z }));
          const result = floatAtRest(hull, { masses, waterDensity: WATER, heel });
          expect(numbersIn(result).filter(Number.isNaN)).toEqual([]);
          const sane = [{ mass: 60, x: hull.aftX + hull.length / 2, y: 0, z: 0.1 }];
          const usual = floatAtRest(hull, { masses: sane, waterDensity: WATER, heel: 0.1 });
          expect(numbersIn(usual).every(Number.isFinite)).toBe(true);
        },
      ),
      { seed: SEED, numRuns: cases(80, 400) },
    );
  });
});

describe('a box held at a heel', () => {
  it('has the freeboard of its low side at both ends, whichever side that is: (D − T − B/2·tan φ)·cos φ', () => {
    const [B, D, KG] = [0.5, 0.4, 0.12];
    const hull = box(5, B, D);
    for (const heel of [-0.2, 0.2]) {
      const rest = floatAtRest(hull, {
        masses: [{ mass: 375, x: 0, y: 0, z: KG }],
        waterDensity: 1000,
        heel,
      });
      if (rest.kind !== 'afloat') throw new Error(rest.kind);
      const low = (D - 0.15 - (B / 2) * Math.tan(0.2)) * Math.cos(0.2);
      expect(rest.freeboardBow).toBeCloseTo(low, 9);
      expect(rest.freeboardStern).toBeCloseTo(low, 9);
      expect(rest.leastFreeboard.value).toBeCloseTo(low, 9);
    }
  });
});
