/** Gauss–Legendre's rule of five points on 0 to 1 (exact to the ninth power): places and weights. */
const FIVE = [
  [0.046910077030668, 0.118463442528095],
  [0.230765344947158, 0.239314335249683],
  [0.5, 0.284444444444444],
  [0.769234655052842, 0.239314335249683],
  [0.953089922969332, 0.118463442528095],
] as const;

/** Panels that the rule is applied to, one after another: corners of the sections pass by. */
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
