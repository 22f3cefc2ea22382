import { describe, expect, it } from 'vitest';
import { type Boat, boatSchema } from '../../../core/document/boat-schema.ts';
import { hullSpread } from '../../../core/evaluation/hull-spread.ts';
import { correctHull } from '../../../core/hull/correct-hull.ts';
import { hullOfBoat } from '../../../core/hull/hull-of-boat.ts';
import { floatAtRest } from '../../../core/hydrostatics/float-at-rest.ts';
import { immersedProperties } from '../../../core/hydrostatics/immersed-properties.ts';
import { sampleHull, sampleStations } from '../../reference/hydro-sample-hulls.ts';
import { exampleBoat } from '../example/example-fit.ts';

const offsetsBoat = (correction: unknown = null) =>
  boatSchema.parse({
    ...exampleBoat(),
    hull: {
      kind: 'offsets',
      stations: sampleStations('single').map(({ x, section }) => ({ xM: x, section })),
    },
    correction,
  });

const level = { draft: 0.1, trim: 0, heel: 0 };

describe('hullOfBoat', () => {
  it('is the hull of the document, by offsets and by tape, in the document’s own frame', () => {
    const hull = hullOfBoat(offsetsBoat());
    expect(immersedProperties(hull, level)).toEqual(immersedProperties(sampleHull('single'), level));
    const taped = hullOfBoat(exampleBoat());
    expect([taped.aftX, taped.foreX, taped.name]).toEqual([-2.6, 2.6, 'Example hull']);
  });

  it('carries the correction of its float check', () => {
    const correction = { fullness: 0.05, foreAftFullness: -0.02, residualM: 0.001 };
    const corrected = immersedProperties(hullOfBoat(offsetsBoat(correction)), level);
    const bare = immersedProperties(hullOfBoat(offsetsBoat()), level);
    expect(corrected.volume).toBeGreaterThan(bare.volume * 1.02);
    expect(corrected.centroid.x).toBeLessThan(bare.centroid.x);
    expect(corrected).toEqual(immersedProperties(correctHull(sampleHull('single'), correction), level));
  });

  it('makes the hull of a document once, also of a copy with another floorboard', () => {
    const correction = { fullness: 0.05, foreAftFullness: -0.02, residualM: 0.001 };
    for (const boat of [offsetsBoat(), exampleBoat(), offsetsBoat(correction)]) {
      const hull = hullOfBoat(boat);
      const bare = hullOfBoat({ ...boat, correction: null });
      expect(bare === hull).toBe(boat.correction === null);
      const raised: Boat = { ...boat, floorboard: { ...boat.floorboard, heightM: 0.09 } };
      expect(hullOfBoat(raised)).toBe(hull);
      expect(hullOfBoat({ ...boat, correction: { ...correction, fullness: 0.1 } })).not.toBe(hull);
      expect(hullOfBoat({ ...boat, name: 'Another' }).name).toBe('Another');
    }
  });
});

describe('correctHull', () => {
  const hull = sampleHull('single');

  it('leaves keel, sheer and length alone', () => {
    const fuller = correctHull(hull, { fullness: 0.2, foreAftFullness: 0.1 });
    hull.stations.forEach(({ x, section }, i) => {
      const after = fuller.stations[i]!;
      expect(after.x).toBe(x);
      expect(after.section[0]).toEqual(section[0]);
      expect(after.section.at(-1)).toEqual(section.at(-1));
      expect(after.section.map(([, z]) => z)).toEqual(section.map(([, z]) => z));
    });
  });

  it('at half depth amidships it widens by half the fullness', () => {
    const box = correctHull(
      {
        ...hull,
        stations: [-1, 0, 1].map((x) => ({
          x,
          section: [
            [0.2, 0],
            [0.2, 0.2],
            [0.2, 0.4],
          ],
        })),
        aftX: -1,
        foreX: 1,
        length: 2,
      },
      { fullness: 0.1, foreAftFullness: 0.04 },
    );
    expect(box.stations[1]!.section[1]![0]).toBeCloseTo(0.2 * 1.05, 12);
    expect(box.stations[2]!.section[1]![0]).toBeCloseTo(0.2 * 1.07, 12);
    expect(box.stations[0]!.section[1]![0]).toBeCloseTo(0.2 * 1.03, 12);
  });

  it('nothing to correct gives the same hull; the largest corrections still give one', () => {
    expect(correctHull(hull, { fullness: 0, foreAftFullness: 0 })).toBe(hull);
    for (const fullness of [-0.5, 0.5]) {
      for (const foreAftFullness of [-0.5, 0.5]) {
        const { volume } = immersedProperties(correctHull(hull, { fullness, foreAftFullness }), level);
        expect(volume).toBeGreaterThan(0.02);
      }
    }
  });
});

