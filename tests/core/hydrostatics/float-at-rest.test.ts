import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { USUAL_CLASSES } from '../../../core/document/usual-classes.ts';
import type { Hull, SectionPoint } from '../../../core/hull/hull.ts';
import { familyStations } from '../../../core/hull/hull-family.ts';
import { hullFromOffsets } from '../../../core/hull/hull-from-offsets.ts';
import { sheerHeight } from '../../../core/hull/section-at.ts';
import { USUAL_NUMBERS, usualLines } from '../../../core/hull/usual-lines.ts';
import type { Afloat, FloatResult, PointMass } from '../../../core/hydrostatics/afloat.ts';
import { floatAtRest } from '../../../core/hydrostatics/float-at-rest.ts';
import { lowestSheer } from '../../../core/hydrostatics/freeboard.ts';
import { immersedProperties } from '../../../core/hydrostatics/immersed-properties.ts';
import { heightAboveWater } from '../../../core/hydrostatics/water-plane.ts';
import { GRAVITY } from '../../../core/units/gravity.ts';
import { SAMPLE_HULLS, sampleHull, sampleStations } from '../../reference/hydro-sample-hulls.ts';
import { box, cosinePlaces, ellipsoid } from '../../reference/hydro-shapes.ts';

const SEED = 20260301;
const WATER = 999.1;

const hulls = Object.fromEntries(SAMPLE_HULLS.map((name) => [name, sampleHull(name)])) as Record<
  (typeof SAMPLE_HULLS)[number],
  Hull
>;

function afloat(result: FloatResult): Afloat {
  if (result.kind !== 'afloat') throw new Error(`not afloat: ${JSON.stringify(result)}`);
  return result;
}

function numbersIn(value: unknown): number[] {
  if (typeof value === 'number') return [value];
  return value && typeof value === 'object' ? Object.values(value).flatMap(numbersIn) : [];
}

/** Crew of n kneelers of 80 kg with paddles, seats spread over the boat, and the boat itself. */
function crewed(own: number, crew: number): PointMass[] {
  const seats = Array.from({ length: crew }, (_, i) => 1.15 * ((crew - 1) / 2 - i));
  return [{ mass: own, x: 0, y: 0, z: 0.13 }, ...seats.map((x) => ({ mass: 83, x: x - 0.05, y: 0, z: 0.6 }))];
}

const anyLoad = fc.record({
  which: fc.constantFrom(...SAMPLE_HULLS),
  mass: fc.double({ min: 20, max: 330, noNaN: true }),
  x: fc.double({ min: -0.5, max: 0.5, noNaN: true }),
  z: fc.double({ min: 0.1, max: 0.9, noNaN: true }),
  heel: fc.double({ min: -0.25, max: 0.25, noNaN: true }),
});

const massesOf = ({ mass, x, z }: { mass: number; x: number; z: number }): PointMass[] => [
  { mass: 15, x: 0, y: 0, z: 0.13 },
  { mass, x, y: 0, z },
];

describe('at rest', () => {
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
      { seed: SEED, numRuns: 600 },
    );
    expect(floated).toBeGreaterThan(300);
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
      return hullFromOffsets({ name: boatClass, stations: familyStations(lines) });
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
      { seed: SEED, numRuns: 3000 },
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
    const shift = (0.1 * rest.momentPerCentimetreTrim) / (83 * GRAVITY);
    const moved = crewed(14, 1).map((m, i) => (i === 1 ? { ...m, x: m.x + shift } : m));
    const trimmed = afloat(floatAtRest(hull, { masses: moved, waterDensity: WATER }));
    expect((trimmed.bowOverStern - rest.bowOverStern) * 1000).toBeCloseTo(-1, 2);
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
      { seed: SEED, numRuns: 150 },
    );
  });

  it('moving hull and masses together moves the answer with them', () => {
    const [dx, dz] = [1.3, -0.2];
    const moved = hullFromOffsets({
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
    const large = hullFromOffsets({
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
    ['nothing aboard', [], WATER, 0, /no weight aboard/],
    ['a mass that is no number', [{ mass: Number.NaN, x: 0, y: 0, z: 0 }], WATER, 0, /not a number/],
    [
      'a place that is no number',
      [{ mass: 80, x: Number.POSITIVE_INFINITY, y: 0, z: 0 }],
      WATER,
      0,
      /not a number/,
    ],
    ['no water', [{ mass: 80, x: 0, y: 0, z: 0 }], 0, 0, /density/],
    ['on its side', [{ mass: 80, x: 0, y: 0, z: 0 }], WATER, 1.6, /on its side/],
    ['ahead of the bow', [{ mass: 80, x: 4, y: 0, z: 0 }], WATER, 0, /ahead of the bow/],
    ['behind the stern', [{ mass: 80, x: -4, y: 0, z: 0 }], WATER, 0, /behind the stern/],
    ['sky-high', [{ mass: 80, x: 0, y: 0, z: 60 }], WATER, 0, /pitch over/],
  ] as const)('%s', (_, masses, waterDensity, heel, reason) => {
    const result = floatAtRest(hulls.single, { masses, waterDensity, heel });
    if (result.kind !== 'no-equilibrium') throw new Error(result.kind);
    expect(result.reason).toMatch(reason);
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
          const hull = hullFromOffsets({ name: 'random', stations: table });
          const masses = list.map(([mass, x, y, z]) => ({ mass, x, y, z }));
          const result = floatAtRest(hull, { masses, waterDensity: WATER, heel });
          expect(numbersIn(result).filter(Number.isNaN)).toEqual([]);
          const sane = [{ mass: 60, x: hull.aftX + hull.length / 2, y: 0, z: 0.1 }];
          const usual = floatAtRest(hull, { masses: sane, waterDensity: WATER, heel: 0.1 });
          expect(numbersIn(usual).every(Number.isFinite)).toBe(true);
        },
      ),
      { seed: SEED, numRuns: 400 },
    );
  });
});
