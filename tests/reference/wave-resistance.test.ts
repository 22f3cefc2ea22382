import { describe, expect, it } from 'vitest';
import { immersedProperties } from '../../core/hydrostatics/immersed-properties.ts';
import { integrateToInfinity, kronrod } from '../../core/under-way/adaptive-quadrature.ts';
import { immersedGrid } from '../../core/under-way/immersed-grid.ts';
import { waveNumber } from '../../core/under-way/wave-number.ts';
import { waveResistance } from '../../core/under-way/wave-resistance.ts';
import { wigley } from './hydro-shapes.ts';
import { wigleyShallowResistance, wigleyWaveResistance } from './wave-wigley.ts';

/** A Wigley hull of a single's size: length over beam 12.4. The check is a closed form. */
const shape = { L: 5.2, B: 0.42, T: 0.1031 };
const hull = wigley(shape, { stations: 41, points: 121 });
const attitude = { draft: shape.T, trim: 0, heel: 0 };
const immersed = immersedProperties(hull, attitude);
const gridOf = (stations: number, depths: number) =>
  immersedGrid(hull, { attitude, immersed, size: { stations, depths } });
const SPEEDS = [1.5, 2, 2.5, 3, 3.5, 4, 4.2, 5, 6];

describe("Michell's integral for a Wigley hull, inner integrals in closed form", () => {
  const grid = gridOf(81, 21);

  it.each(SPEEDS)('deep water, %f m/s: within 0.2 %', (speed) => {
    const ours = waveResistance(grid, { speed, waterDensity: 1000 });
    expect(Math.abs(ours / wigleyWaveResistance(shape, { speed, density: 1000 }) - 1)).toBeLessThan(0.002);
  });

  it('converges like the square of the spacing', () => {
    const exact = wigleyWaveResistance(shape, { speed: 4.2, density: 1000 });
    const errors = [gridOf(41, 11), gridOf(81, 21), gridOf(161, 41)].map((each) =>
      Math.abs(waveResistance(each, { speed: 4.2, waterDensity: 1000, tolerance: 1e-6 }) / exact - 1),
    );
    expect(errors[0]! / errors[1]!).toBeGreaterThan(3);
    expect(errors[1]! / errors[2]!).toBeGreaterThan(2.5);
  });

  it.each([
    [3, 2],
    [4.2, 1.2],
    [4.2, 1.8],
    [4.2, 2.5],
    [5.5, 2],
  ])('%f m/s over %f m of water: within 0.3 %%', (speed, depth) => {
    const ours = waveResistance(grid, { speed, waterDensity: 1000, depth });
    const other = wigleyShallowResistance(shape, { speed, density: 1000, depth });
    expect(Math.abs(ours / other - 1)).toBeLessThan(0.003);
  });

  it('meets deep water as the bottom sinks away, and peaks near the critical depth U²/g', () => {
    const at = (depth?: number) => waveResistance(grid, { speed: 4.2, waterDensity: 1000, depth });
    expect(at(100) / at()).toBeCloseTo(1, 4);
    const critical = 4.2 ** 2 / 9.81;
    expect(at(critical * 1.1)).toBeGreaterThan(at());
    expect(at(critical * 1.1)).toBeGreaterThan(at(critical * 0.5));
  });

  it('grows with the square of the beam, as thin-ship theory must', () => {
    const narrow = wigley({ ...shape, B: 0.21 }, { stations: 41, points: 121 });
    const half = immersedGrid(narrow, {
      attitude,
      immersed: immersedProperties(narrow, attitude),
      size: { stations: 81, depths: 21 },
    });
    const wave = { speed: 4.2, waterDensity: 1000 };
    expect(waveResistance(half, wave) / waveResistance(grid, wave)).toBeCloseTo(0.25, 6);
  });

  it('is 0 at rest', () => {
    expect(waveResistance(grid, { speed: 0, waterDensity: 1000 })).toBe(0);
  });
});

/**
 * The parabolic hull that towing tanks share, L/B = 10 and L/T = 16 (W. C. S. Wigley; ITTC cooperative experiments, Kajitani and
 * others 1983). Its wetted surface 0.1487 L² and the humps and hollows of its curve are published there; here they are from
 * memory, read to about 0.01 of Froude number. Thin-ship theory's own value is printed by L. J. Doctors and R. F. Beck, "Numerical
 * Aspects of the Neumann–Kelvin Problem", Journal of Ship Research 31 (1987) 1–13, table 1: 1000 C_W = 1.2486 at a Froude number of
 * 0.35, by the wetted surface. It is taken from works that quote the
 * table, not from the journal's page: second-hand. No other printed figure of this hull was found; the closed forms and quadratures above do not
 * depend on it.
 */
