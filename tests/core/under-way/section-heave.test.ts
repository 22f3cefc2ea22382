import { describe, expect, it } from 'vitest';
import { scaledExponentialIntegral } from '../../../core/under-way/exponential-integral.ts';
import { sectionHeave } from '../../../core/under-way/section-heave.ts';
import { solveComplex } from '../../../core/under-way/solve-complex.ts';
import { waveSource } from '../../../core/under-way/wave-source.ts';

const G = 9.81;
/** A half circle of radius R in n panels. */
function halfCircle(n: number, R = 1) {
  const turn = Array.from({ length: n + 1 }, (_, i) => (Math.PI / 2) * (i / n));
  return { y: turn.map((t) => R * Math.sin(t)), z: turn.map((t) => -R * Math.cos(t)) };
}
/** Added mass over πR²/2 and damping over that and ω, at νR = ω²R/g. */
function circle(nuR: number, n = 24) {
  const omega = Math.sqrt(nuR * G);
  const found = sectionHeave(halfCircle(n), { omega, gravity: G })!;
  const half = Math.PI / 2;
  return {
    added: found.addedMass / half,
    damping: found.damping / half / omega,
    far: found.farDamping / half / omega,
  };
}

describe('a panel of pulsing sources under a free surface', () => {
  const k = 2;
  const source = { y: 0.4, z: -0.5, length: 1e-3, normalY: 0.6, normalZ: 0.8 };
  const at = (y: number, z: number, from = source) =>
    waveSource({ y, z, length: 1e-3, normalY: 1, normalZ: 0 }, from, { k, side: 1 });
  const places = [
    [1.1, -0.3],
    [-0.9, -0.7],
    [0.4, -0.9],
  ] as const;

  it.each(places)('has the slopes of its potential at (%f, %f), by small differences', (y, z) => {
    const e = 1e-5;
    const { y: across, z: up } = at(y, z);
    for (const part of ['re', 'im'] as const) {
      expect((at(y + e, z).phi[part] - at(y - e, z).phi[part]) / (2 * e) / source.length).toBeCloseTo(
        across[part] / source.length,
        6,
      );
      expect((at(y, z + e).phi[part] - at(y, z - e).phi[part]) / (2 * e) / source.length).toBeCloseTo(
        up[part] / source.length,
        6,
      );
    }
  });

  it('obeys the linear free surface: ∂φ/∂z = k φ at z = 0', () => {
    for (const y of [-2, 0.1, 0.9, 3]) {
      const { phi, z } = at(y, 0);
      for (const part of ['re', 'im'] as const)
        expect((z[part] - k * phi[part]) / source.length).toBeCloseTo(0, 5);
    }
  });

  it('depends on where it is seen from alone: moved along with its source it is the same', () => {
    for (const [y, z] of places)
      expect(at(y + 0.7, z, { ...source, y: source.y + 0.7 }).phi.re).toBeCloseTo(at(y, z).phi.re, 12);
  });
});

describe('a heaving half circle (F. Ursell, 1949; high-frequency limit in closed form)', () => {
  it('has the added mass πR²/2 at high frequency, about 0.6 of it at the least', () => {
    expect(circle(40, 48).added).toBeGreaterThan(0.95);
    expect(circle(40, 48).added).toBeLessThan(1.03);
    const least = Math.min(...[0.5, 0.7, 0.85, 1, 1.2].map((nuR) => circle(nuR, 48).added));
    expect(least).toBeGreaterThan(0.57);
    expect(least).toBeLessThan(0.64);
  });

  it.each([0.25, 0.5, 1])('is told by fourteen panels as by a hundred, within 2 %%, νR = %f', (nuR) => {
    const [few, many] = [circle(nuR, 14), circle(nuR, 96)];
    expect(Math.abs(few.added / many.added - 1)).toBeLessThan(0.02);
    expect(Math.abs(few.damping / many.damping - 1)).toBeLessThan(0.02);
    expect(Math.abs(few.far / many.far - 1)).toBeLessThan(0.02);
  });

  it.each([0.05, 0.25, 0.5, 1])(
    'loses as much to the waves far away as its pressure gives, νR = %f',
    (nuR) => {
      const { damping, far } = circle(nuR, 48);
      expect(Math.abs(far / damping - 1)).toBeLessThan(0.02);
    },
  );

  it('has the closed limit of long waves: damping 4ρωR² · (1 − …), 8/π of πR²/2·ω', () => {
    expect(circle(0.002, 48).damping / (8 / Math.PI)).toBeGreaterThan(0.97);
    expect(circle(0.002, 48).damping / (8 / Math.PI)).toBeLessThan(1.01);
  });

  it('scales: twice the size at the frequency over √2 has four times the added mass', () => {
    const one = sectionHeave(halfCircle(16), { omega: 3, gravity: G })!;
    const two = sectionHeave(halfCircle(16, 2), { omega: 3 / Math.SQRT2, gravity: G })!;
    expect(two.addedMass / one.addedMass).toBeCloseTo(4, 9);
    expect(two.farDamping / one.farDamping).toBeCloseTo(4 / Math.SQRT2, 9);
  });

  it('is null where nothing is immersed', () => {
    expect(sectionHeave({ y: [], z: [] }, { omega: 5, gravity: G })).toBeNull();
  });
});

describe('the exponential integral (Abramowitz and Stegun, table 5.1 and 5.6)', () => {
  it.each([
    [
      { re: 1, im: 0 },
      { re: 0.2193839344 * Math.E, im: 0 },
    ],
    [
      { re: 20, im: 0 },
      { re: 0.0477185455, im: 0 },
    ],
  ])('at %o', (z, expected) => {
    const found = scaledExponentialIntegral(z);
    expect(found.re).toBeCloseTo(expected.re, 8);
    expect(found.im).toBeCloseTo(expected.im, 8);
  });

  it.each([
    [-11.9, 0.7],
    [-8, -9],
    [0.5, 11.9],
  ])('series and asymptotics meet where they change, toward %f + %fi', (re, im) => {
    const size = Math.hypot(re, im);
    const at = (r: number) => scaledExponentialIntegral({ re: (re / size) * r, im: (im / size) * r });
    const [below, above] = [at(11.9999), at(12.0001)];
    expect(Math.hypot(below.re - above.re, below.im - above.im)).toBeLessThan(
      2e-4 * Math.hypot(below.re, below.im),
    );
  });
});

describe('solveComplex', () => {
  it('solves what it is given', () => {
    const matrix = [
      { re: 0, im: 1 },
      { re: 2, im: -1 },
      { re: 3, im: 0.5 },
      { re: -1, im: 4 },
    ];
    const [x, y] = solveComplex(matrix, [
      { re: 1, im: 2 },
      { re: -3, im: 0 },
    ]);
    const times = (a: { re: number; im: number }, b: { re: number; im: number }) => ({
      re: a.re * b.re - a.im * b.im,
      im: a.re * b.im + a.im * b.re,
    });
    const row = (i: number) => {
      const [a, b] = [times(matrix[2 * i]!, x!), times(matrix[2 * i + 1]!, y!)];
      return { re: a.re + b.re, im: a.im + b.im };
    };
    expect(row(0).re).toBeCloseTo(1, 12);
    expect(row(0).im).toBeCloseTo(2, 12);
    expect(row(1).re).toBeCloseTo(-3, 12);
    expect(row(1).im).toBeCloseTo(0, 12);
  });

  it('refuses a singular matrix', () => {
    const zero = { re: 0, im: 0 };
    expect(() => solveComplex([zero, zero, zero, zero], [zero, zero])).toThrow(RangeError);
  });
});