describe('hullSpread', () => {
  const checked = { fullness: 0.01, foreAftFullness: 0, residualM: 0.001 };
  const spreads = [offsetsBoat(), exampleBoat()].map((boat) => hullSpread(boat));
  const check = {
    bowMarkXM: 2.2,
    sternMarkXM: -2.2,
    alone: { bowM: 0.24, sternM: 0.23 },
    loaded: { bowM: 0.16, sternM: 0.16, massKg: 80, atXM: 0 },
  };

  it('offsets are surer than a tape, and a float check is surer than the tape it corrects', () => {
    const [offsets, tape] = spreads;
    const floated = hullSpread(
      boatSchema.parse({ ...exampleBoat(), correction: checked, floatCheck: check }),
    );
    for (const key of ['draft', 'trimRest', 'trimAngle', 'freeboardBow', 'leastFreeboard'] as const) {
      expect(offsets![key]).toBeLessThan(tape![key]);
      expect(floated[key]).toBeLessThan(tape![key]);
    }
    expect(offsets!.transverseGm).toBeLessThan(tape!.transverseGm);
  });

  it('a poor float check does not make a hull less sure than its own data', () => {
    const poor = hullSpread(
      boatSchema.parse({ ...exampleBoat(), correction: { ...checked, residualM: 0.2 } }),
    );
    expect(poor.draft).toBe(spreads[1]!.draft);
  });

  it('asks fairing at the level the boat floats at: half its depth where nothing floats, the top where no level fits', () => {
    const boat = offsetsBoat();
    const hull = hullOfBoat(boat);
    const rest = floatAtRest(hull, { masses: [{ mass: 90, x: 0, y: 0, z: 0.3 }], waterDensity: 1000 });
    if (rest.kind !== 'afloat') throw new Error(rest.kind);
    /** A hull of four even levels of which fairing added a tenth at one alone. */
    const fairedAt = (level: number) => ({
      ...hull,
      levelVolumes: Float64Array.of(0, 1, 2, 3, 4),
      chordVolumes: Float64Array.from([0, 1, 2, 3, 4], (v, k) => (k === level ? 0.9 * v : v)),
    });
    const draftAt = (level: number, volume: number | null) =>
      hullSpread(boat, volume === null ? null : { ...rest, volume }, fairedAt(level)).draft;
    const counts = (volume: number | null) =>
      [0, 1, 2, 3, 4].filter((level) => draftAt(level, volume) > draftAt(0, volume));
    expect(counts(null)).toEqual([2]);
    expect(counts(0.5)).toEqual([1]);
    expect(counts(2)).toEqual([2]);
    expect(counts(3.5)).toEqual([4]);
    expect(counts(9)).toEqual([4]);
    // Half of what fairing added is one standard deviation, beside the offsets' own: 5 % with 1.2 %.
    const sinkage = (share: number) => (Math.hypot(0.012, share) * 2) / rest.waterplane.area;
    expect(draftAt(2, 2)).toBeCloseTo(Math.hypot(sinkage(0.05), 0.001), 12);
    expect(draftAt(0, 2)).toBeCloseTo(Math.hypot(sinkage(0), 0.001), 12);
  });

  it('knows half-breadths to 0.4 % of the greatest in a table of offsets', () => {
    const boat = offsetsBoat();
    const greatest = Math.max(...sampleStations('single').flatMap(({ section }) => section.map(([y]) => y)));
    expect(hullSpread(boat).halfBreadth / (0.004 * greatest)).toBeCloseTo(1, 2);
  });

  it('takes its sensitivities from the boat afloat, else from a racing single', () => {
    const masses = [
      { mass: 14, x: 0, y: 0, z: 0.15 },
      { mass: 83, x: 0, y: 0, z: 0.6 },
    ];
    const afloat = floatAtRest(sampleHull('single'), { masses, waterDensity: 1000 });
    const there = hullSpread(offsetsBoat(), afloat);
    for (const key of Object.keys(there) as (keyof typeof there)[]) {
      expect(there[key] / spreads[0]![key]).toBeGreaterThan(0.8);
      expect(there[key] / spreads[0]![key]).toBeLessThan(1.25);
    }
    const sunk = floatAtRest(sampleHull('single'), {
      masses: [{ mass: 900, x: 0, y: 0, z: 0 }],
      waterDensity: 1000,
    });
    expect(hullSpread(offsetsBoat(), sunk)).toEqual(spreads[0]);
  });

  it('is of the size that the note says: about 1.4 and 1 mm by offsets, 4 and 4 mm by tape', () => {
    const [offsets, tape] = spreads;
    expect(offsets!.draft * 1000).toBeCloseTo(1.4, 0);
    expect(offsets!.trimRest * 1000).toBeCloseTo(1.2, 0);
    expect(tape!.draft * 1000).toBeCloseTo(4, 0);
    expect(tape!.trimRest * 1000).toBeCloseTo(3.6, 0);
  });
});
