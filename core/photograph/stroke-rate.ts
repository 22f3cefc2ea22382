/** A rate read off a video, strokes per minute, and its doubt. */
export interface SeenRate {
  /** Strokes in a minute. */
  readonly perMin: number;
  /** One standard deviation, strokes in a minute. */
  readonly sd: number;
  /** Strokes between the first catch and the last. */
  readonly strokes: number;
}

/** Fewest catches that make a rate. */
const LEAST_CATCHES = 2;
/** Two marks nearer than this are one catch, seconds: no canoe is paddled at 150 strokes a minute. */
const ONE_CATCH_S = 0.4;
/** A catch is found to so many frames, one standard deviation (estimate). */
const CATCH_SD_FRAMES = 1;

/**
 * Strokes per minute from the instants of catches in a row, seconds: the slope of the line through them by least squares (each stroke
 * one step). The doubt comes from the frames, `frameS` apart, and from how unevenly the catches follow, whichever is more. Null with
 * fewer than two.
 */
export function strokeRate(catchesS: readonly number[], frameS: number): SeenRate | null {
  const times = [...catchesS]
    .sort((a, b) => a - b)
    .filter((time, i, all) => i === 0 || time - all[i - 1]! >= ONE_CATCH_S);
  const n = times.length;
  if (n < LEAST_CATCHES) return null;
  const middle = (n - 1) / 2;
  const mean = times.reduce((sum, time) => sum + time, 0) / n;
  const spread = times.reduce((sum, _, i) => sum + (i - middle) ** 2, 0);
  const period = times.reduce((sum, time, i) => sum + (i - middle) * (time - mean), 0) / spread;
  const squares = times.reduce((sum, time, i) => sum + (time - mean - period * (i - middle)) ** 2, 0);
  const uneven = n > 2 ? Math.sqrt(squares / (n - 2)) : 0;
  const periodSd = Math.max(uneven, CATCH_SD_FRAMES * frameS) / Math.sqrt(spread);
  return { perMin: 60 / period, sd: (60 / period ** 2) * periodSd, strokes: n - 1 };
}
