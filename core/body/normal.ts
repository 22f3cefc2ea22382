/** Standard deviations from the mean to the 1st and 99th percentile of a normal distribution (any table of it). */
export const SIGMAS_TO_1_PERCENT = 2.3263;

/**
 * Share of a normal distribution below a value that lies `sigmas` standard deviations above the mean, 0–1: `shareBelow(0)` is
 * 0.5. Error under 1e-7 (Abramowitz & Stegun 1964, formula 26.2.17, with the constants below).
 */
export function shareBelow(sigmas: number): number {
  const t = 1 / (1 + 0.2316419 * Math.abs(sigmas));
  const polynomial =
    t * (0.31938153 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
  const above = (Math.exp(-(sigmas ** 2) / 2) / Math.sqrt(2 * Math.PI)) * polynomial;
  return sigmas >= 0 ? 1 - above : above;
}
