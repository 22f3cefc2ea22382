import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { FloatCheck } from '../../../core/document/hull-kinds-schema.ts';
import { correctHull } from '../../../core/hull/correct-hull.ts';
import type { Hull } from '../../../core/hull/hull.ts';
import { sheerHeight } from '../../../core/hull/section-at.ts';
import { type Calibrated, calibrateHull } from '../../../core/hydrostatics/calibrate-hull.ts';
import { floatAtRest } from '../../../core/hydrostatics/float-at-rest.ts';
import { immersedProperties } from '../../../core/hydrostatics/immersed-properties.ts';
import { heightAboveWater } from '../../../core/hydrostatics/water-plane.ts';
import { cases } from '../../cases.ts';
import { SAMPLE_HULLS, sampleHull } from '../../reference/hydro-sample-hulls.ts';

const SEED = 5;
const boat = { boatMass: 15, boatCentre: { x: 0.02, z: 0.13 }, waterDensity: 999.1 };
const marks = { bowMarkXM: 2.2, sternMarkXM: -2.1 };
const loadAt = { massKg: 80, atXM: 0.15 };

/** What would be read beside a boat whose hull is known: the same two conditions, floated. */
function readings(hull: Hull, off: readonly number[] = [0, 0, 0, 0]): FloatCheck {
  const own = { mass: boat.boatMass, x: boat.boatCentre.x, y: 0, z: boat.boatCentre.z };
  const load = { mass: loadAt.massKg, x: loadAt.atXM, y: 0, z: hull.lowestZ + 0.15 };
  const read = [[own], [own, load]].map((masses) => {
    const rest = floatAtRest(hull, { masses, waterDensity: boat.waterDensity });
    if (rest.kind !== 'afloat') throw new Error(rest.kind);
    return [marks.bowMarkXM, marks.sternMarkXM].map((x) =>
      heightAboveWater({ x, y: 0, z: sheerHeight(hull, x) }, rest),
    );
  });
  const [[a, b], [c, d]] = read as [[number, number], [number, number]];
  return {
    ...marks,
    alone: { bowM: a + off[0]!, sternM: b + off[1]! },
    loaded: { bowM: c + off[2]!, sternM: d + off[3]!, ...loadAt },
  };
}

function calibrated(hull: Hull, check: FloatCheck): Calibrated {
  const result = calibrateHull(hull, check, boat);
  if (result.kind !== 'calibrated') throw new Error(result.reason);
  return result;
}

