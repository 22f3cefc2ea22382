import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { USUAL_CLASSES } from '../../../core/document/usual-classes.ts';
import type { SectionPoint } from '../../../core/hull/hull.ts';
import { familyStations } from '../../../core/hull/hull-family.ts';
import { sheerHeight } from '../../../core/hull/section-at.ts';
import { withStems } from '../../../core/hull/stem-ends.ts';
import { USUAL_NUMBERS, usualLines } from '../../../core/hull/usual-lines.ts';
import type { Afloat } from '../../../core/hydrostatics/afloat.ts';
import { floatAtRest } from '../../../core/hydrostatics/float-at-rest.ts';
import { immersedProperties } from '../../../core/hydrostatics/immersed-properties.ts';
import { heightAboveWater } from '../../../core/hydrostatics/water-plane.ts';
import { GRAVITY } from '../../../core/units/gravity.ts';
import { cases } from '../../cases.ts';
import { SAMPLE_HULLS, sampleStations } from '../../reference/hydro-sample-hulls.ts';
import { madeHull } from '../hull/made-hull.ts';
import { afloat, anyLoad, crewed, hulls, massesOf, SEED, WATER } from './float-cases.ts';

describe('at rest', () => {
  const LOADS = cases(30, 600);

  it(`weight and buoyancy balance to 1e-9 and buoyancy stands plumb under the weight, seed ${SEED}`, () => {
    let floated = 0;
    fc.assert(
      fc.property(anyLoad, (load) => {
        const hull = hulls[load.which];
        const rest = floatAtRest(hull, { masses: massesOf(load), waterDensity: WATER, heel: load.heel });
        if (rest.kind !== 'afloat') return;
        floated++;
        const { volume, centroid } = immersedProperties(hull, rest);
        expect(Math.abs((volume * WATER) / rest.massKg - 1)).toBeLessThan(1e-9);
        const k = Math.tan(rest.trim);
        const arm = centroid.x - rest.centreOfMass.x - k * (centroid.z - rest.centreOfMass.z);
        expect(Math.abs(arm) / hull.length).toBeLessThan(1e-9);
        expect(rest.iterations).toBeLessThanOrEqual(8);
        expect(rest.leastFreeboard.value).toBeGreaterThanOrEqual(0);
      }),
      { seed: SEED, numRuns: LOADS },
    );
    expect(floated).toBeGreaterThan(LOADS / 2);
  });

  it.each(SAMPLE_HULLS)(
    '%s settles within 8 steps from cold under every crew and station of its weight',
    (name) => {
      for (const mass of [30, 60, 90, 120]) {
        for (const x of [-0.6, -0.2, 0, 0.3, 0.6]) {
          const crew = { single: 1, training: 1, pair: 2, four: 4 }[name];
          const rest = floatAtRest(hulls[name], {
            masses: massesOf({ mass: mass * crew, x, z: 0.55 }),
            waterDensity: WATER,
          });
          if (rest.kind === 'afloat') expect(rest.iterations).toBeLessThanOrEqual(8);
          else expect(mass).toBe(120);
        }
      }
    },
  );

  /** Usual hulls of odd sizes beside the sample ones: 4 × 2 more. */
  const usual = USUAL_CLASSES.flatMap((boatClass) => {
    const { lengthM, beamM } = USUAL_NUMBERS[boatClass];
    return [0.8, 1.15].map((by) => {
      const lines = usualLines({ boatClass, lengthM: lengthM * by, beamM: beamM / by });
      return madeHull({ name: boatClass, stations: familyStations(lines) });
    });
  });

  it.each([
    { heel: 0.26, most: 10 },
    { heel: 1, most: 13 },
  ])(`takes at most $most steps from cold within $heel rad of upright, seed ${SEED}`, ({ heel, most }) => {
    let worst = 0;
    const share = (least: number, greatest: number) => fc.double({ min: least, max: greatest, noNaN: true });
    const load = fc.record({
      hull: fc.constantFrom(...Object.values(hulls), ...usual),
      mass: share(0.02, 0.9),
      x: share(-0.25, 0.25),
      z: share(0.05, 0.9),
      heel: share(-heel, heel),
    });
    fc.assert(
      fc.property(load, (given) => {
        const mass = given.mass ** 1.5 * given.hull.levelVolumes.at(-1)! * WATER;
        const masses = [{ mass, x: given.x * given.hull.length, y: 0, z: given.z }];
        const rest = floatAtRest(given.hull, { masses, waterDensity: WATER, heel: given.heel });
        if (rest.kind === 'afloat') worst = Math.max(worst, rest.iterations);
      }),
      { seed: SEED, numRuns: cases(60, 3000) },
    );
    expect(worst).toBeLessThanOrEqual(most);
    expect(worst).toBeGreaterThan(5);
  });

  it('a start saves steps and changes nothing', () => {
    const masses = crewed(14, 1);
    const cold = afloat(floatAtRest(hulls.single, { masses, waterDensity: WATER }));
    const moved = masses.map((m, i) => (i === 1 ? { ...m, x: m.x + 0.002 } : m));
    const warm = afloat(floatAtRest(hulls.single, { masses: moved, waterDensity: WATER, start: cold }));
    const fresh = afloat(floatAtRest(hulls.single, { masses: moved, waterDensity: WATER }));
    expect(warm.iterations).toBeLessThanOrEqual(fresh.iterations);
    expect(Math.abs(warm.draft - fresh.draft)).toBeLessThan(1e-9);
    expect(Math.abs(warm.trim - fresh.trim)).toBeLessThan(1e-10);
    const nonsense = floatAtRest(hulls.single, {
      masses,
      waterDensity: WATER,
      start: { draft: Number.NaN, trim: 9 },
    });
    expect(nonsense).toEqual(cold);
  });

  it('a start far off still lands at the same place', () => {
    const masses = crewed(20, 2);
    const cold = afloat(floatAtRest(hulls.pair, { masses, waterDensity: WATER }));
    for (const start of [
      { draft: -0.2, trim: 0 },
      { draft: 0.5, trim: 0.05 },
      { draft: 0.1, trim: -0.1 },
    ]) {
      const rest = afloat(floatAtRest(hulls.pair, { masses, waterDensity: WATER, start }));
      expect(Math.abs(rest.draft - cold.draft)).toBeLessThan(1e-9);
      expect(Math.abs(rest.trim - cold.trim)).toBeLessThan(1e-10);
    }
  });
});

