/** An interval for a value that is not known more closely, in the unit of its context. */
export interface Range {
  /** Lower end, itself possible. */
  readonly least: number;
  /** Upper end, itself possible. */
  readonly most: number;
}

/** Stroke rates by racing distance, strokes per minute: our estimate. */
export const STROKE_RATES = {
  metres1000: { least: 50, most: 65 },
  metres200: { least: 65, most: 85 },
} as const satisfies Record<string, Range>;

/** Rate when none is set, strokes per minute: within the 1000 m range above. */
export const DEFAULT_RATE_PER_MIN = 60;

/**
 * Peak over mean of a blade force that rises and falls like half a sine wave: π/2. A mean of 200 N then peaks at 314 N.
 */
export const PEAK_OVER_MEAN = Math.PI / 2;
