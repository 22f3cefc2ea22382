import type { Boat } from '../document/boat-schema.ts';
import { keysOf } from '../units/entries.ts';
import { type HullSpread, hullSpread } from './hull-spread.ts';

/** One figure that became surer: its standard deviation before and after, metres (radians for the trim's angle). */
export interface Narrowed {
  /** Which figure it is. */
  readonly figure: keyof HullSpread;
  /** One standard deviation without what was measured. */
  readonly before: number;
  /** The same with it; never more than `before`. */
  readonly after: number;
}

/** A figure counts as surer when its spread falls by more than this share. */
const LEAST_GAIN = 0.02;

/**
 * What better data on a hull narrowed: a usual hull refined by tape, by offsets or by a float check. The figures whose
 * spread falls, greatest gain first; an empty list when nothing does. Each boat's spreads are those of a racing single
 * afloat (see `hullSpread`), so that only the data differ. A usual single taped says its draft to 4 mm in place of 8.
 */
export function narrowedBy(before: Boat, after: Boat): Narrowed[] {
  const [old, now] = [hullSpread(before), hullSpread(after)];
  return keysOf(old)
    .map((figure) => ({ figure, before: old[figure], after: now[figure] }))
    .filter((n) => n.after < n.before * (1 - LEAST_GAIN))
    .sort((a, b) => a.after / a.before - b.after / b.before);
}
