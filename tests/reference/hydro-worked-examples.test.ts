import { describe, expect, it } from 'vitest';
import { combinedMass } from '../../core/hydrostatics/combined-mass.ts';
import { floatAtRest } from '../../core/hydrostatics/float-at-rest.ts';
import { immersedProperties } from '../../core/hydrostatics/immersed-properties.ts';
import { rightingArm } from '../../core/hydrostatics/righting-arm.ts';
import { toRadians } from '../../core/units/angle.ts';
import { madeHull } from '../core/hull/made-hull.ts';
import { box } from './hydro-shapes.ts';

const upright = (draft: number) => ({ draft, trim: 0, heel: 0 });

/** A wall-sided body whose every waterline has these half-ordinates, equally spaced over a length, aft first. */
function wallSided(length: number, halfOrdinates: readonly number[], depth = 1) {
  const step = length / (halfOrdinates.length - 1);
  return madeHull({
    name: 'waterplane',
    stations: halfOrdinates.map((y, i) => ({
      x: -length / 2 + i * step,
      section: [
        [y, 0],
        [y, depth],
      ],
    })),
  });
}

describe('Barrass & Derrett, Ship Stability for Masters and Mates', () => {
  it('waterplane L 120, half-ordinates 0, 3.7, 5.9, 7.6, 7.5, 4.6, .1: A_W 1207 m²', () => {
    const hull = wallSided(120, [0, 3.7, 5.9, 7.6, 7.5, 4.6, 0.1]);
    // The book runs Simpson's rule through seven ordinates, this hull a cubic: .6 % apart on so coarse a table.
    expect(Math.abs(immersedProperties(hull, upright(0.5)).waterplane.area / 1207 - 1)).toBeLessThan(0.008);
  });

  it('waterplane about its centre, half-ordinates 0, 1.2, 1.5, 1.8, 1.8, 1.5, 1.2, h 3: A 51.6, LCF .77 aft of mid, I_L 1058–1060', () => {
    const hull = wallSided(18, [1.2, 1.5, 1.8, 1.8, 1.5, 1.2, 0]);
    const { waterplane, volume } = immersedProperties(hull, upright(0.5));
    expect(Math.abs(waterplane.area / 51.6 - 1)).toBeLessThan(0.01);
    expect(Math.abs(waterplane.lcf + 0.77)).toBeLessThan(0.05);
    expect(Math.abs((waterplane.longitudinalBm * volume) / 1059 - 1)).toBeLessThan(0.02);
  });

  it('wall-sided ship W 6000 t, KB 3, KM 6, KG 5.5, 25°: GZ .35 m', () => {
    // A box with KB 3 and BM 3: T 6, B √(12·T·BM); length for 6000 t in water of 1 t/m³.
    const [T, B] = [6, Math.sqrt(12 * 6 * 3)];
    const hull = box(6000 / (T * B), B, 14);
    const masses = [{ mass: 6e6, x: 0, y: 0, z: 5.5 }];
    const rest = floatAtRest(hull, { masses, waterDensity: 1000, heel: toRadians(25) });
    if (rest.kind !== 'afloat') throw new Error(rest.kind);
    expect(Math.abs(rightingArm(rest) - 0.35)).toBeLessThan(0.005);
  });

  it('box 65 × 12 × 8, T 4, KG 4: KB 2, BM 3, GM 1, W 3198 t in sea water', () => {
    const hull = box(65, 12, 8);
    const rest = floatAtRest(hull, { masses: [{ mass: 3.198e6, x: 0, y: 0, z: 4 }], waterDensity: 1025 });
    if (rest.kind !== 'afloat') throw new Error(rest.kind);
    expect(rest.draft).toBeCloseTo(4, 9);
    expect(rest.centroid.z).toBeCloseTo(2, 9);
    expect(rest.waterplane.transverseBm).toBeCloseTo(3, 9);
    expect(rest.transverseGm).toBeCloseTo(1, 9);
  });

  it('weights: W 8500 t, KG 7.35, offset .035 m to starboard; with KM 8.70, GM 1.35', () => {
    const total = combinedMass([
      { mass: 8000, x: 0, y: 0, z: 7.6 },
      { mass: 250, x: 0, y: -7.6, z: 6.1 },
      { mass: 300, x: 0, y: 6.1, z: 0.6 },
      { mass: -50, x: 0, y: 4.6, z: 1.2 },
    ]);
    expect(total.mass).toBe(8500);
    expect(total.z).toBeCloseTo(7.35, 2);
    expect(8.7 - total.z).toBeCloseTo(1.35, 2);
    expect(total.y).toBeCloseTo(-0.035, 3);
  });

  it('least KM of a box of breadth 10: 4.08 m at T = B/√6', () => {
    const hull = box(50, 10, 12);
    const km = (draft: number) => {
      const { centroid, waterplane } = immersedProperties(hull, upright(draft));
      return centroid.z + waterplane.transverseBm;
    };
    const least = 10 / Math.sqrt(6);
    expect(km(least)).toBeCloseTo(4.08, 2);
    expect(km(least - 0.2)).toBeGreaterThan(km(least));
    expect(km(least + 0.2)).toBeGreaterThan(km(least));
  });
});

it('Nicholls’s Seamanship: box beam 36 ft, draught 18 ft: BM 6, KM 15 ft', () => {
  const { centroid, waterplane } = immersedProperties(box(100, 36, 30), upright(18));
  expect(waterplane.transverseBm).toBeCloseTo(6, 9);
  expect(centroid.z + waterplane.transverseBm).toBeCloseTo(15, 9);
});
