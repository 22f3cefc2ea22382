/** From this leading part of a doubt on, one figure is shown; below it, two (Particle Data Group, see below). */
const ONE_FIGURE_FROM = 3.55;

/**
 * Decimal places that a value's doubt allows, both in the unit shown: at most `most`, and below 0 where only tens or hundreds
 * are known. The rule is that of the Particle Data Group (Review of Particle Physics, Introduction, “Rounding”): two figures of
 * the doubt where it begins with 100 to 354, otherwise one; the value has as many places as its doubt. A doubt of 0.83 gives 1,
 * of 14 gives 0, of 83 gives −1.
 */
export function shownPlaces(doubt: number, most: number): number {
  if (!(doubt > 0) || !Number.isFinite(doubt)) return most;
  const power = Math.floor(Math.log10(doubt));
  const leading = doubt / 10 ** power;
  return Math.min(most, leading < ONE_FIGURE_FROM ? 1 - power : 0 - power);
}
