import { describe, expect, it } from 'vitest';
import type { Hull } from '../../../core/hull/hull.ts';
import type { Afloat, PointMass } from '../../../core/hydrostatics/afloat.ts';
import { balanceDemand } from '../../../core/hydrostatics/balance-demand.ts';
import { combinedMass } from '../../../core/hydrostatics/combined-mass.ts';
import { floatAtRest } from '../../../core/hydrostatics/float-at-rest.ts';
import { gzCurve } from '../../../core/hydrostatics/gz-curve.ts';
import { rightingArm } from '../../../core/hydrostatics/righting-arm.ts';
import { toRadians } from '../../../core/units/angle.ts';
import { GRAVITY } from '../../../core/units/gravity.ts';
import { sampleHull } from '../../reference/hydro-sample-hulls.ts';
import { box } from '../../reference/hydro-shapes.ts';

const waterDensity = 1000;

function rest(hull: Hull, masses: readonly PointMass[], heel = 0): Afloat {
  const result = floatAtRest(hull, { masses, waterDensity, heel });
  if (result.kind !== 'afloat') throw new Error(result.kind);
  return result;
}

const demand = (hull: Hull, masses: readonly PointMass[], heel = 0) =>
  balanceDemand(hull, rest(hull, masses, heel), { masses, waterDensity });

describe('balanceDemand', () => {
  it('a kneeling paddler in a racing single: GM well under 0, the moments by hand', () => {
    const masses = [
      { mass: 14, x: 0, y: 0, z: 0.13 },
      { mass: 83, x: -0.03, y: 0.01, z: 0.58 },
    ];
    const d = demand(sampleHull('single'), masses);
    // Orders of magnitude of Wigley-form singles (derived): GM −.24 to −.48.
    expect(d.transverseGm).toBeGreaterThan(-0.48);
    expect(d.transverseGm).toBeLessThan(-0.24);
    expect(d.offCentre).toBeCloseTo(0.83 / 97, 12);
    expect(d.steadyMoment).toBeCloseTo(0.83 * GRAVITY, 10);
    expect(d.equilibriumHeel).toBeNull();
    expect(d.leanMoment).toBeCloseTo((97 * GRAVITY * -d.transverseGm * Math.PI) / 180, 12);
  });

  it('a lower pad asks for less balance', () => {
    const at = (z: number) =>
      demand(sampleHull('single'), [
        { mass: 14, x: 0, y: 0, z: 0.13 },
        { mass: 83, x: 0, y: 0, z },
      ]).transverseGm;
    // 10 mm of 83 of 97 kg.
    expect(at(0.57) - at(0.58)).toBeCloseTo((0.01 * 83) / 97, 6);
  });

  it('one degree of lean asks for what the moments of weight and buoyancy at one degree of heel say', () => {
    // Outside this formula: the boat is floated at 1° and the lever between weight and buoyancy is read off there.
    const masses = [
      { mass: 14, x: 0, y: 0, z: 0.13 },
      { mass: 83, x: 0, y: 0, z: 0.58 },
    ];
    const upright = demand(sampleHull('single'), masses);
    const leaning = rest(sampleHull('single'), masses, toRadians(1));
    const turning = 97 * GRAVITY * -rightingArm(leaning);
    expect(upright.leanMoment! / turning).toBeGreaterThan(0.98);
    expect(upright.leanMoment! / turning).toBeLessThan(1.02);
  });

  it('a pad 14 cm higher asks for about a fifth more per degree, by hand', () => {
    const at = (z: number) =>
      demand(sampleHull('single'), [
        { mass: 14, x: 0, y: 0, z: 0.13 },
        { mass: 83, x: 0, y: 0, z },
      ]).leanMoment!;
    // 14 cm of 83 kg: 83 × 9.80665 × 0.14 × π/180 = 1.99 N·m more.
    expect(at(0.65) - at(0.51)).toBeCloseTo(1.989, 2);
  });

  it('mirrored masses mirror the demand', () => {
    const masses = [
      { mass: 18, x: 0, y: 0, z: 0.13 },
      { mass: 70, x: 0, y: 0.02, z: 0.35 },
    ];
    const left = demand(sampleHull('training'), masses);
    const right = demand(
      sampleHull('training'),
      masses.map((m) => ({ ...m, y: -m.y })),
    );
    expect(right.offCentre).toBe(-left.offCentre);
    expect(right.steadyMoment).toBe(-left.steadyMoment);
    expect(right.equilibriumHeel).toBeCloseTo(-left.equilibriumHeel!, 9);
    expect(right.transverseGm).toBe(left.transverseGm);
  });

  it('GM above 0: the heel of a box by its closed form, tan φ (GM + ½ BM tan²φ) = y_G', () => {
    const [B, T, KG] = [0.5, 0.15, 0.12];
    const bm = B ** 2 / (12 * T);
    const tan = 0.15;
    const masses = [{ mass: 375, x: 0, y: -tan * (T / 2 + bm - KG + 0.5 * bm * tan * tan), z: KG }];
    const d = demand(box(), masses);
    expect(d.leanMoment).toBeNull();
    expect(Math.tan(d.equilibriumHeel!)).toBeCloseTo(tan, 7);
  });

  it('weight to port heels to port; at rest upright it heels nowhere; started from a held heel it is the same', () => {
    const hull = sampleHull('training');
    const masses = (y: number) => [
      { mass: 18, x: 0, y: 0, z: 0.13 },
      { mass: 70, x: 0, y, z: 0.35 },
    ];
    const port = demand(hull, masses(0.02)).equilibriumHeel!;
    expect(port).toBeLessThan(0);
    expect(demand(hull, masses(0)).equilibriumHeel).toBeCloseTo(0, 14);
    expect(demand(hull, masses(0.02), 0.1).equilibriumHeel!).toBeCloseTo(port, 7);
    const lying = rest(hull, masses(0.02), port);
    expect(Math.abs(rightingArm(lying))).toBeLessThan(1e-8);
  });

  it('weight so far out that the side goes under: no heel to rest at', () => {
    const masses = [
      { mass: 18, x: 0, y: 0, z: 0.13 },
      { mass: 90, x: 0, y: 0.34, z: 0.3 },
    ];
    expect(demand(sampleHull('training'), masses).equilibriumHeel).toBeNull();
  });
});

