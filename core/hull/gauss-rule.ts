/**
 * Gauss–Legendre rule of five points, exact to the ninth power: places and weights (Abramowitz & Stegun 1964, table 25.4,
 * mapped from −1…1 to 0…1).
 */
const FIVE = [
  [0.046910077030668, 0.118463442528095],
  [0.230765344947158, 0.239314335249683],
  [0.5, 0.284444444444444],
  [0.769234655052842, 0.239314335249683],
  [0.953089922969332, 0.118463442528095],
] as const;

/** Panels to which the rule is applied, one after another: a corner of a section disturbs only its own panel. */
const PANELS = 2;

const panels = Array.from({ length: PANELS }, (_, panel) => panel);

/** Where an interval from 0 to 1 is sampled. */
export const GAUSS_PLACES = Float64Array.from(
  panels.flatMap((panel) => FIVE.map(([at]) => (panel + at) / PANELS)),
);
/** What each of these samples weighs; the weights sum to 1. */
export const GAUSS_WEIGHTS = Float64Array.from(
  panels.flatMap(() => FIVE.map(([, weight]) => weight / PANELS)),
);
