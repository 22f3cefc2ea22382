import { describe, expect, it } from 'vitest';
import { CLASS_LIMITS } from '../../../core/evaluation/class-limits.ts';
import { curvesOfForm } from '../../../core/hydrostatics/curves-of-form.ts';
import { floatAtRest } from '../../../core/hydrostatics/float-at-rest.ts';
import { immersedProperties } from '../../../core/hydrostatics/immersed-properties.ts';
import { GRAVITY } from '../../../core/units/gravity.ts';
import { SAMPLE_HULLS, sampleHull } from '../../reference/hydro-sample-hulls.ts';
import { box } from '../../reference/hydro-shapes.ts';

const waterDensity = 1000;

describe('curvesOfForm', () => {
  it('a box at two drafts, by hand', () => {
    const [a, b] = curvesOfForm(box(), [0.1, 0.2], { waterDensity });
    expect(a!.displacementKg).toBeCloseTo(250, 9);
    expect(b!.displacementKg).toBeCloseTo(500, 9);
    expect(a!.massPerCentimetre).toBeCloseTo(25, 9);
    expect(a!.transverseKm).toBeCloseTo(0.05 + 0.25 / 1.2, 9);
    expect(a!.longitudinalKm).toBeCloseTo(0.05 + 25 / 1.2, 9);
    expect(a!.momentPerCentimetreTrim).toBeCloseTo((250 * GRAVITY * (25 / 1.2) * 0.01) / 5, 8);
    expect(a!.draft).toBe(0.1);
  });

  it.each(SAMPLE_HULLS)(
    '%s: displacement grows with draft, each step about as its waterplane says',
    (name) => {
      const drafts = Array.from({ length: 12 }, (_, i) => 0.02 + 0.015 * i);
      const rows = curvesOfForm(sampleHull(name), drafts, { waterDensity });
      rows.slice(1).forEach((row, i) => {
        const before = rows[i]!;
        const mean = (row.massPerCentimetre + before.massPerCentimetre) / 2;
        expect((row.displacementKg - before.displacementKg) / (1.5 * mean)).toBeCloseTo(1, 1);
      });
    },
  );

  it('is the immersed properties at that trim and heel, line by line', () => {
    const hull = sampleHull('pair');
    const [row] = curvesOfForm(hull, [0.12], { waterDensity, trim: 0.004, heel: 0.1 });
    expect(row).toMatchObject(immersedProperties(hull, { draft: 0.12, trim: 0.004, heel: 0.1 }));
  });

  it('no drafts, no lines', () => {
    expect(curvesOfForm(box(), [], { waterDensity })).toEqual([]);
  });
});

describe('sample hulls: of the size that racing canoes are', () => {
  // Orders of magnitude of Wigley-form models with 80 kg paddlers and KG .55 (derived, no published canoe offsets were
  // found): draft, GM_T, GM_L, kilograms a centimetre, trim of one centimetre's shift. Singles differ most among themselves.
  const kneelers = { single: 1, pair: 2, four: 4, training: 1 } as const;
  const own = { single: 14, pair: 20, four: 30, training: 18 } as const;
  const float = (name: keyof typeof own) => {
    const crew = kneelers[name];
    const masses = [
      { mass: own[name], x: 0, y: 0, z: 0.13 },
      { mass: 85 * crew, x: -0.03, y: 0, z: 0.6 },
    ];
    const rest = floatAtRest(sampleHull(name), { masses, waterDensity: 999.1 });
    if (rest.kind !== 'afloat') throw new Error(rest.kind);
    return rest;
  };
  const lengths = { single: 5.2, pair: 6.5, four: 9, training: 4.9 } as const;

  it.each(SAMPLE_HULLS)('%s carries its crew with freeboard to spare, in six steps or fewer', (name) => {
    const rest = float(name);
    expect(sampleHull(name).length).toBeCloseTo(lengths[name], 9);
    expect(rest.iterations).toBeLessThanOrEqual(6);
    expect(rest.leastFreeboard.value).toBeGreaterThan(0.12);
    expect(Math.abs(rest.bowOverStern)).toBeLessThan(0.03);
  });

  it.each([
    ['single', 'C1'],
    ['pair', 'C2'],
    ['four', 'C4'],
  ] as const)('the racing %s lies within the length of %s', (name, boatClass) => {
    expect(sampleHull(name).length).toBeLessThanOrEqual(CLASS_LIMITS[boatClass].greatestLengthM + 1e-9);
  });

  it.each([
    { name: 'single', draft: [0.09, 0.13], gm: [-0.48, -0.24], gml: [15, 20], perCm: [11, 15] },
    { name: 'pair', draft: [0.12, 0.16], gm: [-0.5, -0.24], gml: [17, 25], perCm: [15, 20] },
    { name: 'four', draft: [0.15, 0.2], gm: [-0.5, -0.24], gml: [27, 37], perCm: [24, 32] },
  ] as const)('$name: draft, GM, GM_L and kilograms a centimetre', ({ name, draft, gm, gml, perCm }) => {
    const rest = float(name);
    for (const [value, [low, high]] of [
      [rest.draft, draft],
      [rest.transverseGm, gm],
      [rest.longitudinalGm, gml],
      [rest.massPerCentimetre, perCm],
    ] as const) {
      expect(value).toBeGreaterThan(low);
      expect(value).toBeLessThan(high);
    }
  });

  it('one centimetre of an 80 kg paddler changes the single’s trim by two to three millimetres', () => {
    const rest = float('single');
    const millimetres = ((80 * GRAVITY * 0.01) / rest.momentPerCentimetreTrim) * 10;
    expect(millimetres).toBeGreaterThan(2);
    expect(millimetres).toBeLessThan(3);
  });

  it('the broad single stands about by itself under a kneeling paddler', () => {
    expect(Math.abs(float('training').transverseGm)).toBeLessThan(0.1);
  });

  it.each(SAMPLE_HULLS)('%s: cross-sections and waterlines are convex, as the class asks', (name) => {
    const { stations } = sampleHull(name);
    // A tenth of a millimetre of rounding in the table bends a chord of 130 mm by this at most.
    const grain = 2e-4;
    for (const { section } of stations) {
      for (let j = 2; j < section.length; j++) {
        const [[y0, z0], [y1, z1], [y2, z2]] = [section[j - 2]!, section[j - 1]!, section[j]!];
        expect((y1 - y0) * (z2 - z1) - (y2 - y1) * (z1 - z0)).toBeGreaterThan(-grain * 0.02);
      }
    }
    const lines = stations[0]!.section.length;
    for (let j = 0; j < lines; j++) {
      for (let i = 2; i < stations.length; i++) {
        const y = [i - 2, i - 1, i].map((k) => stations[k]!.section[j]![0]);
        expect(y[1]! - (y[0]! + y[2]!) / 2).toBeGreaterThan(-grain);
      }
    }
  });
});
