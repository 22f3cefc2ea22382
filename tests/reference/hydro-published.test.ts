import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { waterSchema } from '../../core/document/water-schema.ts';
import type { SectionPoint } from '../../core/hull/hull.ts';
import { immersedProperties } from '../../core/hydrostatics/immersed-properties.ts';
import { seaWaterDensity, waterDensity } from '../../core/hydrostatics/water-density.ts';
import { madeHull } from '../core/hull/made-hull.ts';

describe('Series 60, C_B .60 (Todd, DTMB report 1712, table 3, secondary source)', () => {
  // Half-breadths as shares of each waterline's greatest, whose own half-breadth over B/2 is the last row;
  // L/B 7.5, B/T 2.5. Six waterlines only: the published figures come from the lines themselves.
  const text = readFileSync(new URL('hydro-series60-cb060.csv', import.meta.url), 'utf8');
  const [head, ...rows] = text
    .trim()
    .split('\n')
    .map((line) => line.split(','));
  const heights = [0, 0.075, 0.25, 0.5, 0.75, 1];
  const greatest = rows.at(-1)!.slice(1, 7).map(Number);
  const [L, B] = [7.5, 1];
  const T = B / 2.5;
  const stations = rows.slice(0, -1).map((cells) => ({
    x: L / 2 - Number(cells[0]) * L,
    section: heights.map((h, i): SectionPoint => [(B / 2) * Number(cells[i + 1]) * greatest[i]!, h * T]),
  }));
  const hull = madeHull({ name: 'Series 60', stations });
  const p = immersedProperties(hull, { draft: T, trim: 0, heel: 0 });
  const midship = p.volume / (p.prismaticCoefficient * L * B * T);

  it('reads the table it says it reads', () => {
    expect(head!.slice(0, 2)).toEqual(['x_from_FP', 'TAN(keel)']);
    expect(stations).toHaveLength(25);
  });

  it('C_B .600, C_M .977, C_P .614 within 1 %', () => {
    expect(p.volume / (L * B * T) / 0.6).toBeGreaterThan(0.99);
    expect(p.volume / (L * B * T) / 0.6).toBeLessThan(1.01);
    expect(Math.abs(midship / 0.977 - 1)).toBeLessThan(0.01);
    expect(Math.abs(p.prismaticCoefficient / 0.614 - 1)).toBeLessThan(0.01);
  });

  it('LCB 1.5 % of the length aft of midships, within .2 %', () => {
    expect(Math.abs((-100 * p.centroid.x) / L - 1.5)).toBeLessThan(0.2);
  });
});

describe('EOS-80 (UNESCO technical paper 44, 1983), kg/m³', () => {
  // Check values of the paper, for temperatures of the 1968 scale (recalled, and given back by its polynomial).
  it.each([
    [0, 5, 999.96675],
    [0, 25, 997.04796],
    [35, 5, 1027.67547],
    [35, 25, 1023.34306],
  ])('check value, salinity %d at %d °C of 1968: %f', (salinity, t68, density) => {
    expect(Math.abs(seaWaterDensity(t68 / 1.00024, salinity) - density)).toBeLessThan(1e-5);
  });

  // The table in today's degrees, to four decimals.
  it.each([
    [0, 0, 999.8426],
    [0, 5, 999.9667],
    [0, 10, 999.7019],
    [0, 15, 999.101],
    [0, 20, 998.2053],
    [0, 25, 997.0464],
    [35, 5, 1027.6753],
    [35, 15, 1025.972],
    [35, 20, 1024.7617],
    [35, 25, 1023.3412],
  ])('salinity %d at %d °C: %f', (salinity, temperature, density) => {
    expect(Math.abs(seaWaterDensity(temperature, salinity) - density)).toBeLessThan(1.1e-4);
  });

  it('fresh, brackish and salt water of a fit', () => {
    const density = (kind: 'fresh' | 'brackish' | 'salt') =>
      waterDensity(waterSchema.parse({ kind, temperatureC: 15 }));
    expect(density('fresh')).toBeCloseTo(999.101, 3);
    expect(density('salt')).toBeCloseTo(1025.972, 3);
    // Salinity 10 adds about .77 kg/m³ per unit at 15 °C, between the two tabled ends.
    expect(density('brackish')).toBeCloseTo(999.101 + 7.67, 0);
    expect(waterDensity(waterSchema.parse({ kind: 'salt', densityKgM3: 1012 }))).toBe(1012);
  });
});