describe('combinedMass', () => {
  it('two masses by hand', () => {
    const two = [
      { mass: 1, x: 0, y: 0, z: 0 },
      { mass: 3, x: 4, y: 2, z: -2 },
    ];
    expect(combinedMass(two)).toEqual({ mass: 4, x: 3, y: 1.5, z: -1.5 });
  });

  it('of nothing is nothing', () => {
    expect(combinedMass([])).toEqual({ mass: 0, x: 0, y: 0, z: 0 });
  });
});

describe('gzCurve', () => {
  const training = sampleHull('training');
  const masses = [
    { mass: 18, x: 0, y: 0, z: 0.13 },
    { mass: 60, x: -0.05, y: 0, z: 0.4 },
  ];

  it('starts with slope GM, rises, and ends where the side goes under', () => {
    const { points, endsAt } = gzCurve(training, { masses, waterDensity });
    const upright = rest(training, masses);
    expect(points[0]!.gz).toBeCloseTo(0, 14);
    const small = gzCurve(training, { masses, waterDensity }, [toRadians(0.1)]).points[0]!;
    expect(small.gz / small.heel).toBeCloseTo(upright.transverseGm, 3);
    expect(endsAt).toBeGreaterThan(toRadians(20));
    expect(points.at(-1)!.leastFreeboard).toBeGreaterThanOrEqual(0);
    expect(points.at(-1)!.heel).toBeLessThan(endsAt!);
  });

  it('is odd in the heel when the weight is on the centreline', () => {
    const heels = [-0.3, -0.1, 0.1, 0.3];
    const { points } = gzCurve(training, { masses, waterDensity }, heels);
    expect(points[0]!.gz).toBeCloseTo(-points[3]!.gz, 12);
    expect(points[1]!.gz).toBeCloseTo(-points[2]!.gz, 12);
  });

  it('with a kneeling paddler in a racing single every arm turns the boat further over', () => {
    const kneeling = [
      { mass: 14, x: 0, y: 0, z: 0.13 },
      { mass: 83, x: 0, y: 0, z: 0.58 },
    ];
    const { points } = gzCurve(sampleHull('single'), { masses: kneeling, waterDensity }, [0.05, 0.1, 0.2]);
    expect(points.length).toBe(3);
    expect(points.every((p) => p.gz < 0)).toBe(true);
  });

  it('nothing that floats: an empty curve that ends at once', () => {
    const sunk = gzCurve(training, { masses: [{ mass: 5000, x: 0, y: 0, z: 0 }], waterDensity }, [0, 0.1]);
    expect(sunk).toEqual({ points: [], endsAt: 0 });
  });
});
