import type { Boat } from '../document/boat-schema.ts';
import { keysOf } from '../units/entries.ts';
import { type HullSpread, hullSpread } from './hull-spread.ts';

/** One value whose doubt became smaller: its standard deviation before and after, metres (radians for the trim's angle). */
export interface Narrowed {
  /** Which figure it is. */
  readonly figure: keyof HullSpread;
  /** One standard deviation without what was measured. */
  readonly before: number;
  /** The same with it; never more than `before`. */
  readonly after: number;
}

/** Least fall of a spread, as a share, that counts. */
const LEAST_GAIN = 0.02;

/**
 * What better data on a hull narrowed: a usual hull refined by tape, by offsets or by a float check. The values whose spread
 * falls, greatest gain first; empty when none does. Both spreads use the sensitivities of a racing single (see `hullSpread`),
 * so that only the data differ. For a usual single that is measured by tape, the draft's goes from 8 to 4 mm.
 */
export function narrowedBy(before: Boat, after: Boat): Narrowed[] {
  const [old, now] = [hullSpread(before), hullSpread(after)];
  return keysOf(old)
    .map((figure) => ({ figure, before: old[figure], after: now[figure] }))
    .filter((n) => n.after < n.before * (1 - LEAST_GAIN))
    .sort((a, b) => a.after / a.before - b.after / b.before);
}
