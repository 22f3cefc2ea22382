import type { Water } from '../document/water-schema.ts';

/** Practical salinity taken for each kind of water. Brackish: within the mesohaline 5–18 of the Venice system (1958). */
export const SALINITY = { fresh: 0, brackish: 10, salt: 35 } as const;

/** EOS-80 is written in degrees of the 1968 scale; thermometers read the 1990 scale (Saunders 1990). */
const DEGREES_1968_PER_1990 = 1.00024;

/**
 * Density of water at atmospheric pressure, kg/m³, by EOS-80 (UNESCO technical papers in marine science 44, 1983).
 * Temperature in °C as thermometers read it (ITS-90; −2 to 40), practical salinity 0–42. 15 °C and 35 give 1025.972.
 */
export function seaWaterDensity(temperatureC: number, salinity: number): number {
  const t = temperatureC * DEGREES_1968_PER_1990;
  const pure =
    999.842594 +
    t * (6.793952e-2 + t * (-9.09529e-3 + t * (1.001685e-4 + t * (-1.120083e-6 + t * 6.536332e-9))));
  const first = 0.824493 + t * (-4.0899e-3 + t * (7.6438e-5 + t * (-8.2467e-7 + t * 5.3875e-9)));
  const second = -5.72466e-3 + t * (1.0227e-4 + t * -1.6546e-6);
  return pure + salinity * (first + Math.sqrt(salinity) * second + salinity * 4.8314e-4);
}

/**
 * Density of a fit's water, kg/m³: the measured one if there is one, else EOS-80 at its temperature and the salinity
 * of its kind. Fresh water of 15 °C weighs 999.10.
 */
export function waterDensity(water: Water): number {
  return water.densityKgM3 ?? seaWaterDensity(water.temperatureC, SALINITY[water.kind]);
}
