/** Below this Reynolds number the line of 1957 is not meant to hold; slower flow counts as flowing at it. */
const LEAST_REYNOLDS = 1e4;

/**
 * Friction coefficient of the ITTC 1957 ship–model correlation line: 0.075 / (log₁₀ Re − 2)².
 * Source: ITTC Recommended Procedures 7.5-02-02-01. Re = 10⁶ gives 0.0046875, 10⁷ gives 0.003.
 */
export function ittcFriction(reynolds: number): number {
  return 0.075 / (Math.log10(Math.max(LEAST_REYNOLDS, reynolds)) - 2) ** 2;
}

/** Kinematic viscosity of salt water over that of fresh water per unit of practical salinity, near enough from 0 to 30 °C. */
const VISCOSITY_PER_SALINITY = 0.0437 / 35;

/**
 * Kinematic viscosity of water, m²/s. Temperature in °C from 0 to 30, practical salinity 0–42.
 * Fresh water: the formula of ITTC 1978 performance prediction (7.5-02-03-01.4), 15 °C gives 1.1394e-6; the table of ITTC
 * 7.5-02-01-03 has 1.1386e-6; from 5 to 25 °C they agree within 1.3 %, a fifth of a per cent of friction. Salt: raised in proportion to salinity so that 35 at 15 °C gives the table's 1.1892e-6.
 */
export function kinematicViscosity(temperatureC: number, salinity = 0): number {
  const from12 = temperatureC - 12;
  const fresh = ((0.000585 * from12 - 0.03361) * from12 + 1.235) * 1e-6;
  return fresh * (1 + VISCOSITY_PER_SALINITY * salinity);
}