describe('the Wigley hull of the towing tanks', () => {
  const standard = { L: 4, B: 0.4, T: 0.25 };
  const towed = wigley(standard, { stations: 41, points: 121 });
  const lying = { draft: standard.T, trim: 0, heel: 0 };
  const wet = immersedProperties(towed, lying);
  const standardGrid = immersedGrid(towed, {
    attitude: lying,
    immersed: wet,
    size: { stations: 81, depths: 21 },
  });
  const coefficient = (froude: number) => {
    const speed = froude * Math.sqrt(9.80665 * standard.L);
    const newtons = waveResistance(standardGrid, { speed, waterDensity: 1000 });
    return newtons / (0.5 * 1000 * speed ** 2 * wet.wettedSurface);
  };

  it('has the wave resistance that thin-ship theory is published with: within 0.3 %', () => {
    expect(Math.abs(coefficient(0.35) / 1.2486e-3 - 1)).toBeLessThan(0.003);
  });

  it('has its published wetted surface', () => {
    expect(wet.wettedSurface / standard.L ** 2).toBeCloseTo(0.1487, 3);
  });

  it.each([
    ['hump', 0.3, 0.02, 1],
    ['hollow', 0.345, 0.015, -1],
    ['greatest hump', 0.5, 0.03, 1],
  ] as const)('has its %s near a Froude number of %f', (_name, froude, within, sign) => {
    for (const beside of [froude - 2 * within, froude + 2 * within]) {
      expect(sign * (coefficient(froude) - coefficient(beside))).toBeGreaterThan(0);
    }
  });
});

describe('the quadrature, against integrals in closed form', () => {
  it.each([
    ['exp(−u)', (u: number) => Math.exp(-u), 1, 600],
    ['exp(−u) cos 5u', (u: number) => Math.exp(-u) * Math.cos(5 * u), 1 / 26, 600],
    ['u² exp(−u²)', (u: number) => u ** 2 * Math.exp(-(u ** 2)), Math.sqrt(Math.PI) / 4, 600],
    [
      'a peak 0.01 wide',
      (u: number) => Math.exp(-(((u - 0.27) / 0.01) ** 2)),
      0.01 * Math.sqrt(Math.PI),
      5000,
    ],
  ])(
    '∫ %s from 0 to infinity, to the share that is asked, without needless values',
    (_name, f, wanted, most) => {
      let values = 0;
      const counted = (u: number) => {
        values += 1;
        return f(u);
      };
      const found = integrateToInfinity(counted, { relative: 1e-7, absolute: 0 });
      expect(Math.abs(found / wanted - 1)).toBeLessThan(1e-6);
      // Forty panels of fifteen values are the most without halving: a smooth function ends before.
      expect(values).toBeLessThan(most);
    },
  );

  it('is exact for polynomials to degree 22, and its error ignores a constant and follows the scale', () => {
    expect(kronrod((u) => 23 * u ** 22, 0, 1).value).toBeCloseTo(1, 12);
    const kinked = (u: number) => Math.abs(u - 0.3) ** 2.5;
    const { value, error } = kronrod(kinked, 0, 1);
    const missed = Math.abs(value - (0.3 ** 3.5 + 0.7 ** 3.5) / 3.5);
    expect(error).toBeGreaterThan(missed);
    expect(error).toBeLessThan(0.05 * value);
    const moved = kronrod((u) => kinked(u) + 7, 0, 1);
    expect(moved.value).toBeCloseTo(value + 7, 12);
    expect(moved.error / error).toBeCloseTo(1, 9);
    expect(kronrod((u) => 3 * kinked(u), 0, 1).error / error).toBeCloseTo(3, 9);
  });

  it('stops where the rest is less than what need not be told apart', () => {
    const upTo = (absolute: number) => {
      let last = 0;
      const noted = (u: number) => {
        last = Math.max(last, u);
        return Math.exp(-u);
      };
      integrateToInfinity(noted, { relative: 0, absolute });
      return last;
    };
    expect(upTo(0.1)).toBeLessThan(3);
    expect(upTo(1e-4)).toBeGreaterThan(upTo(0.1) + 4);
  });
});

describe('the wave number in finite water', () => {
  it.each([
    [1.01, 1],
    [1.5, 1],
    [3, 0.8],
    [0.6, 30],
    [19, 1],
    [25, 1],
  ])('k = %f tanh(k·%f)', (deep, depth) => {
    const k = waveNumber(deep, depth);
    expect(k / (deep * Math.tanh(k * depth))).toBeCloseTo(1, 12);
  });

  it('is 0 where no wave is that slow', () => {
    expect(waveNumber(0.5, 1)).toBe(0);
  });
});
