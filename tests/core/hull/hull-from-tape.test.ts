import { describe, expect, it } from 'vitest';
import { hullSchema } from '../../../core/document/boat-schema.ts';
import type { HullSource, TapeHull } from '../../../core/document/hull-kinds-schema.ts';
import { hullFromTape } from '../../../core/hull/hull-from-tape.ts';
import { halfBreadth, keelHeight, sheerHalfBreadth, sheerHeight } from '../../../core/hull/section-at.ts';
import { immersedProperties } from '../../../core/hydrostatics/immersed-properties.ts';
import { notEmpty } from '../../not-empty.ts';
import { sampleHull } from '../../reference/hydro-sample-hulls.ts';
import { asHull } from './made-hull.ts';

const tape = (source: unknown) => hullSchema.parse(source) as Extract<HullSource, { kind: 'tape' }>;

const measured: TapeHull = tape({
  kind: 'tape',
  lengthM: 5.2,
  stations: [-2, -1.2, 0, 1.1, 2.1].map((xM) => {
    const plan = 1 - (xM / 2.6) ** 2;
    return {
      xM,
      keelM: 0.004 * xM ** 2,
      sheerM: 0.27 + 0.005 * xM ** 2,
      sheerBeamM: 0.42 * plan,
      beams: [
        { aboveKeelM: 0.04, beamM: 0.24 * plan },
        { aboveKeelM: 0.11, beamM: 0.35 * plan },
      ],
    };
  }),
});

describe('hullFromTape', () => {
  const hull = asHull(hullFromTape(measured, 'by tape'));

  it('runs exactly through everything measured', () => {
    for (const { xM, keelM, sheerM, sheerBeamM, beams } of notEmpty(measured.stations)) {
      expect(keelHeight(hull, xM)).toBeCloseTo(keelM, 12);
      expect(sheerHeight(hull, xM)).toBeCloseTo(sheerM, 12);
      expect(sheerHalfBreadth(hull, xM)).toBeCloseTo(sheerBeamM / 2, 12);
      for (const { aboveKeelM, beamM } of beams) {
        expect(halfBreadth(hull, xM, keelM + aboveKeelM)).toBeCloseTo(beamM / 2, 12);
      }
    }
  });

  it('keeps a stem of 2 cm where keel and sheer would meet before the end', () => {
    const pinched = measured.stations.map((at) => ({
      ...at,
      keelM: 0.025 * at.xM ** 2,
      sheerM: 0.27 - 0.025 * at.xM ** 2,
    }));
    const closed = asHull(hullFromTape({ ...measured, stations: pinched }));
    const stem = sheerHeight(closed, closed.foreX)! - keelHeight(closed, closed.foreX)!;
    expect(stem).toBeCloseTo(0.02, 9);
  });

  it('closes at half the length to a stem whose keel and sheer carry on', () => {
    expect([hull.aftX, hull.foreX, hull.name]).toEqual([-2.6, 2.6, 'by tape']);
    for (const x of [-2.6, 2.6]) {
      expect(sheerHalfBreadth(hull, x)).toBe(0);
      expect(sheerHeight(hull, x)).toBeGreaterThan(sheerHeight(hull, x * 0.8));
      expect(keelHeight(hull, x)).toBeGreaterThan(keelHeight(hull, x * 0.8));
      expect(keelHeight(hull, x)).toBeLessThan(sheerHeight(hull, x));
    }
  });

  it('sections are monotone between keel and sheer, and the plan narrows to the ends', () => {
    for (const { section } of notEmpty(hull.stations)) {
      section.forEach(([y, z], j) => {
        if (j === 0) return;
        expect(y).toBeGreaterThanOrEqual(section[j - 1]![0] - 1e-9);
        expect(z).toBeGreaterThan(section[j - 1]![1] - 1e-12);
      });
    }
    const beams = [0, 0.8, 1.5, 2.1, 2.4, 2.6].map((x) => sheerHalfBreadth(hull, x));
    beams.forEach((b, i) => {
      if (i > 0) expect(b).toBeLessThan(beams[i - 1]!);
    });
  });

  it('a fair hull taped at seven places floats within 2 % of its offsets', () => {
    const true_ = sampleHull('single');
    const stations = [-2.3, -1.7, -0.9, 0, 0.9, 1.7, 2.3].map((xM) => {
      const keelM = keelHeight(true_, xM);
      const beam = (above: number) => ({
        aboveKeelM: above,
        beamM: 2 * halfBreadth(true_, xM, keelM + above)!,
      });
      return {
        xM,
        keelM,
        sheerM: sheerHeight(true_, xM),
        sheerBeamM: 2 * sheerHalfBreadth(true_, xM),
        beams: [beam(0.03), beam(0.08), beam(0.15)],
      };
    });
    const taped = asHull(hullFromTape(tape({ kind: 'tape', lengthM: 5.2, stations })));
    for (const at of [
      { draft: 0.1, trim: 0, heel: 0 },
      { draft: 0.11, trim: 0.005, heel: 0.1 },
    ]) {
      const [a, b] = [immersedProperties(true_, at), immersedProperties(taped, at)];
      expect(Math.abs(b.volume / a.volume - 1)).toBeLessThan(0.02);
      expect(Math.abs(b.centroid.x - a.centroid.x)).toBeLessThan(0.02);
      expect(Math.abs(b.waterplane.transverseBm / a.waterplane.transverseBm - 1)).toBeLessThan(0.03);
    }
  });

  it('a station with no beams but the sheer’s is a parabola: two thirds of its box', () => {
    const bare = asHull(
      hullFromTape({
        ...measured,
        stations: measured.stations.map((s) => ({ ...s, keelM: 0, beams: [] })),
      }),
    );
    const at = bare.stations.findIndex((s) => s.x === 0);
    const row = 2 * at;
    const area = 2 * bare.rows.area[(row + 1) * bare.rows.points - 1]!;
    expect(area / (0.42 * 0.27)).toBeCloseTo(2 / 3, 3);
  });

  it('mirrors exactly fore and aft', () => {
    const turned = asHull(
      hullFromTape({
        ...measured,
        stations: measured.stations.map((s) => ({ ...s, xM: -s.xM })),
      }),
    );
    const a = immersedProperties(hull, { draft: 0.1, trim: 0.004, heel: 0.05 });
    const b = immersedProperties(turned, { draft: 0.1, trim: -0.004, heel: 0.05 });
    expect(b.volume).toBeCloseTo(a.volume, 13);
    expect(b.centroid.x).toBeCloseTo(-a.centroid.x, 12);
  });

  it('a station measured at the very end stands there itself', () => {
    const stations = [
      ...measured.stations,
      { xM: 2.6, keelM: 0.05, sheerM: 0.31, sheerBeamM: 0.02, beams: [] },
    ];
    const cut = asHull(hullFromTape({ ...measured, stations }));
    expect(sheerHalfBreadth(cut, 2.6)).toBeCloseTo(0.01, 12);
    expect(keelHeight(cut, 2.6)).toBeCloseTo(0.05, 12);
  });

  it('leaves out a station beyond the length and one upside down; says so when too little is left', () => {
    const beyond = { ...measured.stations[0]!, xM: 3 };
    const inverted = { ...measured.stations[0]!, xM: 0.5, keelM: 0.3, sheerM: 0.2 };
    const same = asHull(hullFromTape({ ...measured, stations: [...measured.stations, beyond, inverted] }));
    expect(same.stations.length).toBe(hull.stations.length);
    expect(hullFromTape({ ...measured, lengthM: 1.5 })).toMatchObject({ kind: 'no-hull', station: null });
  });
});
