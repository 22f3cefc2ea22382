import type { Water } from '../fit/boat-schema.ts';

/** Salinity taken for brackish and for salt water, practical salinity units (g/kg). */
const SALINITY = { fresh: 0, brackish: 7, salt: 35 } as const;

/** Σ c[i]·tⁱ. */
function polynomial(t: number, c: readonly number[]): number {
  return c.reduceRight((sum, k) => sum * t + k, 0);
}

/**
 * Density of water at the surface, kg/m³, from temperature (°C) and practical salinity: the international equation of
 * state of sea water 1980 at one atmosphere (EOS-80, UNESCO 1983). 1025.972 at 15 °C and salinity 35.
 */
export function seaWaterDensity(temperatureC: number, salinity: number): number {
  const t = temperatureC;
  const pure = polynomial(t, [999.842594, 6.793952e-2, -9.09529e-3, 1.001685e-4, -1.120083e-6, 6.536332e-9]);
  const linear = polynomial(t, [0.824493, -4.0899e-3, 7.6438e-5, -8.2467e-7, 5.3875e-9]);
  const threeHalves = polynomial(t, [-5.72466e-3, 1.0227e-4, -1.6546e-6]);
  return pure + salinity * linear + salinity ** 1.5 * threeHalves + 4.8314e-4 * salinity ** 2;
}

/** Density of a fit's water, kg/m³: as measured if it was, else by EOS-80 with 0, 7 or 35 for the salinity. */
export function waterDensity(water: Water): number {
  return water.densityKgM3 ?? seaWaterDensity(water.temperatureC, SALINITY[water.kind]);
}
