import type { TapeMeasure } from '../document/athlete-schema.ts';
import { TAPE_SD } from './tape-sd.ts';

/** Readings farther apart than this need one more, metres (the project's own rule, `measuring.ts`). */
const FAR_APART_M = 0.01;

/** More readings of one measure than this add nothing new. */
export const MOST_READINGS = 4;

/**
 * Share of a reading's usual variance that comes from where the measurer feels the point. It is the same each time: repeating
 * does not remove it (estimate; the survey's own posts show that it is not small, `TAPE_SD`).
 */
const POINT_SHARE = 0.5;

/** The usual spread of the hand counts as much as this many readings, against the spread just seen (estimate). */
const USUAL_WORTH = 4;

/** Several readings of one measure taken together, metres. */
export interface RepeatedReading {
  /** The mean of two, the median of more. */
  readonly valueM: number;
  /** Standard deviation of the value, for the body estimate. */
  readonly sdM: number;
  /** Greatest less least reading. */
  readonly spreadM: number;
  /** Whether one more reading is worth taking. */
  readonly another: boolean;
}

/**
 * One value from the readings (metres) of one measure; null where there are none. The value is the mean of two and the median
 * of more (practice in anthropometry, from memory). The hand's part of the variance is pooled from its usual size and from the
 * readings' own spread, and falls with their number; the point's part stays. Two equal readings of a sitting height have a
 * standard deviation of 5.9 mm where one has 7 mm.
 */
export function repeatedReading(measure: TapeMeasure, readings: readonly number[]): RepeatedReading | null {
  const count = readings.length;
  if (count === 0) return null;
  const usual = TAPE_SD[measure] ** 2;
  const mean = readings.reduce((sum, reading) => sum + reading, 0) / count;
  const squares = readings.reduce((sum, reading) => sum + (reading - mean) ** 2, 0);
  const hand = (USUAL_WORTH * (1 - POINT_SHARE) * usual + squares) / (USUAL_WORTH + count - 1);
  const spreadM = Math.max(...readings) - Math.min(...readings);
  return {
    valueM: count > 2 ? median(readings) : mean,
    sdM: Math.sqrt(POINT_SHARE * usual + hand / count),
    spreadM,
    another: count < 2 || (count < MOST_READINGS && leastGap(readings) > FAR_APART_M),
  };
}

/** How far apart the two readings are that agree best. */
function leastGap(readings: readonly number[]): number {
  const sorted = readings.toSorted((a, b) => a - b);
  return Math.min(...sorted.slice(1).map((reading, i) => reading - sorted[i]!));
}

/** The middle value, or the mean of the two in the middle. */
function median(values: readonly number[]): number {
  const sorted = values.toSorted((a, b) => a - b);
  const middle = Math.floor(sorted.length / 2);
  return sorted.length % 2 === 1 ? sorted[middle]! : (sorted[middle - 1]! + sorted[middle]!) / 2;
}
