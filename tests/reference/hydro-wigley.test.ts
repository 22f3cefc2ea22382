import { describe, expect, it } from 'vitest';
import type { Hull } from '../../core/hull/hull.ts';
import { floatAtRest } from '../../core/hydrostatics/float-at-rest.ts';
import { immersedProperties } from '../../core/hydrostatics/immersed-properties.ts';
import { draughtForm, wigley } from './hydro-shapes.ts';

/** Sections of 121 points hold 1 − 2e-5 of the parabola's area; along x the parabola is integrated exactly. */
const FINE = { stations: 41, points: 121 };

const level = (hull: Hull, draft: number) => immersedProperties(hull, { draft, trim: 0, heel: 0 });
const off = (value: number, expected: number) => Math.abs(value / expected - 1);

describe('Wigley hull, 5.2 × .42 × .1031 (closed forms)', () => {
  const [L, B, T] = [5.2, 0.42, 0.1031];
  const p = level(wigley({ L, B, T }, FINE), T);

  it('V = 4/9·LBT = .10007573, C_B 4/9, C_P = C_WP = 2/3, KB = 5T/8', () => {
    expect(off(p.volume, 0.10007573)).toBeLessThan(5e-5);
    expect(off(p.volume, (4 / 9) * L * B * T)).toBeLessThan(5e-5);
    expect(off(p.blockCoefficient, 4 / 9)).toBeLessThan(5e-5);
    expect(off(p.prismaticCoefficient, 2 / 3)).toBeLessThan(1e-6);
    expect(off(p.waterplaneCoefficient, 2 / 3)).toBeLessThan(1e-9);
    expect(off(p.centroid.z, (5 * T) / 8)).toBeLessThan(5e-5);
  });

  it('BM_T = 3B²/35T, BM_L = 3L²/40T', () => {
    expect(off(p.waterplane.transverseBm, (3 * B ** 2) / (35 * T))).toBeLessThan(1e-4);
    expect(off(p.waterplane.longitudinalBm, (3 * L ** 2) / (40 * T))).toBeLessThan(1e-4);
  });

  it('wetted surface 1.94032251 m² with the slope of the shell along the boat, not its girth alone', () => {
    expect(off(p.wettedSurface, 1.94032251)).toBeLessThan(5e-5);
    const small = level(wigley({ L: 1, B: 0.1, T: 0.0625 }, FINE), 0.0625);
    expect(off(small.wettedSurface, 0.14879063)).toBeLessThan(5e-5);
  });

  it.each([0.3, 0.6, 0.85])('part draught %f T', (tau) => {
    const q = level(wigley({ L, B, T }, { stations: 41, points: 241 }), tau * T);
    const g = 2 * tau - tau ** 2;
    const volume = (2 / 3) * L * B * T * (tau ** 2 - tau ** 3 / 3);
    expect(off(q.volume, volume)).toBeLessThan(1e-4);
    expect(
      off(q.centroid.z, (T * ((2 * tau ** 3) / 3 - tau ** 4 / 4)) / (tau ** 2 - tau ** 3 / 3)),
    ).toBeLessThan(1e-4);
    expect(off(q.waterplane.area, (2 / 3) * L * B * g)).toBeLessThan(1e-4);
    expect(off(q.waterplane.transverseBm * q.volume, (4 / 105) * L * B ** 3 * g ** 3)).toBeLessThan(2e-4);
    expect(off(q.waterplane.longitudinalBm * q.volume, ((L ** 3 * B) / 30) * g)).toBeLessThan(1e-4);
  });

  it.each([
    { a: 0.01, shift: -0.03467e-3, xB: 0.19580347, xG: 0.19345762, linear: 0.19434661 },
    { a: 0.02, shift: -0.28285e-3, xB: 0.3860846, xG: 0.38144983, linear: 0.38869321 },
  ])('wall-sided above, KG .30, trimmed a $a at constant V: x_G $xG', ({ a, shift, xB, xG, linear }) => {
    const hull = wigley({ L, B, T, above: 0.15 }, { stations: 161, points: 241 });
    const upright = level(hull, T);
    const rest = floatAtRest(hull, {
      masses: [{ mass: upright.volume * 1000, x: xG, y: 0, z: 0.3 }],
      waterDensity: 1000,
    });
    if (rest.kind !== 'afloat') throw new Error(rest.kind);
    expect(off(Math.tan(-rest.trim), a)).toBeLessThan(5e-5);
    expect(Math.abs(rest.draft - T - shift)).toBeLessThan(2e-7);
    expect(Math.abs(rest.centroid.x - xB)).toBeLessThan(1e-5);
    // The linear estimate a·GM_L, that a rule of thumb would give, misses by far more.
    expect(Math.abs(linear - xG)).toBeGreaterThan(40 * Math.abs(rest.centroid.x - xB));
  });
});

describe('Wigley variants I–IV (Journée 1992, Delft report 909), L 3, d .1875', () => {
  const [L, d] = [3, 0.1875];
  // C_M published; volume, KB and BM_L by quadrature of the same formula.
  it.each([
    { name: 'I', B: 0.3, alpha: 1, cm: 0.909, V: 0.094623, kb: 0.10689, bml: 3.098 },
    { name: 'II', B: 0.6, alpha: 1, cm: 0.909, V: 0.189247, kb: 0.10689, bml: 3.098 },
    { name: 'III', B: 0.3, alpha: 0, cm: 0.667, V: 0.078, kb: 0.11719, bml: 3.75824 },
    { name: 'IV', B: 0.6, alpha: 0, cm: 0.667, V: 0.156, kb: 0.11719, bml: 3.75824 },
  ])('$name: B $B, α $alpha', ({ B, alpha, cm, V, kb, bml }) => {
    const hull = draughtForm({ L, T: d }, { stations: 41, points: 161 }, (x, zeta) => {
      const xi2 = ((2 * x) / L) ** 2;
      const z2 = zeta * zeta;
      const eta = (1 - z2) * (1 - xi2) * (1 + 0.2 * xi2) + alpha * z2 * (1 - z2 ** 4) * (1 - xi2) ** 4;
      return (B / 2) * eta;
    });
    const p = level(hull, d);
    expect(off(p.volume, V)).toBeLessThan(2e-4);
    expect(off(p.centroid.z, kb)).toBeLessThan(2e-4);
    expect(off(p.waterplane.longitudinalBm, bml)).toBeLessThan(3e-4);
    const midship = p.volume / (p.prismaticCoefficient * L * B * d);
    expect(Math.abs(midship - cm)).toBeLessThan(6e-4);
  });
});