describe('the figures that go with it', () => {
  const hull = hulls.single;
  const rest = afloat(floatAtRest(hull, { masses: crewed(14, 1), waterDensity: WATER }));

  it('freeboards stand plumb over the water at the ends and nowhere less than the least', () => {
    const over = (x: number) => heightAboveWater({ x, y: 0, z: sheerHeight(hull, x) }, rest);
    expect(rest.freeboardBow).toBeCloseTo(over(hull.foreX), 12);
    expect(rest.freeboardStern).toBeCloseTo(over(hull.aftX), 12);
    expect(rest.leastFreeboard.value).toBeCloseTo(over(rest.leastFreeboard.x), 12);
    for (let x = -2.5; x <= 2.5; x += 0.1) expect(over(x)).toBeGreaterThan(rest.leastFreeboard.value - 1e-4);
  });

  it('bow over stern is the length times tan(trim)', () => {
    expect(rest.bowOverStern).toBeCloseTo(5.2 * Math.tan(rest.trim), 14);
  });

  it('a kilogram a centimetre and a moment a centimetre are what they say', () => {
    const more = afloat(
      floatAtRest(hull, {
        masses: [
          ...crewed(14, 1),
          { mass: 0.01 * rest.massPerCentimetre, x: rest.waterplane.lcf, y: 0, z: 0 },
        ],
        waterDensity: WATER,
      }),
    );
    const at = (r: Afloat) => r.draft - Math.tan(r.trim) * rest.waterplane.lcf;
    expect((at(more) - at(rest)) * 1000).toBeCloseTo(0.1, 3);
    // With raked ends the waterline is shorter than the boat, over whose whole length trim is told.
    const rake = { rakeM: 0.4, curveM: 0 };
    for (const one of [hull, withStems(hull, { bow: rake, stern: rake })]) {
      const still = afloat(floatAtRest(one, { masses: crewed(14, 1), waterDensity: WATER }));
      const shift = (0.1 * still.momentPerCentimetreTrim) / (83 * GRAVITY);
      const moved = crewed(14, 1).map((m, i) => (i === 1 ? { ...m, x: m.x + shift } : m));
      const trimmed = afloat(floatAtRest(one, { masses: moved, waterDensity: WATER }));
      expect((trimmed.bowOverStern - still.bowOverStern) * 1000).toBeCloseTo(-1, 2);
    }
  });

  it('weight forward puts the bow down, weight aft the stern', () => {
    const shifted = (dx: number) =>
      afloat(
        floatAtRest(hull, {
          masses: crewed(14, 1).map((m, i) => (i === 1 ? { ...m, x: m.x + dx } : m)),
          waterDensity: WATER,
        }),
      );
    expect(shifted(0.1).bowOverStern).toBeLessThan(rest.bowOverStern);
    expect(shifted(-0.1).bowOverStern).toBeGreaterThan(rest.bowOverStern);
    expect(shifted(0.1).freeboardBow).toBeLessThan(rest.freeboardBow);
  });

  it('mass and centre are those of the list', () => {
    expect(rest.massKg).toBe(97);
    expect(rest.centreOfMass.x).toBeCloseTo((83 * -0.05) / 97, 14);
    expect(rest.centreOfMass.z).toBeCloseTo((14 * 0.13 + 83 * 0.6) / 97, 14);
  });
});