describe('calibrateHull', () => {
  it('gives no correction when the boat swamps with a slightly finer stern', () => {
    const hull = sampleHull(SAMPLE_HULLS[0]!);
    const load = (massKg: number) => ({ mass: massKg, x: -0.4, y: 0, z: hull.lowestZ + 0.15 });
    const own = { mass: boat.boatMass, x: boat.boatCentre.x, y: 0, z: boat.boatCentre.z };
    const floats = (massKg: number) =>
      floatAtRest(hull, { masses: [own, load(massKg)], waterDensity: boat.waterDensity }).kind === 'afloat';
    let [most, over] = [20, 400];
    while (over - most > 1e-6) {
      const massKg = (most + over) / 2;
      if (floats(massKg)) most = massKg;
      else over = massKg;
    }
    const check = { ...readings(hull), loaded: { bowM: 0.1, sternM: 0.01, massKg: most, atXM: -0.4 } };
    expect(calibrateHull(hull, check, boat)).toEqual({ kind: 'not-calibrated', reason: 'does-not-float' });
  });

  it(`finds the two corrections of a hull whose readings are true, seed ${SEED}`, () => {
    const parameter = fc.double({ min: -0.15, max: 0.15, noNaN: true });
    fc.assert(
      fc.property(
        fc.constantFrom(...SAMPLE_HULLS),
        parameter,
        parameter,
        (name, fullness, foreAftFullness) => {
          const drawn = sampleHull(name);
          const built = correctHull(drawn, { fullness, foreAftFullness });
          const { correction, residualM, hull } = calibrated(drawn, readings(built));
          expect(correction.fullness).toBeCloseTo(fullness, 5);
          expect(correction.foreAftFullness).toBeCloseTo(foreAftFullness, 5);
          expect(residualM).toBeLessThan(1e-7);
          const at = { draft: 0.1, trim: 0.002, heel: 0 };
          expect(immersedProperties(hull, at).volume).toBeCloseTo(immersedProperties(built, at).volume, 7);
        },
      ),
      { seed: SEED, numRuns: cases(5, 25) },
    );
  });

  it('readings that agree with the drawing correct nothing', () => {
    const hull = sampleHull('single');
    const { correction, before, after } = calibrated(hull, readings(hull));
    expect(Math.abs(correction.fullness)).toBeLessThan(1e-9);
    expect(Math.abs(correction.foreAftFullness)).toBeLessThan(1e-9);
    expect(Math.abs(before.loaded.bow)).toBeLessThan(1e-9);
    expect(Math.abs(after.alone.stern)).toBeLessThan(1e-9);
  });

  it('reading errors of a millimetre or two leave a residual of their size and a small correction', () => {
    const hull = sampleHull('single');
    const { correction, residualM, before, after } = calibrated(
      hull,
      readings(hull, [0.002, -0.001, -0.002, 0.001]),
    );
    expect(residualM).toBeGreaterThan(2e-4);
    expect(residualM).toBeLessThan(2e-3);
    expect(Math.abs(correction.fullness)).toBeLessThan(0.06);
    expect(before.alone.bow).toBeCloseTo(-0.002, 9);
    const rms = (f: typeof after) => Math.hypot(f.alone.bow, f.alone.stern, f.loaded.bow, f.loaded.stern) / 2;
    expect(rms(after)).toBeCloseTo(residualM, 12);
    expect(rms(after)).toBeLessThan(rms(before));
  });

  it('an error that all four readings share is taken up as fullness of about its size in water', () => {
    const hull = sampleHull('single');
    // Everything 5 mm higher out of the water: a fuller hull than drawn.
    expect(
      calibrated(hull, readings(hull, [0.005, 0.005, 0.005, 0.005])).correction.fullness,
    ).toBeGreaterThan(0.02);
    expect(
      calibrated(hull, readings(hull, [-0.005, -0.005, -0.005, -0.005])).correction.fullness,
    ).toBeLessThan(-0.02);
  });

  it('corrections taken off again give the drawn hull: the given hull is not touched', () => {
    const hull = sampleHull('single');
    const before = immersedProperties(hull, { draft: 0.1, trim: 0, heel: 0 });
    calibrated(hull, readings(correctHull(hull, { fullness: 0.1, foreAftFullness: 0.05 })));
    expect(immersedProperties(hull, { draft: 0.1, trim: 0, heel: 0 })).toEqual(before);
  });

  it.each([
    ['marks side by side', { bowMarkXM: 0.1, sternMarkXM: -0.1 }, 'marks-too-close'],
    ['marks the wrong way round', { bowMarkXM: -2, sternMarkXM: 2 }, 'marks-too-close'],
    ['a load that lifts the boat', { loaded: { bowM: 0.3, sternM: 0.3, ...loadAt } }, 'load-lifts-boat'],
    [
      'a load that sinks it',
      { loaded: { bowM: 0.01, sternM: 0.01, massKg: 450, atXM: 0 } },
      'does-not-float',
    ],
    [
      'readings of another boat',
      { alone: { bowM: 0.6, sternM: 0.1 }, loaded: { bowM: 0.05, sternM: 0.5, ...loadAt } },
      'does-not-fit',
    ],
  ] as const)('%s: %o', (_, change, reason) => {
    const hull = sampleHull('single');
    const result = calibrateHull(hull, { ...readings(hull), ...change }, boat);
    expect(result).toMatchObject({ kind: 'not-calibrated', reason });
    if (reason === 'does-not-fit') expect('residualM' in result && result.residualM).toBeGreaterThan(0.03);
  });
});

describe('a check that does not fit', () => {
  it('is refused from a residual of 3 cm on (estimate)', () => {
    const hull = sampleHull(SAMPLE_HULLS[0]!);
    // Alone read too high, loaded too deep: no shape floats so.
    const misread = (off: number) => calibrateHull(hull, readings(hull, [off, off, -off, -off]), boat);
    const taken = misread(0.0337);
    const refused = misread(0.0342);
    if (taken.kind !== 'calibrated' || refused.kind === 'calibrated') throw new Error('other way about');
    if (refused.reason !== 'does-not-fit') throw new Error(refused.reason);
    expect(taken.residualM).toBeGreaterThan(0.0295);
    expect(taken.residualM).toBeLessThanOrEqual(0.03);
    expect(refused.residualM).toBeGreaterThan(0.03);
    expect(refused.residualM).toBeLessThan(0.0305);
  });
});
