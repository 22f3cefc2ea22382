import { describe, expect, it } from 'vitest';
import { ittcFriction, kinematicViscosity } from '../../../core/under-way/friction.ts';

describe('ITTC 1957 line (closed form; values printed in textbooks of resistance)', () => {
  it.each([
    [1e6, 4.6875e-3],
    [1e7, 3e-3],
    [1e8, 2.0833e-3],
    [1e9, 1.5306e-3],
  ])('Re %e', (reynolds, expected) => {
    expect(ittcFriction(reynolds)).toBeCloseTo(expected, 7);
  });

  it('stays finite at rest', () => {
    expect(Number.isFinite(ittcFriction(0))).toBe(true);
  });
});

describe('viscosity of water against the table of ITTC 7.5-02-01-03 (values from memory)', () => {
  it.each([
    [5, 1.5185e-6],
    [10, 1.3064e-6],
    [15, 1.1386e-6],
    [20, 1.0034e-6],
    [25, 0.8927e-6],
  ])('fresh at %d °C within 1.3 %%', (celsius, expected) => {
    expect(Math.abs(kinematicViscosity(celsius) / expected - 1)).toBeLessThan(0.013);
  });

  it('salt of 35 at 15 °C is 1.189e-6', () => {
    expect(kinematicViscosity(15, 35)).toBeCloseTo(1.1892e-6, 9);
  });
});