describe('laws that hold for every hull', () => {
  const masses = [
    { mass: 15, x: 0, y: 0, z: 0.13 },
    { mass: 80, x: -0.1, y: 0.01, z: 0.6 },
  ];

  it(`a heel to the other side mirrors every figure exactly, seed ${SEED}`, () => {
    fc.assert(
      fc.property(anyLoad, (load) => {
        const here = floatAtRest(hulls[load.which], {
          masses: massesOf(load),
          waterDensity: WATER,
          heel: load.heel,
        });
        const there = floatAtRest(hulls[load.which], {
          masses: massesOf(load),
          waterDensity: WATER,
          heel: -load.heel,
        });
        if (here.kind !== 'afloat' || there.kind !== 'afloat') {
          expect(there).toEqual(here);
          return;
        }
        expect(there.heel + here.heel).toBe(0);
        expect(there.centroid.y + here.centroid.y).toBe(0);
        expect(there).toEqual({
          ...here,
          heel: there.heel,
          centroid: { ...here.centroid, y: there.centroid.y },
        });
      }),
      { seed: SEED, numRuns: cases(15, 150) },
    );
  });

  it('moving hull and masses together moves the answer with them', () => {
    const [dx, dz] = [1.3, -0.2];
    const moved = madeHull({
      name: 'moved',
      stations: sampleStations('single').map(({ x, section }) => ({
        x: x + dx,
        section: section.map(([y, z]): SectionPoint => [y, z + dz]),
      })),
    });
    const here = afloat(floatAtRest(hulls.single, { masses, waterDensity: WATER, heel: 0.1 }));
    const there = afloat(
      floatAtRest(moved, {
        masses: masses.map((m) => ({ ...m, x: m.x + dx, z: m.z + dz })),
        waterDensity: WATER,
        heel: 0.1,
      }),
    );
    expect(there.trim).toBeCloseTo(here.trim, 10);
    expect(there.draft).toBeCloseTo(here.draft + dz + dx * Math.tan(here.trim), 9);
    expect(there.centroid.x).toBeCloseTo(here.centroid.x + dx, 8);
    expect(there.transverseGm).toBeCloseTo(here.transverseGm, 9);
  });

  it('a boat s times as large carries s³ the mass at s the draft and the same trim', () => {
    const s = 1.7;
    const large = madeHull({
      name: 'large',
      stations: sampleStations('single').map(({ x, section }) => ({
        x: x * s,
        section: section.map(([y, z]): SectionPoint => [y * s, z * s]),
      })),
    });
    const here = afloat(floatAtRest(hulls.single, { masses, waterDensity: WATER, heel: 0.1 }));
    const there = afloat(
      floatAtRest(large, {
        masses: masses.map((m) => ({ mass: m.mass * s ** 3, x: m.x * s, y: m.y * s, z: m.z * s })),
        waterDensity: WATER,
        heel: 0.1,
      }),
    );
    expect(there.trim).toBeCloseTo(here.trim, 9);
    expect(there.draft).toBeCloseTo(here.draft * s, 8);
    expect(there.waterplane.area).toBeCloseTo(here.waterplane.area * s * s, 7);
    expect(there.longitudinalGm).toBeCloseTo(here.longitudinalGm * s, 5);
    expect(there.wettedSurface).toBeCloseTo(here.wettedSurface * s * s, 7);
  });

  it('twice the density floats twice the mass in the same place', () => {
    const here = afloat(floatAtRest(hulls.single, { masses, waterDensity: 1000 }));
    const there = afloat(
      floatAtRest(hulls.single, {
        masses: masses.map((m) => ({ ...m, mass: 2 * m.mass })),
        waterDensity: 2000,
      }),
    );
    expect(there.draft).toBe(here.draft);
    expect(there.trim).toBe(here.trim);
  });

  it('the order of the masses and splitting one make no difference', () => {
    const here = afloat(floatAtRest(hulls.single, { masses, waterDensity: WATER }));
    const split = [masses[1]!, { ...masses[0]!, mass: 5 }, { ...masses[0]!, mass: 10 }];
    const there = afloat(floatAtRest(hulls.single, { masses: split, waterDensity: WATER }));
    expect(there.draft).toBeCloseTo(here.draft, 12);
    expect(there.trim).toBeCloseTo(here.trim, 12);
  });
});
